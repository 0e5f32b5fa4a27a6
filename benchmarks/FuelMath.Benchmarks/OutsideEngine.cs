using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace FuelMath.Benchmarks;

/// <summary>Runs the timing script of tests/oracle, which times a general pipe-network engine in Node.</summary>
internal static class OutsideEngine
{
    private const string Script = "time.mjs";

    /// <summary>Networks with the engine's solutions and times; null, and said why, where they cannot be had.</summary>
    internal static JsonElement? Time()
    {
        if (Folder() is not { } folder)
        {
            Console.WriteLine("There is no tests/oracle above the current folder, so the engine is not timed.");
            return null;
        }

        try
        {
            if (!Directory.Exists(Path.Combine(folder, "node_modules")))
            {
                Console.WriteLine(Run(folder, "npm", "ci"));
            }

            return JsonDocument.Parse(Run(folder, "node", Script, "--json")).RootElement;
        }
        catch (Win32Exception missing)
        {
            Console.WriteLine($"Node is not on this machine, so the engine is not timed: {missing.Message}");
            return null;
        }
    }

    private static string? Folder()
    {
        for (DirectoryInfo? at = new(Environment.CurrentDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "tests", "oracle");
            if (File.Exists(Path.Combine(folder, Script)))
            {
                return folder;
            }
        }

        return null;
    }

    private static string Run(string folder, string program, params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true }
        )!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? said
            : throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }
}
