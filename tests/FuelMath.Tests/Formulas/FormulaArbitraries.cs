using FsCheck;
using FsCheck.Fluent;

namespace FuelMath.Tests.Formulas;

/// <summary>Fractions from 0 to 1, from which a case makes a point of its ranges; the ends come up often.</summary>
internal static class FormulaArbitraries
{
    private const int Steps = 1 << 30;

    internal static Gen<double> Fraction { get; } =
        Gen.Frequency(
            (18, Gen.Choose(0, Steps).Select(i => i / (double)Steps)),
            (1, Gen.Constant(0.0)),
            (1, Gen.Constant(1.0))
        );

    internal static Arbitrary<double[]> Fractions(int count) => Fraction.ArrayOf(count).ToArbitrary();

    internal static void ForAll(int count, Action<double[]> law) =>
        Prop.ForAll(Fractions(count), law).Check(DrawnCasesAttribute.Settings);
}
