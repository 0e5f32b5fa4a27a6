using FuelMath.Formulas;
using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>The uncertainty budget of a static flow that was read on a bench and converted to a pressure.</summary>
internal static class BenchFlowBudget
{
    private const double Bar = 1e5;
    private const double CubicCentimeter = 1e-6;
    private const double Gram = 1e-3;
    private const double Minute = 60;

    internal static UncertaintyBudget Of(StaticFlowReading reading, BenchConditions.Uncertainty known, double pressure)
    {
        bool volume = reading.Collected.IsByVolume;
        BenchConditions at = reading.Conditions;
        double collected = volume
            ? reading.Collected.VolumeSi(at.DensitySi) / CubicCentimeter
            : reading.Collected.MassSi(at.DensitySi) / Gram;
        UncertaintyBudget.Input[] inputs =
        [
            Input("collected", collected, known.CollectedShare * collected, volume ? "cm3" : "g"),
            Input("time", reading.CollectionTime.InSi(), known.Seconds, "s"),
            Input("pressure across", at.PressureSi / Bar, known.Pascals / Bar, "bar"),
            Input("density", at.DensitySi, known.DensityShare * at.DensitySi, "kg/m3"),
            UncertaintyBudget.Input.FromExact("pressure asked for", pressure / Bar, "bar", known.Source),
        ];
        return volume
            ? UncertaintyBudget.Of(new ByVolume(at.DensitySi), "cm3/min", inputs)
            : UncertaintyBudget.Of(new ByMass(at.DensitySi), "g/s", inputs);

        UncertaintyBudget.Input Input(string name, double value, double uncertainty, string unit) =>
            new(name, value, uncertainty, unit, SpreadShape.Normal, known.Source);
    }

    /// <summary>cm³/min of the fluid as the bench's description has it, from cm³, s, bar, kg/m³ and bar.</summary>
    private readonly struct ByVolume(double density) : IFormula
    {
        private readonly double density = density;

        /// <inheritdoc />
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            Orifice.CarriedVolumeFlow(a[0] / a[1] * Minute, a[2] * Bar, a[3], a[4] * Bar, T.Of(density));
    }

    /// <summary>g/s of the fluid as the bench's description has it, from g, s, bar, kg/m³ and bar.</summary>
    private readonly struct ByMass(double density) : IFormula
    {
        private readonly double density = density;

        /// <inheritdoc />
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            Orifice.CarriedMassFlow(a[0] / a[1], a[2] * Bar, a[3], a[4] * Bar, T.Of(density));
    }
}
