using System.Globalization;

namespace FuelMath;

/// <summary>Mass of air for each mass of fuel.</summary>
/// <remarks>
/// Always by mass: an average by volume is a different, wrong number. The default value is not a ratio; use
/// <see cref="FromMassRatio"/>. Equal and ordered by its value, exactly.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public readonly struct AirFuelRatio : IEquatable<AirFuelRatio>, IFormattable
{
    private readonly double ratio;

    private AirFuelRatio(double ratio) => this.ratio = ratio;

    internal double Si => ratio;

    /// <summary>Creates a ratio of masses.</summary>
    /// <param name="airOverFuel">Mass of air over mass of fuel, a pure number greater than zero.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite and greater than zero.</exception>
    public static AirFuelRatio FromMassRatio(double airOverFuel) => new(Guard.Positive(airOverFuel));

    /// <summary>Mass of air over mass of fuel, a pure number.</summary>
    /// <returns>The number.</returns>
    public double ToMassRatio() => ratio;

    /// <summary>This mixture relative to a fuel's stoichiometric one.</summary>
    /// <param name="stoichiometric">The fuel's stoichiometric ratio.</param>
    /// <returns>Lambda.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stoichiometric"/> is the default value.</exception>
    public Lambda ToLambda(AirFuelRatio stoichiometric) =>
        Lambda.FromRatio(ratio / Guard.Positive(stoichiometric.ratio, nameof(stoichiometric)));

    /// <summary>Whether both are the same number.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator ==(AirFuelRatio left, AirFuelRatio right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator !=(AirFuelRatio left, AirFuelRatio right) => !left.Equals(right);

    /// <inheritdoc />
    public bool Equals(AirFuelRatio other) => ratio.Equals(other.ratio);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is AirFuelRatio other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => ratio.GetHashCode();

    /// <summary>Formats the number, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>Formats the number.</summary>
    /// <param name="format">A number format; <c>0.00</c> when null.</param>
    /// <param name="formatProvider">The culture; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException"><paramref name="format"/> is not a number format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        ratio.ToString(format ?? "0.00", formatProvider ?? CultureInfo.InvariantCulture);
}
