using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>The degrees of freedom of a standard uncertainty: how well it is itself known.</summary>
/// <remarks>
/// A mean of n repeats has n - 1. They need not be whole. The default value is <see cref="Unlimited"/>. Two are equal
/// when their numbers are.
/// </remarks>
/// <seealso href="../guide/budgets.html">Budgets of uncertainty</seealso>
public readonly struct DegreesOfFreedom : IEquatable<DegreesOfFreedom>
{
    /// <summary>The largest number; more would change no result.</summary>
    private const double Most = 1e9;

    private DegreesOfFreedom(double reciprocal) => Reciprocal = reciprocal;

    /// <summary>The standard uncertainty counts as known exactly.</summary>
    public static DegreesOfFreedom Unlimited => default;

    /// <summary>Whether the standard uncertainty counts as known exactly.</summary>
    public bool IsUnlimited => Reciprocal == 0;

    /// <summary>One over the number; zero when unlimited.</summary>
    internal double Reciprocal { get; }

    /// <summary>The number, whole or not.</summary>
    /// <param name="number">1 to 1 000 000 000.</param>
    /// <returns>The degrees of freedom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="number"/> is not from 1 to 1 000 000 000.
    /// </exception>
    public static DegreesOfFreedom From(double number) => new(1 / Guard.InRange(number, 1, Most));

    /// <summary>
    /// From the estimated relative uncertainty of the standard uncertainty: one over twice its square.
    /// Source: [JCGM-100] section G.4.2, equation G.3.
    /// </summary>
    /// <param name="relativeUncertainty">As a fraction of the standard uncertainty; 0.01 % to 70 %.</param>
    /// <returns>The degrees of freedom: 25 % gives 8.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="relativeUncertainty"/> is not from 0.01 % to 70 %.
    /// </exception>
    public static DegreesOfFreedom FromRelativeUncertainty(Ratio relativeUncertainty)
    {
        double share = Guard.InRange(relativeUncertainty, relativeUncertainty.InSi(), 0.0001, 0.7, SiUnits.Ratio);
        return new(2 * share * share);
    }

    /// <summary>The number.</summary>
    /// <returns>The number.</returns>
    /// <exception cref="InvalidOperationException">It is unlimited.</exception>
    public double ToNumber() =>
        IsUnlimited
            ? throw new RefusedOperationException(
                RefusalCode.FreedomUnknown,
                "The degrees of freedom must be limited to be a number."
            )
            : 1 / Reciprocal;

    /// <inheritdoc />
    public bool Equals(DegreesOfFreedom other) => Reciprocal.Equals(other.Reciprocal);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is DegreesOfFreedom other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => Reciprocal.GetHashCode();

    /// <summary>Gives the number to four figures, or "unlimited".</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        IsUnlimited ? "unlimited" : FormattableString.Invariant($"{1 / Reciprocal:G4}");

    /// <summary>Whether two are equal.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>True when they are.</returns>
    public static bool operator ==(DegreesOfFreedom left, DegreesOfFreedom right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>True when they do.</returns>
    public static bool operator !=(DegreesOfFreedom left, DegreesOfFreedom right) => !left.Equals(right);

    internal static DegreesOfFreedom FromReciprocal(double reciprocal) => new(reciprocal);
}
