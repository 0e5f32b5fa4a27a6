using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>The laws of a pure substance, made of its coefficients.</summary>
internal static class PureLaws
{
    private static readonly Symbol JoinedStep = new(
        "rhoj",
        "kg/m3",
        "density of ethanol: table, or handbook joined on above it"
    );

    private static readonly DataSource JoinedSource = new(
        "OIML-R22",
        "formula at 100 %; above 40 degrees Celsius [Perry-2008] table 2-32"
    );

    internal sealed class Density(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            ThermalExpansion.SaturatedLiquidDensity(
                of.MolarMass,
                1000 * of.DensityCoefficients.C1,
                of.DensityCoefficients.C2,
                of.DensityCoefficients.C3,
                of.DensityCoefficients.C4,
                kelvins
            );
    }

    internal sealed class Viscosity(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            SaturatedLiquid.Viscosity(
                of.ViscosityCoefficients.C1,
                of.ViscosityCoefficients.C2,
                of.ViscosityCoefficients.C3,
                of.ViscosityCoefficients.C4,
                of.ViscosityCoefficients.C5,
                kelvins
            );
    }

    internal sealed class VaporPressure(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            of.IsOldWagner
                ? Formulas.VaporPressure.WagnerOriginal(
                    of.CriticalTemperature,
                    of.CriticalPressure,
                    of.Wagner.A,
                    of.Wagner.B,
                    of.Wagner.C,
                    of.Wagner.D,
                    kelvins
                )
                : Formulas.VaporPressure.Wagner(
                    of.CriticalTemperature,
                    of.CriticalPressure,
                    of.Wagner.A,
                    of.Wagner.B,
                    of.Wagner.C,
                    of.Wagner.D,
                    kelvins
                );
    }

    internal sealed class HeatCapacity(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins) =>
            of.HeatCapacityCriticalTemperature > 0
                ? SaturatedLiquid.HeatCapacityNearCritical(
                    of.MolarMass,
                    of.HeatCapacityCriticalTemperature,
                    of.HeatCapacityCoefficients.C1,
                    of.HeatCapacityCoefficients.C2,
                    of.HeatCapacityCoefficients.C3,
                    of.HeatCapacityCoefficients.C4,
                    kelvins
                )
                : SaturatedLiquid.HeatCapacity(
                    of.MolarMass,
                    of.HeatCapacityCoefficients.C1,
                    of.HeatCapacityCoefficients.C2,
                    of.HeatCapacityCoefficients.C3,
                    of.HeatCapacityCoefficients.C4,
                    kelvins
                );
    }

    /// <summary>Ethanol: the alcohol table to its end, then the shape of the handbook's density joined on.</summary>
    internal sealed class JoinedDensity(PureComponent above, double joinKelvins, double scale) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            T table = ThermalExpansion.EthanolDensity(kelvins - SiUnits.KelvinsFromCelsius(0));
            T handbook = scale * new Density(above).At(kelvins);
            return T.Step(T.Select(T.Less(T.Of(joinKelvins), kelvins), handbook, table), JoinedStep, JoinedSource);
        }
    }
}
