namespace FuelMath.Mutation;

/// <summary>The mutants that were looked at and change nothing that matters: survivors.tsv beside this folder.</summary>
/// <remarks>
/// A line each: class ("equivalent": no input can tell it apart; "chance": only two numbers that are equal to the last bit by
/// chance; "speed": only time or memory), file, changed code, its replacement, reason; divided by tabs. The line of code tells
/// which it is, so that it may move.
/// </remarks>
internal sealed class Survivors
{
    private readonly Dictionary<(string File, string Original, string Replacement), string> classes = [];

    internal static Survivors Read(string file)
    {
        var survivors = new Survivors();
        foreach (string[] words in System.IO.File.ReadLines(file).Skip(1).Select(l => l.Split('\t')))
        {
            survivors.classes[(words[1], words[2], words[3])] = words[0];
        }

        return survivors;
    }

    /// <summary>Its class; null where nobody has looked at it.</summary>
    internal string? Of(Mutant mutant) => classes.GetValueOrDefault((mutant.File, mutant.Original, mutant.Replacement));
}
