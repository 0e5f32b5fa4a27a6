using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Balances of oil and of fuel in a premix, by volume. SI units.</summary>
/// <seealso href="../guide/premix.html">Premix</seealso>
public static class PremixBalance
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource OilFractionSource = new("Definition", "of the ratio");

    internal static readonly DataSource OilSource = new("Definition", "of the ratio");

    internal static readonly DataSource MissingOilSource = new(
        "Definition",
        "conservation of the oil, volumes additive"
    );

    internal static readonly DataSource MissingFuelSource = new(
        "Definition",
        "conservation of the fuel, volumes additive"
    );

    internal static readonly Symbol OilStep = new("Voil", "m3", "volume of oil to add");

    internal static readonly Symbol FuelStep = new("Vfuel", "m3", "volume of fuel to add");

    internal static readonly Symbol FractionStep = new("f", "", "oil in a volume of the mix");

    /// <summary>
    /// Volume fraction of oil in the mix, from the oil per volume of fuel: r/(1 + r), which is 1/(n + 1) at n to 1.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="oilPerFuel">Volume of oil for each volume of fuel, not negative.</param>
    /// <returns>The fraction.</returns>
    /// <remarks>Source: [Definition] of the ratio.</remarks>
    [MethodImpl(Inline)]
    public static T OilFraction<T>(T oilPerFuel)
        where T : struct, IScalar<T> => T.Step(oilPerFuel / (1 + oilPerFuel), FractionStep, OilFractionSource);

    /// <summary>Oil for a volume of fuel.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="fuel">Volume of fuel, m³.</param>
    /// <param name="oilPerFuel">Volume of oil for each volume of fuel.</param>
    /// <returns>Volume of oil, m³.</returns>
    /// <remarks>Source: [Definition] of the ratio.</remarks>
    [MethodImpl(Inline)]
    public static T Oil<T>(T fuel, T oilPerFuel)
        where T : struct, IScalar<T> => T.Step(fuel * oilPerFuel, OilStep, OilSource);

    /// <summary>Oil to add to reach a ratio: V f - V0 f0.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="finalVolume">Volume in the tank afterwards, m³.</param>
    /// <param name="oilFraction">Oil in a volume of the mix wanted.</param>
    /// <param name="heldVolume">Volume in the tank, m³.</param>
    /// <param name="heldOilFraction">Oil in a volume of the mix there.</param>
    /// <returns>Volume of oil, m³; negative when the tank holds too much already.</returns>
    /// <remarks>Source: [Definition] conservation of the oil, volumes additive.</remarks>
    [MethodImpl(Inline)]
    public static T MissingOil<T>(T finalVolume, T oilFraction, T heldVolume, T heldOilFraction)
        where T : struct, IScalar<T> =>
        T.Step((finalVolume * oilFraction) - (heldVolume * heldOilFraction), OilStep, MissingOilSource);

    /// <summary>Fuel to add to reach a ratio: V (1 - f) - V0 (1 - f0).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="finalVolume">Volume in the tank afterwards, m³.</param>
    /// <param name="oilFraction">Oil in a volume of the mix wanted.</param>
    /// <param name="heldVolume">Volume in the tank, m³.</param>
    /// <param name="heldOilFraction">Oil in a volume of the mix there.</param>
    /// <returns>Volume of fuel, m³; negative when the tank holds too much already.</returns>
    /// <remarks>Source: [Definition] conservation of the fuel, volumes additive.</remarks>
    [MethodImpl(Inline)]
    public static T MissingFuel<T>(T finalVolume, T oilFraction, T heldVolume, T heldOilFraction)
        where T : struct, IScalar<T> =>
        T.Step((finalVolume * (1 - oilFraction)) - (heldVolume * (1 - heldOilFraction)), FuelStep, MissingFuelSource);
}
