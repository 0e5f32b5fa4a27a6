using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The laws of a pure substance, from its coefficients.</summary>
internal static class PureLaws
{
    private static readonly Symbol JoinedStep = new(
        "rhoj",
        "kg/m3",
        "density of ethanol: table, or anchored handbook joined on above it"
    );

    private static readonly DataSource JoinedSource = new(
        "OIML-R22",
        "formula at 100 %; above 40 degrees Celsius [Schroeder-2014] equation of state"
    );

    private static readonly Symbol AnchoredStep = new(
        "rhoa",
        "kg/m3",
        "density of the handbook, anchored at the equation of state"
    );

    internal sealed class Density(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            (double c1, double c2, double c3, double c4) = of.DensityCoefficients;
            return ThermalExpansion.SaturatedLiquidDensity(of.MolarMass, 1000 * c1, c2, c3, c4, kelvins);
        }
    }

    internal sealed class Viscosity(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            (double c1, double c2, double c3, double c4, double c5) = of.ViscosityCoefficients;
            return SaturatedLiquid.Viscosity(c1, c2, c3, c4, c5, kelvins);
        }
    }

    internal sealed class VaporPressure(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            (double a, double b, double c, double d) = of.Wagner;
            return of.IsOldWagner
                ? Formulas.VaporPressure.WagnerOriginal(
                    of.CriticalTemperature,
                    of.CriticalPressure,
                    a,
                    b,
                    c,
                    d,
                    kelvins
                )
                : Formulas.VaporPressure.Wagner(of.CriticalTemperature, of.CriticalPressure, a, b, c, d, kelvins);
        }
    }

    internal sealed class HeatCapacity(PureComponent of) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            (double c1, double c2, double c3, double c4) = of.HeatCapacityCoefficients;
            double critical = of.HeatCapacityCriticalTemperature;
            return critical > 0
                ? SaturatedLiquid.HeatCapacityNearCritical(of.MolarMass, critical, c1, c2, c3, c4, kelvins)
                : SaturatedLiquid.HeatCapacity(of.MolarMass, c1, c2, c3, c4, kelvins);
        }
    }

    /// <summary>
    /// The handbook's curve, scaled to the densities of an equation of state; below the first of these by the factor of
    /// the first.
    /// </summary>
    internal sealed class AnchoredDensity : PropertyLaw
    {
        private readonly Density shape;
        private readonly Curve factor;
        private readonly DataSource source;

        internal AnchoredDensity(PureComponent of, string key)
        {
            shape = new(of);
            double[] kelvins = [.. of.Anchors.Select(a => SiUnits.KelvinsFromCelsius(a.Celsius))];
            factor = new(
                "Density over that of the handbook",
                "T in K",
                kelvins,
                kelvins.Select((k, i) => of.Anchors[i].Density / shape.At(new Real(k)).Value),
                OutsideRange.HoldEnds
            );
            source = new(key, "equation of state, evaluated");
        }

        internal override T At<T>(T kelvins) => T.Step(shape.At(kelvins) * factor.Read(kelvins), AnchoredStep, source);
    }

    /// <summary>
    /// Ethanol: the alcohol table up to its end, then the handbook's curve scaled to it and to the equation of state.
    /// </summary>
    internal sealed class JoinedDensity(PureComponent above, double joinKelvins) : PropertyLaw
    {
        private readonly AnchoredDensity hot = new(above, above.AnchorKey);

        internal override T At<T>(T kelvins)
        {
            T table = ThermalExpansion.EthanolDensity(kelvins - SiUnits.KelvinsFromCelsius(0));
            return T.Step(
                T.Select(T.Less(T.Of(joinKelvins), kelvins), hot.At(kelvins), table),
                JoinedStep,
                JoinedSource
            );
        }
    }
}
