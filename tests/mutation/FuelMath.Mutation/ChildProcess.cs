using System.Diagnostics;

namespace FuelMath.Mutation;

/// <summary>This program again, as a child process.</summary>
internal static class ChildProcess
{
    internal static Process Start(params string[] words)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath!) == "dotnet")
        {
            start.ArgumentList.Add(typeof(ChildProcess).Assembly.Location);
        }

        foreach (string word in words)
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }

    /// <summary>Hands over each line of its output, until it ends.</summary>
    internal static void Read(Action<string> take, params string[] words)
    {
        using Process child = Start(words);
        while (child.StandardOutput.ReadLine() is { } line)
        {
            take(line);
        }

        child.WaitForExit();
    }
}
