using FuelMath.Formulas;
using FuelMath.Statistics;

namespace FuelMath.ShopTests;

/// <summary>The uncertainty budget of the leak rate of a decay test, in workshop units.</summary>
internal static class DecayBudget
{
    private const double Bar = 1e5;
    private const double Liter = 1e-3;
    private const double CubicCentimeter = 1e-6;
    private const double PerGigapascal = 1e-9;
    private const double CubicMillimeter = 1e-9;

    private static readonly DataSource Stated = new("Definition", "as stated for this test");

    /// <summary>Cubic meters per unit of the budget's result.</summary>
    internal static double RateUnit => CubicMillimeter;

    internal static UncertaintyBudget Of(
        ClosedVolume volume,
        DecayTest.Reading before,
        DecayTest.Reading after,
        DecayTest.Uncertainty known,
        double absoluteBefore,
        double absoluteAfter
    )
    {
        double expansion = Math.Sqrt(
            Math.Pow(known.Volume.FuelExpansionShare * volume.FuelExpands, 2)
                + Math.Pow(known.Volume.WallExpansionShare * volume.WallsExpand, 2)
        );
        return UncertaintyBudget.Of(
            new LeakRate(volume.Outside),
            "mm3/s",
            [
                Input("volume of fuel", volume.Liquid, known.Volume.FuelShare * volume.Liquid, "L", Liter),
                Input(
                    "bulk modulus",
                    volume.Modulus,
                    known.Volume.ModulusShare * volume.Modulus,
                    "GPa",
                    1 / PerGigapascal
                ),
                Input(
                    "swelling of the walls",
                    volume.Swells,
                    known.Volume.SwellingShare * volume.Swells,
                    "1/GPa",
                    PerGigapascal
                ),
                Input("expansion of fuel and walls", volume.Expansion, expansion, "1/K", 1),
                Input("trapped gas", volume.Gas / volume.Outside, known.Volume.GasVolume, "cm3", CubicCentimeter),
                Input("pressure before", absoluteBefore, known.Pascals, "bar", Bar),
                Input("temperature before", before.Kelvins, known.Kelvins, "K", 1),
                Input("pressure after", absoluteAfter, known.Pascals, "bar", Bar),
                Input("temperature after", after.Kelvins, known.Kelvins, "K", 1),
                Input("time", after.Seconds - before.Seconds, Math.Sqrt(2) * known.Seconds, "s", 1),
            ]
        );
    }

    private static UncertaintyBudget.Input Input(
        string name,
        double si,
        double uncertainty,
        string unit,
        double size
    ) => new(name, si / size, uncertainty / size, unit, SpreadShape.Normal, Stated);

    /// <summary>The rate from inputs in the units above; pressures are absolute.</summary>
    private readonly struct LeakRate(double outside) : IFormula
    {
        private readonly double outside = outside;

        /// <inheritdoc />
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            PressureDecay.LeakedVolume(
                a[0] * Liter,
                a[1] * (1 / PerGigapascal),
                a[2] * PerGigapascal,
                a[3],
                a[4] * (CubicCentimeter * outside),
                a[5] * Bar,
                a[6],
                a[7] * Bar,
                a[8]
            ) / (a[9] * CubicMillimeter);
    }
}
