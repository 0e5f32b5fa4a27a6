using System.IO.Compression;
using System.Security.Cryptography;

/// <summary>Compares the files inside the packages of two folders.</summary>
internal static class Contents
{
    internal static int Compare(string first, string second)
    {
        int different = 0;
        string[] names = [.. Packages(first).Union(Packages(second)).Order()];
        foreach (string name in names)
        {
            Dictionary<string, string> one = Of(Path.Combine(first, name));
            Dictionary<string, string> other = Of(Path.Combine(second, name));
            foreach (string file in one.Keys.Union(other.Keys).Order())
            {
                if (one.GetValueOrDefault(file) != other.GetValueOrDefault(file))
                {
                    different++;
                    Console.WriteLine($"{name}: {file} differs");
                }
            }

            Console.WriteLine($"{name}: {one.Count} files compared");
        }

        return different == 0 && names.Length > 0 ? 0 : 1;
    }

    private static IEnumerable<string> Packages(string folder) =>
        Directory.GetFiles(folder).Select(f => Path.GetFileName(f)!).Where(f => f.EndsWith("nupkg"));

    /// <summary>Hashes by name. The packer draws a new name for the core properties each time, and the relations hold it.</summary>
    private static Dictionary<string, string> Of(string package)
    {
        using ZipArchive zip = ZipFile.OpenRead(package);
        return zip
            .Entries.Where(e => e.FullName != "_rels/.rels")
            .ToDictionary(
                e => e.FullName.EndsWith(".psmdcp") ? "core properties" : e.FullName,
                e =>
                {
                    using Stream content = e.Open();
                    return Convert.ToHexString(SHA256.HashData(content));
                }
            );
    }
}
