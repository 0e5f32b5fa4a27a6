using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The formulas of fittings and seals for the matrix of readings.</summary>
internal static class FittingFormulaCases
{
    internal static IReadOnlyList<FormulaCase> All { get; } =
    [
        new Rounded(),
        new Miter(),
        new Two(),
        new Contraction(),
        new Expansion(),
        new DividingBranch(),
        new DividingRun(),
        new CombiningBranch(),
        new CombiningRun(),
        new Stretch(),
        new Reduction(),
        new Squeeze(),
        new Fill(),
    ];

    // An exponent of up to 4 ln 20 = 12, from a logarithm that is right to a few units: 12 times as many in the result.
    private sealed class Rounded()
        : FormulaCase("BendLoss.RoundedBend", 64, (0.008, 0.1), (0.1, 3.1), (0.1, 1), (0.7, 20))
    {
        internal override T At<T>(T[] a) => BendLoss.RoundedBend(a[0], a[1], a[2], a[3]);
    }

    private sealed class Miter() : FormulaCase("BendLoss.MiterBend", 0, (0, 1))
    {
        internal override T At<T>(T[] a) => BendLoss.MiterBend(a[0]);
    }

    private sealed class Two() : FormulaCase("BendLoss.TwoConstants", 0, (100, 2000), (0.05, 5), (10, 1e6), (3e-3, 0.1))
    {
        internal override T At<T>(T[] a) => BendLoss.TwoConstants(a[0], a[1], a[2], a[3]);
    }

    private sealed class Contraction() : FormulaCase("BendLoss.GradualContraction", 0, (0.05, 1), (0.01, 0.99))
    {
        internal override T At<T>(T[] a) => BendLoss.GradualContraction(a[0], a[1]);
    }

    private sealed class Expansion() : FormulaCase("BendLoss.GradualExpansion", 0, (0.05, 1), (0.01, 0.99))
    {
        internal override T At<T>(T[] a) => BendLoss.GradualExpansion(a[0], a[1]);
    }

    // Area ratios on one side of the limits, across which the tables of the book jump.
    private sealed class DividingBranch() : FormulaCase("TeeLoss.DividingBranch", 0, (0, 1), (0.7, 1))
    {
        internal override T At<T>(T[] a) => TeeLoss.DividingBranch(a[0], a[1], 90);
    }

    private sealed class DividingRun() : FormulaCase("TeeLoss.DividingRun", 0, (0, 1), (0.45, 1))
    {
        internal override T At<T>(T[] a) => TeeLoss.DividingRun(a[0], a[1]);
    }

    private sealed class CombiningBranch() : FormulaCase("TeeLoss.CombiningBranch", 0, (0, 1), (0.4, 1))
    {
        internal override double[] Jumps => [0.4];

        internal override T At<T>(T[] a) => TeeLoss.CombiningBranch(a[0], a[1], 45);
    }

    private sealed class CombiningRun() : FormulaCase("TeeLoss.CombiningRun", 0, (0, 1), (0.4, 1))
    {
        internal override T At<T>(T[] a) => TeeLoss.CombiningRun(a[0], a[1], 45);
    }

    private sealed class Stretch() : FormulaCase("SealFit.Stretch", 0, (5e-3, 0.03), (5e-3, 0.03))
    {
        internal override T At<T>(T[] a) => SealFit.Stretch(a[0], a[1]);
    }

    // Slender rings; at no stretch and at 3 % the standard changes over with a small step.
    private sealed class Reduction() : FormulaCase("SealFit.SectionReduction", 64, (-0.05, 0.25), (3, 20))
    {
        internal override double[] Jumps => [0, 0.03];

        internal override T At<T>(T[] a) => SealFit.SectionReduction(a[0], a[1]);
    }

    private sealed class Squeeze() : FormulaCase("SealFit.Squeeze", 0, (5e-4, 5e-3), (1e-3, 6e-3))
    {
        internal override T At<T>(T[] a) => SealFit.Squeeze(a[0], a[1]);
    }

    private sealed class Fill() : FormulaCase("SealFit.Fill", 0, (1e-3, 6e-3), (5e-4, 5e-3), (1e-3, 1e-2))
    {
        internal override T At<T>(T[] a) => SealFit.Fill(a[0], a[1], a[2]);
    }
}
