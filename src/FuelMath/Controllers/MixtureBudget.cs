using FuelMath.Formulas;
using FuelMath.Statistics;

namespace FuelMath;

/// <summary>The uncertainty budget of the lambda of one chamber at the commanded width.</summary>
internal static class MixtureBudget
{
    private const double Bar = 1e5;
    private const double Millisecond = 1e-3;
    private const double Milligram = 1e-6;

    internal static UncertaintyBudget Of(FittedInjectors set, MixturePoint point, int chamber, MixtureUncertainty known)
    {
        FittedInjectors.Stage stage = set.Stages[0];
        Injector fitted = stage.Fitted[chamber];
        double width = MixtureWorking.Width(set, point).Value;
        double dead = fitted.DeadTime.SiAt(point.Injectors.Voltage, point.Injectors.DifferentialPressures[0]);
        double correction = fitted.Correction.SiAt(Math.Max(width - dead, 0));
        double pressure = point.Injectors.DifferentialPressures[0].InSi();
        double density = set.Fuel.DensityAt(point.Injectors.FuelTemperature).InSi();
        double air = point.AirSi(chamber);
        double ratio = set.Fuel.StoichiometricRatio.Si;
        return UncertaintyBudget.Of(
            new LambdaAtAWidth(fitted.Rating, width, correction, stage.PulsesPerCycle),
            "1",
            [
                Input("flow of the injector", 1, known.FlowShare, "1"),
                Input("dead time", dead / Millisecond, known.Seconds / Millisecond, "ms"),
                Input("pressure across", pressure / Bar, known.Pascals / Bar, "bar"),
                Input("density of the fuel", density, known.DensityShare * density, "kg/m3"),
                Input("air", air / Milligram, known.AirShare * air / Milligram, "mg"),
                Input("stoichiometric ratio", ratio, known.RatioShare * ratio, "1"),
            ]
        );

        UncertaintyBudget.Input Input(string name, double value, double uncertainty, string unit) =>
            new(name, value, uncertainty, unit, SpreadShape.Normal, known.Source);
    }

    /// <summary>Lambda from flow over the rated one, ms, bar, kg/m³, mg and the stoichiometric ratio.</summary>
    private readonly struct LambdaAtAWidth(FlowRating rating, double width, double correction, double pulses) : IFormula
    {
        private readonly FlowRating rating = rating;
        private readonly double width = width;
        private readonly double correction = correction;
        private readonly double pulses = pulses;

        /// <inheritdoc />
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T flow = a[0] * rating.MassFlow(a[2] * Bar, a[3]);
            T mass = Pulse.Mass(flow, Pulse.EffectiveWidth(T.Of(width), a[1] * Millisecond), T.Of(correction));
            return Combustion.Lambda(a[4] * Milligram, mass * pulses, a[5]);
        }
    }
}
