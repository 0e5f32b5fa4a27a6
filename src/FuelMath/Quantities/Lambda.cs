using System.Globalization;

namespace FuelMath;

/// <summary>Air-fuel ratio over the stoichiometric air-fuel ratio: below one rich, above one lean.</summary>
/// <remarks>
/// The default value is not a mixture; use <see cref="FromRatio"/>. Equal and ordered by its value, exactly.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public readonly struct Lambda : IEquatable<Lambda>, IComparable<Lambda>, IFormattable
{
    private const double Least = 1e-300;
    private const double Most = 1e300;
    private readonly double ratio;

    private Lambda(double ratio) => this.ratio = ratio;

    /// <summary>The stoichiometric mixture.</summary>
    public static Lambda Stoichiometric { get; } = new(1);

    internal double Si => ratio;

    /// <summary>Creates a lambda.</summary>
    /// <param name="value">A pure number from 1e-300 to 1e300, so that its inverse is in the same range.</param>
    /// <returns>The lambda.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static Lambda FromRatio(double value) => new(Guard.InRange(value, Least, Most));

    /// <summary>Creates a mixture by its equivalence ratio, the inverse of lambda.</summary>
    /// <param name="value">A pure number from 1e-300 to 1e300, so that its inverse is in the same range.</param>
    /// <returns>The lambda.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static Lambda FromEquivalenceRatio(double value) => new(1 / Guard.InRange(value, Least, Most));

    /// <summary>Lambda as a pure number.</summary>
    /// <returns>The number.</returns>
    public double ToRatio() => ratio;

    /// <summary>The equivalence ratio, fuel over air relative to the stoichiometric one.</summary>
    /// <returns>The number.</returns>
    /// <exception cref="InvalidOperationException">This is the default value, which is not a mixture.</exception>
    public double ToEquivalenceRatio() =>
        ratio > 0
            ? 1 / ratio
            : throw new RefusedOperationException(
                RefusalCode.NoMixture,
                "The default lambda is not a mixture and has no equivalence ratio."
            );

    /// <summary>The air-fuel ratio of this mixture with a fuel.</summary>
    /// <param name="stoichiometric">The fuel's stoichiometric ratio.</param>
    /// <returns>The ratio by mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Either is its type's default value.</exception>
    public AirFuelRatio ToAirFuelRatio(AirFuelRatio stoichiometric) =>
        AirFuelRatio.FromMassRatio(ratio * stoichiometric.Si);

    /// <summary>Whether the first is richer.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <(Lambda left, Lambda right) => left.ratio < right.ratio;

    /// <summary>Whether the first is leaner.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >(Lambda left, Lambda right) => left.ratio > right.ratio;

    /// <summary>Whether the first is not leaner.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <=(Lambda left, Lambda right) => left.ratio <= right.ratio;

    /// <summary>Whether the first is not richer.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >=(Lambda left, Lambda right) => left.ratio >= right.ratio;

    /// <summary>Whether both are the same number.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator ==(Lambda left, Lambda right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator !=(Lambda left, Lambda right) => !left.Equals(right);

    /// <inheritdoc />
    public int CompareTo(Lambda other) => ratio.CompareTo(other.ratio);

    /// <inheritdoc />
    public bool Equals(Lambda other) => ratio.Equals(other.ratio);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is Lambda other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => ratio.GetHashCode();

    /// <summary>Formats the number, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>Formats the number.</summary>
    /// <param name="format">A number format; <c>0.000</c> when null.</param>
    /// <param name="formatProvider">The culture; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException"><paramref name="format"/> is not a number format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        ratio.ToString(format ?? "0.000", formatProvider ?? CultureInfo.InvariantCulture);
}
