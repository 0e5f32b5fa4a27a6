using UnitsNet;

namespace FuelMath;

/// <summary>A pressure relative to ambient pressure.</summary>
/// <remarks>
/// A separate type, so that gauge, absolute and difference can't be confused: <see cref="Pressure"/> always means a
/// difference. The default value is ambient pressure. Ordered and equal by its value in pascals, exactly.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public readonly struct GaugePressure : IEquatable<GaugePressure>, IComparable<GaugePressure>, IFormattable, IAmount
{
    private readonly double pascals;

    /// <summary>Creates a gauge pressure.</summary>
    /// <param name="aboveAmbient">The difference from ambient; negative below it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public GaugePressure(Pressure aboveAmbient) => pascals = Guard.Finite(aboveAmbient, aboveAmbient.InSi());

    internal GaugePressure(double pascals) => this.pascals = Guard.Result(pascals);

    /// <summary>The difference from ambient, in Pa.</summary>
    public Pressure AboveAmbient => SiUnits.Pressure(pascals);

    internal double Si => pascals;

    Amount IAmount.Amount => Amount.KilopascalsGauge(pascals);

    /// <summary>The same pressure relative to vacuum.</summary>
    /// <param name="ambient">The ambient pressure.</param>
    /// <returns>The absolute pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sum lies below vacuum.</exception>
    public AbsolutePressure ToAbsolute(AbsolutePressure ambient)
    {
        double sum = pascals + ambient.Si;
        return sum >= 0
            ? new(sum)
            : throw Guard.Outside(
                ambient,
                RefusalCode.OutOfRange,
                $"Must be at least {new AbsolutePressure(-pascals):least} for a gauge pressure of {this:gaugePressure}; it was {ambient:value}."
            );
    }

    /// <summary>A gauge pressure plus a difference.</summary>
    /// <param name="left">The gauge pressure.</param>
    /// <param name="right">The difference.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static GaugePressure operator +(GaugePressure left, Pressure right) =>
        new(Guard.Finite(left.pascals + right.InSi(), nameof(right)));

    /// <summary>A gauge pressure plus a difference.</summary>
    /// <param name="left">The gauge pressure.</param>
    /// <param name="right">The difference.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static GaugePressure Add(GaugePressure left, Pressure right) => left + right;

    /// <summary>The difference of two gauge pressures.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>Their difference, in Pa.</returns>
    public static Pressure operator -(GaugePressure left, GaugePressure right) =>
        SiUnits.Pressure(left.pascals - right.pascals);

    /// <summary>The difference of two gauge pressures.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>Their difference, in Pa.</returns>
    public static Pressure Subtract(GaugePressure left, GaugePressure right) => left - right;

    /// <summary>Whether the first is lower.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <(GaugePressure left, GaugePressure right) => left.pascals < right.pascals;

    /// <summary>Whether the first is higher.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >(GaugePressure left, GaugePressure right) => left.pascals > right.pascals;

    /// <summary>Whether the first is not higher.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator <=(GaugePressure left, GaugePressure right) => left.pascals <= right.pascals;

    /// <summary>Whether the first is not lower.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator >=(GaugePressure left, GaugePressure right) => left.pascals >= right.pascals;

    /// <summary>Whether both are the same number of pascals.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator ==(GaugePressure left, GaugePressure right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator !=(GaugePressure left, GaugePressure right) => !left.Equals(right);

    /// <inheritdoc />
    public int CompareTo(GaugePressure other) => pascals.CompareTo(other.pascals);

    /// <inheritdoc />
    public bool Equals(GaugePressure other) => pascals.Equals(other.pascals);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is GaugePressure other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => pascals.GetHashCode();

    /// <summary>Formats as kilopascals, gauge, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>Formats as kilopascals, gauge.</summary>
    /// <param name="format">A number format; <c>0.##</c> when null.</param>
    /// <param name="formatProvider">The culture; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException"><paramref name="format"/> is not a number format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        PressureText.Of(pascals, "kPa gauge", format, formatProvider);
}
