using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>The laws of petroleum liquids.</summary>
internal static class PetroleumLaws
{
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

    private static readonly DataSource GasolineViscositySource = new("White-1999", "table A.3");

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

    internal sealed class GasolineViscosity(double at20, double parameter) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            T.Step(
                at20 * PetroleumViscosity.Relative(parameter, kelvins),
                GasolineViscosityStep,
                GasolineViscositySource
            );
    }

    internal sealed class ReidVaporPressure(double reidPressure) : PropertyLaw
    {
        internal override T At<T>(T kelvins) => VaporPressure.FromReid(T.Of(reidPressure), kelvins);
    }
}
