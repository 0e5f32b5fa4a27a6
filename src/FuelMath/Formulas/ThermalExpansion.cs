using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Volume and density of a liquid against temperature, at atmospheric pressure. SI units.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class ThermalExpansion
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource LinearVolumeSource = new("Definition", "of the coefficient, taken as constant");

    internal static readonly DataSource GasolineCoefficientSource = new(
        "ASTM-D1250",
        "table 54B, gasolines: K0 346.4228, K1 0.4388"
    );

    internal static readonly DataSource ProductCoefficientSource = new("ASTM-D1250", "table 54B");

    internal static readonly DataSource LubricantCoefficientSource = new(
        "ASTM-D1250",
        "table 54D, lubricating oils: K1 0.6278"
    );

    internal static readonly DataSource VolumeCorrectionSource = new(
        "ASTM-D1250",
        "equation of the volume correction factor"
    );

    internal static readonly DataSource GasolineVolumeCorrectionSource = new("ASTM-D1250", "table 54B");

    internal static readonly DataSource EthanolDensitySource = new("OIML-R22", "general formula, p = 1");

    internal static readonly DataSource SaturatedLiquidDensitySource = new("Perry-2008", "table 2-32, equation 105");

    internal static readonly Symbol LinearVolumeResult = new("rV", "", "volume over volume at the reference");

    internal static readonly Symbol CoefficientResult = new(
        "alpha15",
        "1/K",
        "coefficient of volume expansion at 15 degrees Celsius"
    );

    internal static readonly Symbol EthanolStep = new("rho", "kg/m3", "density of ethanol");

    internal static readonly Symbol SaturatedStep = new("rho", "kg/m3", "density of the saturated liquid");

    /// <summary>Volume over volume at the reference temperature: 1 + beta dT.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="coefficient">Coefficient of volume expansion, 1/K.</param>
    /// <param name="temperatureDifference">Temperature above the reference, K; either sign.</param>
    /// <returns>The volume ratio.</returns>
    /// <remarks>Source: [Definition] of the coefficient, taken as constant.</remarks>
    [MethodImpl(Inline)]
    public static T LinearVolume<T>(T coefficient, T temperatureDifference)
        where T : struct, IScalar<T> =>
        T.Step(1 + (coefficient * temperatureDifference), LinearVolumeResult, LinearVolumeSource);

    /// <summary>The expansion coefficient of a gasoline at 15 °C: K0/rho^2 + K1/rho.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density15">Density at 15 °C, 653 to 770 kg/m³.</param>
    /// <returns>Coefficient of volume expansion, 1/K.</returns>
    /// <remarks>Source: [ASTM-D1250] table 54B, gasolines: K0 346.4228, K1 0.4388.</remarks>
    [MethodImpl(Inline)]
    public static T GasolineCoefficient<T>(T density15)
        where T : struct, IScalar<T> =>
        T.Step(((346.4228 / density15) + 0.4388) / density15, CoefficientResult, GasolineCoefficientSource);

    /// <summary>The expansion coefficient of any petroleum product at 15 °C.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density15">Density at 15 °C, 653 to 1075 kg/m³.</param>
    /// <returns>Coefficient of volume expansion, 1/K.</returns>
    /// <remarks>
    /// Four bands: gasolines to 770, a transition to 787.5, jet fuels to 839, fuel oils above. The bands don't meet
    /// exactly. Source: [ASTM-D1250] table 54B.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T ProductCoefficient<T>(T density15)
        where T : struct, IScalar<T>
    {
        T transition = (2680.3206 / (density15 * density15)) - 0.00336312;
        T jet = 594.5418 / (density15 * density15);
        T oil = ((186.9696 / density15) + 0.4862) / density15;
        T heavy = T.Select(T.Less(density15, T.Of(839)), jet, oil);
        T middle = T.Select(T.Less(density15, T.Of(787.5)), transition, heavy);
        return T.Step(
            T.Select(T.Less(T.Of(770), density15), middle, GasolineCoefficient(density15)),
            CoefficientResult,
            ProductCoefficientSource
        );
    }

    /// <summary>The expansion coefficient of a lubricating oil at 15 °C: 0.6278 / rho.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density15">Density at 15 °C, 800 to 1164 kg/m³.</param>
    /// <returns>Coefficient of volume expansion, 1/K.</returns>
    /// <remarks>Source: [ASTM-D1250] table 54D, lubricating oils: K1 0.6278.</remarks>
    [MethodImpl(Inline)]
    public static T LubricantCoefficient<T>(T density15)
        where T : struct, IScalar<T> => T.Step(0.6278 / density15, CoefficientResult, LubricantCoefficientSource);

    /// <summary>Density at a temperature over density at 15 degrees: exp(-a dT (1 + 0.8 a dT)).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="coefficient15">Coefficient of volume expansion at 15 °C, 1/K.</param>
    /// <param name="temperatureCelsius">Temperature, °C; -18 to 90.</param>
    /// <returns>The volume correction factor: the density ratio, and the inverse of the volume ratio.</returns>
    /// <remarks>Source: [ASTM-D1250] equation of the volume correction factor.</remarks>
    [MethodImpl(Inline)]
    public static T VolumeCorrection<T>(T coefficient15, T temperatureCelsius)
        where T : struct, IScalar<T>
    {
        T growth = coefficient15 * (temperatureCelsius - 15);
        return T.Step(T.Exp(-growth * (1 + (0.8 * growth))), Symbols.VolumeCorrection, VolumeCorrectionSource);
    }

    /// <summary>Density of a gasoline at a temperature over its density at 15 °C.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density15">Density at 15 °C, 653 to 770 kg/m³.</param>
    /// <param name="temperatureCelsius">Temperature, °C; -18 to 90.</param>
    /// <returns>The volume correction factor.</returns>
    /// <remarks>For gasolines without alcohol. Source: [ASTM-D1250] table 54B.</remarks>
    [MethodImpl(Inline)]
    public static T GasolineVolumeCorrection<T>(T density15, T temperatureCelsius)
        where T : struct, IScalar<T> => VolumeCorrection(GasolineCoefficient(density15), temperatureCelsius);

    /// <summary>The density of pure ethanol.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="temperatureCelsius">Temperature, °C; -20 to 40.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>
    /// The general formula of the alcohol tables, reduced to a mass fraction of 1. Source: [OIML-R22] general formula,
    /// p = 1.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T EthanolDensity<T>(T temperatureCelsius)
        where T : struct, IScalar<T>
    {
        T t = temperatureCelsius - 20;
        T high = -7.80123947369e-8 + (t * (-7.25526071289e-9 + (t * -9.9739231e-11)));
        return T.Step(
            789.2391233 + (t * (-0.85510821289065 + (t * (-3.663551677e-4 + (t * (-2.00294951554e-6 + (t * high))))))),
            EthanolStep,
            EthanolDensitySource
        );
    }

    /// <summary>The density of a saturated liquid: rho = M c1 / c2^(1 + (1 - T/c3)^c4).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="molarMass">Molar mass M, kg/mol.</param>
    /// <param name="c1">First coefficient, mol/m³.</param>
    /// <param name="c2">Second coefficient, a pure number; greater than zero.</param>
    /// <param name="c3">Third coefficient, K: the critical temperature.</param>
    /// <param name="c4">Fourth coefficient, a pure number.</param>
    /// <param name="temperature">Temperature, K; below the critical one.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: [Perry-2008] table 2-32, equation 105.</remarks>
    [MethodImpl(Inline)]
    public static T SaturatedLiquidDensity<T>(
        double molarMass,
        double c1,
        double c2,
        double c3,
        double c4,
        T temperature
    )
        where T : struct, IScalar<T>
    {
        T power = 1 + T.Pow(1 - (temperature / c3), c4);
        return T.Step(molarMass * c1 * T.Exp(-Math.Log(c2) * power), SaturatedStep, SaturatedLiquidDensitySource);
    }
}
