using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>A reading of a shop test beside what the system should read, and what a difference may say.</summary>
/// <remarks>
/// Each cause is one part alone being off, as the model of the system has it; two at once, and what the model does not
/// hold, are not guessed at. One reading alone never tells causes apart, and then they are not ranked. With added
/// readings the one that meets them best stands first.
/// </remarks>
public sealed class ShopComparison
{
    internal ShopComparison(
        string expected,
        string measured,
        double deviation,
        bool agrees,
        IEnumerable<ShopCause> causes
    )
    {
        Expected = expected;
        Measured = measured;
        Deviation = SiUnits.Ratio(deviation);

        // A stable sort: causes that no reading tells apart keep the order of their kinds.
        Causes = agrees ? [] : [.. causes.OrderBy(c => c.Misfit?.InSi() ?? 0)];
        bool held = Causes.Any(c => c.Misfit is not null);
        Verdict =
            agrees ? ShopVerdict.Agrees
            : Causes.IsEmpty ? ShopVerdict.NoSingleCause
            : !held ? ShopVerdict.CannotTell
            : Causes.Count(c => c.ExplainsAll) switch
            {
                0 => ShopVerdict.NoSingleCause,
                1 => ShopVerdict.OneCause,
                _ => ShopVerdict.SeveralCauses,
            };
    }

    /// <summary>What the system should read, with its unit.</summary>
    public string Expected { get; }

    /// <summary>What was read.</summary>
    public string Measured { get; }

    /// <summary>Measured less expected, as a share of what was expected; zero within an expected range.</summary>
    public Ratio Deviation { get; }

    /// <summary>What the readings say together.</summary>
    public ShopVerdict Verdict { get; }

    /// <summary>Whether every reading is within its tolerance.</summary>
    public bool Agrees => Verdict == ShopVerdict.Agrees;

    /// <summary>
    /// What would explain the reading, the one that meets added readings best first; without added readings in no rank.
    /// Empty when all agrees.
    /// </summary>
    public ImmutableArray<ShopCause> Causes { get; }
}
