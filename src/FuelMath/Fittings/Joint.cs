using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Two ends put together: whether they seal, and why.</summary>
/// <remarks>
/// <para>
/// The answer is about forms and sizes. It assumes sound parts, the right seal, and the maker's torque. Test a new
/// joint for tightness before the first start.
/// </para>
/// <para>
/// The trap to know: the 37 degree flare and the straight-thread O-ring boss have the same thread at each dash size. A
/// flare screws into a boss by hand, feels right and leaks, because the boss has no cone and the flare no O-ring.
/// </para>
/// <para>Caution: fuel sprays from a bad joint and ignites. Relieve the pressure before opening a line.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FittingExamples.cs" region="Joint" />
/// </example>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed partial class Joint
{
    internal Joint(
        FittingEnd first,
        FittingEnd second,
        Outcome verdict,
        KnownTrap trap,
        string reason,
        ImmutableArray<string> cautions
    )
    {
        (First, Second, Verdict, Trap, Reason, Cautions) = (first, second, verdict, trap, reason, cautions);
    }

    /// <summary>One end.</summary>
    public FittingEnd First { get; }

    /// <summary>The other end.</summary>
    public FittingEnd Second { get; }

    /// <summary>The verdict.</summary>
    public Outcome Verdict { get; }

    /// <summary>The known trap that this joint matches, or none.</summary>
    public KnownTrap Trap { get; }

    /// <summary>Why, in words.</summary>
    public string Reason { get; }

    /// <summary>Remaining cautions, in words; often empty.</summary>
    public ImmutableArray<string> Cautions { get; }

    /// <summary>Puts two ends together. The order does not matter.</summary>
    /// <param name="first">One end.</param>
    /// <param name="second">The other.</param>
    /// <returns>The joint, with its verdict.</returns>
    /// <exception cref="ArgumentNullException">An end is null.</exception>
    public static Joint Between(FittingEnd first, FittingEnd second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return JointRules.Judge(first, second);
    }

    /// <summary>Formats ends, verdict and reason.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{First} with {Second}: {Verdict}. {Reason}";
}
