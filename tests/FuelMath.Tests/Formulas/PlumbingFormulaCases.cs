using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of tubes, filters, pumps and regulators for the matrix of readings.</summary>
internal static class PlumbingFormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new Hoop(),
        new ThinPressure(),
        new ThickPressure(),
        new ThinSwelling(),
        new ThickSwelling(),
        new Efficiency(),
        new Beta(),
        new BetaInSeries(),
        new AddedCoefficient(),
        new Flow(),
        new Rise(),
        new Power(),
        new Worn(),
        new Warming(),
        new Reduced(),
        new ReducedSpring(),
        new FullyOpenFlow(),
    ];

    private sealed class Hoop()
        : FormulaCase("TubeElasticity.HoopStress", 0, (-1e7, 1e7), (2e-3, 0.02), (0.021, 0.05), (2e-3, 0.05))
    {
        internal override T At<T>(T[] a) => TubeElasticity.HoopStress(a[0], a[1], a[2], a[3]);
    }

    private sealed class ThinPressure()
        : FormulaCase("TubeElasticity.ThinWallPressure", 0, (1e-4, 2e-3), (4e-3, 0.05), (1e6, 1e9))
    {
        internal override T At<T>(T[] a) => TubeElasticity.ThinWallPressure(a[0], a[1], a[2]);
    }

    private sealed class ThickPressure()
        : FormulaCase("TubeElasticity.ThickWallPressure", 0, (2e-3, 0.02), (0.021, 0.05), (1e6, 1e9))
    {
        internal override T At<T>(T[] a) => TubeElasticity.ThickWallPressure(a[0], a[1], a[2]);
    }

    private sealed class ThinSwelling()
        : FormulaCase("TubeElasticity.ThinWallSwelling", 0, (4e-3, 0.05), (1e-4, 2e-3), (1e9, 3e11), (0, 0.5))
    {
        internal override T At<T>(T[] a) => TubeElasticity.ThinWallSwelling(a[0], a[1], a[2], a[3]);
    }

    private sealed class ThickSwelling()
        : FormulaCase("TubeElasticity.ThickWallSwelling", 0, (2e-3, 0.02), (0.021, 0.05), (1e9, 3e11), (0, 0.5))
    {
        internal override T At<T>(T[] a) => TubeElasticity.ThickWallSwelling(a[0], a[1], a[2], a[3]);
    }

    private sealed class Efficiency() : FormulaCase("Filtration.Efficiency", 0, (1, 5000))
    {
        internal override T At<T>(T[] a) => Filtration.Efficiency(a[0]);
    }

    private sealed class Beta() : FormulaCase("Filtration.BetaRatio", 0, (0, 0.999))
    {
        internal override T At<T>(T[] a) => Filtration.BetaRatio(a[0]);
    }

    private sealed class BetaInSeries() : FormulaCase("Filtration.InSeries", 0, (1, 5000), (1, 5000))
    {
        internal override T At<T>(T[] a) => Filtration.InSeries(a[0], a[1]);
    }

    private sealed class AddedCoefficient()
        : FormulaCase("Filtration.AddedCoefficient", 0, (0, 1e5), (2e-4, 0.1), (1e-6, 1e-3))
    {
        internal override T At<T>(T[] a) => Filtration.AddedCoefficient(a[0], a[1], a[2]);
    }

    private sealed class Flow() : FormulaCase("PumpScaling.Flow", 0, (0, 1e-3), (0.1, 2))
    {
        internal override T At<T>(T[] a) => PumpScaling.Flow(a[0], a[1]);
    }

    private sealed class Rise() : FormulaCase("PumpScaling.PressureRise", 0, (0, 1e6), (0.1, 2))
    {
        internal override T At<T>(T[] a) => PumpScaling.PressureRise(a[0], a[1]);
    }

    private sealed class Power() : FormulaCase("PumpScaling.Power", 0, (0, 500), (0.1, 2))
    {
        internal override T At<T>(T[] a) => PumpScaling.Power(a[0], a[1]);
    }

    private sealed class Worn() : FormulaCase("PumpScaling.WornFlow", 0, (0, 1e-3), (0, 1), (0, 1e-10), (0, 1e6))
    {
        internal override T At<T>(T[] a) => PumpScaling.WornFlow(a[0], a[1], a[2], a[3]);
    }

    private sealed class Warming()
        : FormulaCase("PumpScaling.TemperatureRise", 0, (0, 500), (600, 1000), (1500, 4200), (1e-6, 1e-3))
    {
        internal override T At<T>(T[] a) => PumpScaling.TemperatureRise(a[0], a[1], a[2], a[3]);
    }

    private sealed class Reduced()
        : FormulaCase(
            "ReducingValve.HeldPressure",
            0,
            (50, 500),
            (-1e5, 2e5),
            (2e5, 1e6),
            (5e-4, 2e-3),
            (1e-6, 1e-4),
            (0, 1e9),
            (0, 1e-4)
        )
    {
        internal override T At<T>(T[] a) => ReducingValve.HeldPressure(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }

    private sealed class ReducedSpring()
        : FormulaCase(
            "ReducingValve.SpringForce",
            0,
            (1e5, 6e5),
            (0, 1e-4),
            (2e5, 1e6),
            (0, 1e9),
            (5e-4, 2e-3),
            (1e-6, 1e-4)
        )
    {
        internal override T At<T>(T[] a) => ReducingValve.SpringForce(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    /// <summary>Some slope always: with no margin and no slope the flow is a root of zero, and has no derivative.</summary>
    private sealed class FullyOpenFlow()
        : FormulaCase("BypassValve.FullyOpenFlow", 0, (0, 5e5), (1e5, 1e9), (1e11, 1e13))
    {
        internal override T At<T>(T[] a) => BypassValve.FullyOpenFlow(a[0], a[1], a[2]);
    }
}
