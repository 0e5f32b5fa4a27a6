using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The laws of petroleum liquids.</summary>
internal static class PetroleumLaws
{
    /// <summary>Density of water at 60 °F, in kg/m³, to which a relative density of petroleum refers. Source: [CRC-Handbook] density of water.</summary>
    private const double WaterAt60Fahrenheit = 999.016;

    private static readonly Symbol DensityStep = new("rho", "kg/m3", "density");

    private static readonly DataSource DensitySource = new(
        "ASTM-D1250",
        "density at 15 degrees Celsius times the volume correction factor"
    );

    private static readonly Symbol ViscosityStep = new("mu", "Pa s", "dynamic viscosity");

    private static readonly DataSource ViscositySource = new("Definition", "kinematic viscosity times density");

    private static readonly Symbol GasolineViscosityStep = new(
        "mu",
        "Pa s",
        "dynamic viscosity of gasoline, an estimate"
    );

    private static T InCelsius<T>(T kelvins)
        where T : struct, IScalar<T> => kelvins - SiUnits.KelvinsFromCelsius(0);

    internal sealed class Gasoline(double at15) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                at15 * ThermalExpansion.GasolineVolumeCorrection(T.Of(at15), InCelsius(kelvins)),
                DensityStep,
                DensitySource
            );
    }

    internal sealed class Product(double at15) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                at15
                    * ThermalExpansion.VolumeCorrection(
                        ThermalExpansion.ProductCoefficient(T.Of(at15)),
                        InCelsius(kelvins)
                    ),
                DensityStep,
                DensitySource
            );
    }

    internal sealed class Lubricant(double at15) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                at15
                    * ThermalExpansion.VolumeCorrection(
                        ThermalExpansion.LubricantCoefficient(T.Of(at15)),
                        InCelsius(kelvins)
                    ),
                DensityStep,
                DensitySource
            );
    }

    internal sealed class OilViscosity(double first, double cold, double second, double hot, TemperatureLaw density)
        : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                density.Read(kelvins) * PetroleumViscosity.Kinematic(first, cold, second, hot, kelvins),
                ViscosityStep,
                ViscositySource
            );
    }

    internal sealed class GasolineViscosity(double at15, TemperatureLaw density) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                PetroleumViscosity.Gasoline(T.Of(at15 / WaterAt60Fahrenheit), kelvins) * density.Read(kelvins),
                GasolineViscosityStep,
                ViscositySource
            );
    }

    internal sealed class HeatCapacity(double at15) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            SaturatedLiquid.PetroleumHeatCapacity(T.Of(at15 / WaterAt60Fahrenheit), InCelsius(kelvins));

        internal override double ErrorAt(double kelvins) => 0.05;
    }

    internal sealed class GasolineModulus(double at15) : PropertyLaw
    {
        internal override T At<T>(T kelvins) => LiquidElasticity.GasolineModulus(T.Of(at15), InCelsius(kelvins));

        internal override double ErrorAt(double kelvins)
        {
            double share = LiquidElasticity.GasolineModulusError(InCelsius(new Real(kelvins))).Value;
            return share / (1 - share);
        }
    }

    internal sealed class ReidVaporPressure(double reidPressure) : PropertyLaw
    {
        internal override T At<T>(T kelvins) => VaporPressure.FromReid(T.Of(reidPressure), kelvins);

        /// <summary>
        /// An ideal mixture has 2.8 % more at 60 °C and 6.8 % more at 100 °C: 0.13 % per kelvin bounds both.
        /// </summary>
        internal override double ErrorAt(double kelvins) =>
            0.0013 * Math.Max(0, SiUnits.CelsiusFromKelvins(kelvins) - LiquidVaporPressure.HighestReidCelsius);
    }
}
