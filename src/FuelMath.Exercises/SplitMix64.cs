namespace FuelMath.Exercises;

/// <summary>
/// Random number generator with 64 bits of state; the same numbers on every machine and in every version of .NET.
/// </summary>
/// <remarks>Source: [Steele-Lea-Flood-2014] figure 17 (SplitMix with the mixing of its 64-bit output).</remarks>
internal struct SplitMix64
{
    private ulong state;

    internal SplitMix64(ulong seed) => state = seed;

    internal ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        return Mix(state);
    }

    /// <summary>
    /// A uniform number from zero to less than a count, by rejection of draws that would favor some numbers.
    /// </summary>
    internal int Below(int count)
    {
        ulong range = (ulong)count;
        ulong spoiled = (0 - range) % range;
        ulong drawn;
        do
        {
            drawn = Next();
        } while (drawn < spoiled);

        return (int)(drawn % range);
    }

    /// <summary>A generator for one exercise: from the seed, the template's name and version, and the number of the draw.</summary>
    internal static SplitMix64 For(ulong seed, string name, int version, int draw)
    {
        ulong hash = Mix(seed + 0x9E3779B97F4A7C15);
        foreach (char c in name)
        {
            hash = Mix(hash ^ c);
        }

        return new(Mix(Mix(hash ^ (ulong)version) + (ulong)draw));
    }

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
