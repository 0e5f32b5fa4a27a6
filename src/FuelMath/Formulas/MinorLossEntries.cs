using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="MinorLoss"/> in the catalog.</summary>
internal static class MinorLossEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [SuddenContraction(), PressureLoss(), SuddenExpansion(), CarriedCoefficient(), StraightLength()];

    private static FormulaInfo PressureLoss() =>
        FormulaInfo.Of(
            default(PressureLossFormula),
            "MinorLoss.PressureLoss",
            "The pressure lost in a fitting",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Number.Within(-100, 1e6).Given("lossCoefficient", Symbols.LossCoefficient, 0, 10),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K
                    .Speed.Within(-1000, 1000)
                    .Given("velocity", "v", "mean velocity in the bore of the coefficient", -10, 10),
            ],
            [],
            [],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [MinorLoss.PressureLossSource],
            new(
                [13.352685050798257, 814.185, 3.497074283762507],
                66500,
                0.003,
                new DataSource("TP-410", "example 7.13 at its own factor")
            )
        );

    private readonly struct PressureLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MinorLoss.PressureLoss(a[0], a[1], a[2]);
    }

    private static FormulaInfo SuddenExpansion() =>
        FormulaInfo.Of(
            default(SuddenExpansionFormula),
            "MinorLoss.SuddenExpansion",
            "The loss coefficient of a sudden expansion, for the smaller bore",
            FormulaInfo.FormulaTopic.Fittings,
            [K.Fraction.Given("areaRatio", "rA", "smaller area over larger area", 0, 1)],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [MinorLoss.SuddenExpansionSource],
            new([0.25], 0.5625, 1e-15, new DataSource("White-2003", "section 6.9, half the diameter"))
        );

    private readonly struct SuddenExpansionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MinorLoss.SuddenExpansion(a[0]);
    }

    private static FormulaInfo CarriedCoefficient() =>
        FormulaInfo.Of(
            default(CarriedCoefficientFormula),
            "MinorLoss.CarriedCoefficient",
            "A loss coefficient carried to another bore",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K
                    .Number.Within(-100, 1e6)
                    .Given("lossCoefficient", "K1", "loss coefficient of the first bore", 0.1, 10),
                K.Length.Given("fromBore", "D1", "bore it belongs to", 0.002, 0.05),
                K.Length.Given("toBore", "D2", "bore it is wanted for", 0.002, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [MinorLoss.CarriedCoefficientSource],
            new(
                [32.68875692997804, 0.01, 0.02],
                523.0201108796487,
                1e-14,
                new DataSource("TP-410", "from 10 mm to 20 mm, from the tests of the open library fluids")
            )
        );

    private readonly struct CarriedCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MinorLoss.CarriedCoefficient(a[0], a[1], a[2]);
    }

    private static FormulaInfo StraightLength() =>
        FormulaInfo.Of(
            default(StraightLengthFormula),
            "MinorLoss.StraightLength",
            "The loss coefficient of a straight length",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Number.Within(0, 10).Given("frictionFactor", Symbols.FrictionFactor, 0.01, 0.1),
                K.Length.Within(0, 1e6).Given("length", Symbols.Length, 0.1, 5),
                K.Length.Given("bore", Symbols.Bore, 0.002, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [MinorLoss.StraightLengthSource],
            new([0.015, 37, 0.154], 3.6, 0.0015, new DataSource("TP-410", "example 7.2, three digits"))
        );

    private readonly struct StraightLengthFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MinorLoss.StraightLength(a[0], a[1], a[2]);
    }

    private static FormulaInfo SuddenContraction() =>
        FormulaInfo.Of(
            default(SuddenContractionFormula),
            "MinorLoss.SuddenContraction",
            "The loss coefficient of a sudden contraction, for the smaller bore",
            FormulaInfo.FormulaTopic.Fittings,
            [K.Fraction.Within(1e-6, 1).Given("areaRatio", "rA", "smaller area over larger area", 0.01, 1)],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [MinorLoss.SuddenContractionSource],
            new(
                [0.25],
                0.49558,
                2e-5,
                new DataSource("Rennels-Hudson-2012", "half the bore, by the open library fluids")
            )
        );

    private readonly struct SuddenContractionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MinorLoss.SuddenContraction(a[0]);
    }
}
