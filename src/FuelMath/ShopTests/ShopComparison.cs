using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// The comparison of a shop test's reading with its prediction, and the possible causes of a difference.
/// </summary>
/// <remarks>
/// Each cause is a single fault within the model of the system; two at once, and faults outside the model, are not
/// considered. One reading alone can't distinguish causes, which are then not ranked. With additional readings the
/// cause that agrees best is first.
/// </remarks>
/// <seealso href="../guide/shoptests.html">Shop tests: what should it read?</seealso>
public sealed partial class ShopComparison
{
    internal ShopComparison(string expected, string measured, double deviation, bool agrees, IEnumerable<Cause> causes)
    {
        Expected = expected;
        Measured = measured;
        Deviation = SiUnits.Ratio(deviation);

        // A stable sort: causes that no reading distinguishes keep the order of their kinds.
        Causes = agrees ? [] : [.. causes.OrderBy(c => c.Misfit?.InSi() ?? 0)];
        bool held = Causes.Any(c => c.Misfit is not null);
        Verdict =
            agrees ? Outcome.Agrees
            : Causes.IsEmpty ? Outcome.NoSingleCause
            : !held ? Outcome.CannotTell
            : Causes.Count(c => c.ExplainsAll) switch
            {
                0 => Outcome.NoSingleCause,
                1 => Outcome.OneCause,
                _ => Outcome.SeveralCauses,
            };
    }

    /// <summary>The predicted reading, with its unit.</summary>
    public string Expected { get; }

    /// <summary>The actual reading.</summary>
    public string Measured { get; }

    /// <summary>Measured minus expected, relative to the expected; zero within an expected range.</summary>
    public Ratio Deviation { get; }

    /// <summary>The verdict of all readings.</summary>
    public Outcome Verdict { get; }

    /// <summary>Whether every reading is within its tolerance.</summary>
    public bool Agrees => Verdict == Outcome.Agrees;

    /// <summary>
    /// The causes that would explain the reading, the one that agrees best with additional readings first; not ranked
    /// without additional readings. Empty when all agrees.
    /// </summary>
    public ImmutableArray<Cause> Causes { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Measured} for {Expected}: {Verdict}");
}
