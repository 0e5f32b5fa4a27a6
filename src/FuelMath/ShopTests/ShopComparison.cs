using System.Collections.Immutable;
using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>A reading of a shop test beside what the system should read, and what a difference may say.</summary>
/// <remarks>
/// Each cause is one part alone being off, as the model of the system has it; two at once, and what the model does not hold,
/// are not guessed at. They are ranked by how far off the part would have to be, which is no probability. Immutable;
/// equality is by reference.
/// </remarks>
public sealed class ShopComparison
{
    internal ShopComparison(
        string expected,
        string measured,
        double deviation,
        double tolerance,
        IEnumerable<ShopCause> causes
    )
    {
        Expected = expected;
        Measured = measured;
        Deviation = SiUnits.Ratio(deviation);
        Agrees = Math.Abs(deviation) <= tolerance;
        Causes = Agrees ? [] : [.. causes.OrderBy(c => c.Departure.InSi())];
    }

    /// <summary>What the system should read, with its unit.</summary>
    public string Expected { get; }

    /// <summary>What was read.</summary>
    public string Measured { get; }

    /// <summary>Measured less expected, as a share of what was expected.</summary>
    public Ratio Deviation { get; }

    /// <summary>Whether the deviation is within the caller's tolerance.</summary>
    public bool Agrees { get; }

    /// <summary>What would explain it, the smallest departure first; empty when it agrees.</summary>
    public ImmutableArray<ShopCause> Causes { get; }
}
