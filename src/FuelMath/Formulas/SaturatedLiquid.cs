using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Viscosity and heat capacity of pure liquids, in the forms in which a handbook tabulates its coefficients.</summary>
/// <remarks>
/// The coefficients belong to a substance and carry their own range of temperature; outside it the form still gives a
/// number, so the caller checks the range.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class SaturatedLiquid
{
    internal static readonly DataSource ViscositySource = new("Perry-2008", "table 2-313, equation 101");

    internal static readonly DataSource HeatCapacitySource = new("Perry-2008", "table 2-153, equation 100");

    internal static readonly DataSource HeatCapacityNearCriticalSource = new("Perry-2008", "table 2-153, equation 114");

    internal static readonly Symbol HeatCapacityStep = new("cp", "J/(kg K)", "isobaric heat capacity of the liquid");

    internal static readonly Symbol ViscosityStep = new("mu", "Pa s", "dynamic viscosity of the liquid");

    internal static readonly Symbol PetroleumStep = new(
        "cp",
        "J/(kg K)",
        "heat capacity of a petroleum liquid, an estimate"
    );

    internal static readonly DataSource PetroleumHeatCapacitySource = new(
        "NBS-MP97",
        "specific heat of liquid petroleum products"
    );

    /// <summary>Heat capacity of a petroleum liquid: 4186.8 (0.4024 + 0.00081 t) / sqrt(d).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="relativeDensity">Density at 60 degrees Fahrenheit over that of water; 0.64 to 0.97.</param>
    /// <param name="celsius">In °C, -20 to 200.</param>
    /// <returns>The heat capacity, in J/(kg K).</returns>
    /// <remarks>Within about 5 %. Source: [NBS-MP97] specific heat of liquid petroleum products.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PetroleumHeatCapacity<T>(T relativeDensity, T celsius)
        where T : struct, IScalar<T> =>
        T.Step(
            4186.8 * (0.4024 + (0.00081 * celsius)) / T.Sqrt(relativeDensity),
            PetroleumStep,
            PetroleumHeatCapacitySource
        );

    /// <summary>
    /// Dynamic viscosity, ln mu = c1 + c2/T + c3 ln T + c4 T^c5. Source: [Perry-2008] table 2-313, equation 101.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="c1">First coefficient.</param>
    /// <param name="c2">Second coefficient, in K.</param>
    /// <param name="c3">Third coefficient.</param>
    /// <param name="c4">Fourth coefficient; zero when the table has none.</param>
    /// <param name="c5">Fifth coefficient.</param>
    /// <param name="temperature">In K; greater than zero.</param>
    /// <returns>The dynamic viscosity, in Pa s.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Viscosity<T>(double c1, double c2, double c3, double c4, double c5, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(
            T.Exp(c1 + c2 / temperature + c3 * T.Log(temperature) + c4 * T.Pow(temperature, c5)),
            ViscosityStep,
            ViscositySource
        );

    /// <summary>
    /// Isobaric heat capacity, cp = (c1 + c2 T + c3 T^2 + c4 T^3) / (1000 M). Source: [Perry-2008] table 2-153, equation 100.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="molarMass">Molar mass M, kg/mol.</param>
    /// <param name="c1">First coefficient, J/(kmol K).</param>
    /// <param name="c2">Second coefficient.</param>
    /// <param name="c3">Third coefficient.</param>
    /// <param name="c4">Fourth coefficient.</param>
    /// <param name="temperature">In K; inside the range of the coefficients.</param>
    /// <returns>The heat capacity, in J/(kg K).</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HeatCapacity<T>(double molarMass, double c1, double c2, double c3, double c4, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(
            (c1 + (temperature * (c2 + (temperature * (c3 + (temperature * c4)))))) / (1000 * molarMass),
            HeatCapacityStep,
            HeatCapacitySource
        );

    /// <summary>
    /// Isobaric heat capacity in the form that rises to the critical point, with t = 1 - T/Tc:
    /// c1^2/t + c2 - 2 c1 c3 t - c1 c4 t^2 - c3^2 t^3/3 - c3 c4 t^4/2 - c4^2 t^5/5, over 1000 M.
    /// Source: [Perry-2008] table 2-153, equation 114.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="molarMass">Molar mass M, kg/mol.</param>
    /// <param name="criticalTemperature">Critical temperature Tc, K.</param>
    /// <param name="c1">First coefficient.</param>
    /// <param name="c2">Second coefficient, J/(kmol K).</param>
    /// <param name="c3">Third coefficient.</param>
    /// <param name="c4">Fourth coefficient.</param>
    /// <param name="temperature">In K; below the critical one and inside the range of the coefficients.</param>
    /// <returns>The heat capacity, in J/(kg K).</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HeatCapacityNearCritical<T>(
        double molarMass,
        double criticalTemperature,
        double c1,
        double c2,
        double c3,
        double c4,
        T temperature
    )
        where T : struct, IScalar<T>
    {
        T t = 1 - (temperature / criticalTemperature);
        T low = (c1 * c1 / t) + c2 - (2 * c1 * c3 * t) - (c1 * c4 * t * t);
        T high = t * t * t * ((c3 * c3 / 3) + (t * ((c3 * c4 / 2) + (t * (c4 * c4 / 5)))));
        return T.Step((low - high) / (1000 * molarMass), HeatCapacityStep, HeatCapacityNearCriticalSource);
    }
}
