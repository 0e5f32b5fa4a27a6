using UnitsNet;

namespace FuelMath;

/// <summary>A pressure above vacuum.</summary>
/// <remarks>
/// A separate type, so that gauge, absolute and difference can't be confused: <see cref="Pressure"/> always means a
/// difference. The default value is vacuum. Ordered and equal by its value in pascals, exactly.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public readonly struct AbsolutePressure
    : IEquatable<AbsolutePressure>,
        IComparable<AbsolutePressure>,
        IFormattable,
        IAmount
{
    private readonly double pascals;

    /// <summary>Creates an absolute pressure.</summary>
    /// <param name="aboveVacuum">The difference from vacuum; not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public AbsolutePressure(Pressure aboveVacuum) => pascals = Guard.NotNegative(aboveVacuum, aboveVacuum.InSi());

    internal AbsolutePressure(double pascals) => this.pascals = Guard.Result(pascals);

    /// <summary>The standard atmosphere, 101 325 Pa. Source: [ISO-2533] table 1.</summary>
    public static AbsolutePressure StandardAtmosphere { get; } = new(101_325);

    /// <summary>The difference from vacuum, in Pa.</summary>
    public Pressure AboveVacuum => SiUnits.Pressure(pascals);

    internal double Si => pascals;

    Amount IAmount.Amount => Amount.KilopascalsAbsolute(pascals);

    /// <summary>The same pressure relative to an ambient pressure.</summary>
    /// <param name="ambient">The ambient pressure.</param>
    /// <returns>The gauge pressure; negative below ambient.</returns>
    public GaugePressure ToGauge(AbsolutePressure ambient) => new(pascals - ambient.pascals);

    /// <summary>The difference of two absolute pressures.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>Their difference, in Pa.</returns>
    public static Pressure operator -(AbsolutePressure left, AbsolutePressure right) =>
        SiUnits.Pressure(left.pascals - right.pascals);

    /// <summary>The difference of two absolute pressures.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>Their difference, in Pa.</returns>
    public static Pressure Subtract(AbsolutePressure left, AbsolutePressure right) => left - right;

    /// <summary>Whether the first is lower.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <(AbsolutePressure left, AbsolutePressure right) => left.pascals < right.pascals;

    /// <summary>Whether the first is higher.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >(AbsolutePressure left, AbsolutePressure right) => left.pascals > right.pascals;

    /// <summary>Whether the first is not higher.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <=(AbsolutePressure left, AbsolutePressure right) => left.pascals <= right.pascals;

    /// <summary>Whether the first is not lower.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >=(AbsolutePressure left, AbsolutePressure right) => left.pascals >= right.pascals;

    /// <summary>Whether both are the same number of pascals.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator ==(AbsolutePressure left, AbsolutePressure right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator !=(AbsolutePressure left, AbsolutePressure right) => !left.Equals(right);

    /// <inheritdoc />
    public int CompareTo(AbsolutePressure other) => pascals.CompareTo(other.pascals);

    /// <inheritdoc />
    public bool Equals(AbsolutePressure other) => pascals.Equals(other.pascals);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is AbsolutePressure other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => pascals.GetHashCode();

    /// <summary>Formats as kilopascals, absolute, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>Formats as kilopascals, absolute.</summary>
    /// <param name="format">A number format; <c>0.##</c> when null.</param>
    /// <param name="formatProvider">The culture; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException"><paramref name="format"/> is not a number format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        PressureText.Of(pascals, "kPa absolute", format, formatProvider);
}
