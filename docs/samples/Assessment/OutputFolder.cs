namespace FuelMath.Samples.Assessment;

/// <summary>The folder that the files go to: below "out" by itself, elsewhere only where the caller names it.</summary>
internal sealed class OutputFolder
{
    private readonly string root;
    private readonly bool overwrites;

    private OutputFolder(string root, bool overwrites)
    {
        this.root = root;
        this.overwrites = overwrites;
    }

    /// <summary>The folder for a run.</summary>
    /// <param name="asked">What --out says; null without it.</param>
    /// <param name="stem">The name of the system's file, which names the folder below "out" then.</param>
    /// <param name="overwrites">Whether --force is given.</param>
    internal static OutputFolder Of(string? asked, string stem, bool overwrites)
    {
        string root = asked ?? System.IO.Path.Combine("out", stem);
        return asked is not null || IsBelow("out", root)
            ? new OutputFolder(root, overwrites)
            : throw new FormatException($"'{stem}' leads out of the folder 'out'; name another with --out.");
    }

    /// <summary>Refuses what stands there already, before anything is written.</summary>
    internal void Check(IEnumerable<string> files)
    {
        string? taken = overwrites ? null : files.Select(Path).FirstOrDefault(File.Exists);
        if (taken is not null)
        {
            throw new IOException($"'{taken}' is there already; --force overwrites what an earlier run wrote.");
        }
    }

    /// <summary>A file in the folder; a name that leads out of it is refused.</summary>
    internal string Path(string file)
    {
        string path = System.IO.Path.Combine(root, file);
        return IsBelow(root, path) ? path : throw new FormatException($"'{file}' leads out of the folder '{root}'.");
    }

    /// <summary>Writes a file.</summary>
    internal void Write(string file, string text)
    {
        string path = Path(file);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static bool IsBelow(string folder, string path) =>
        System
            .IO.Path.GetFullPath(path)
            .StartsWith(
                System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(folder))
                    + System.IO.Path.DirectorySeparatorChar,
                StringComparison.Ordinal
            );
}
