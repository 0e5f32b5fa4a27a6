using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Suction"/> in the catalog.</summary>
internal static class SuctionEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [PressureAboveBoiling(), NetPositiveSuctionHead()];

    private static FormulaInfo PressureAboveBoiling() =>
        FormulaInfo.Of(
            default(PressureAboveBoilingFormula),
            "Suction.PressureAboveBoiling",
            "The pressure at a pump inlet above boiling",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.AbsolutePressure.Given(
                    "surfacePressure",
                    "p",
                    "absolute pressure on the liquid in the tank",
                    50000,
                    200000
                ),
                K.Density.Given("density", Symbols.Density, 650, 1000),
                K.Length.Within(-10000, 10000).Given("height", "z", "height of the liquid above the inlet", -2, 2),
                K.DifferentialPressure.Given("pressureLoss", "dps", "pressure lost in the suction line", 0, 30000),
                K
                    .AbsolutePressure.Within(0, 1e8)
                    .Given("vaporPressure", "pv", "vapor pressure at the temperature of the liquid", 0, 60000),
            ],
            [],
            [new FormulaInfo.Constant("acceleration", "m/s2", PressureAboveBoilingFormula.Acceleration)],
            K.DifferentialPressure.Gives(Suction.InletMargin),
            [Suction.PressureAboveBoilingSource],
            new(
                [135799.13964624403, 998.9754498536503, -7.62, 17916.026826297984, 1765.0578670511004],
                41466.64408946668,
                0.0002,
                new DataSource("TP-410", "example 7.32, water lifted, the printed head as a pressure")
            )
        );

    private readonly struct PressureAboveBoilingFormula : IFormula
    {
        internal const double Acceleration = Hydrostatics.StandardGravity;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Suction.PressureAboveBoiling(a[0], a[1], Acceleration, a[2], a[3], a[4]);
    }

    private static FormulaInfo NetPositiveSuctionHead() =>
        FormulaInfo.Of(
            default(NetPositiveSuctionHeadFormula),
            "Suction.NetPositiveSuctionHead",
            "The net positive suction head available at a pump inlet",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K
                    .DifferentialPressure.Within(-1e9, 1e9)
                    .Given("pressureAboveBoiling", "dpv", "pressure above boiling at the inlet", 0, 200000),
                K.Density.Given("density", Symbols.Density, 650, 1000),
            ],
            [],
            [new FormulaInfo.Constant("acceleration", "m/s2", NetPositiveSuctionHeadFormula.Acceleration)],
            K.Altitude.Gives(Suction.Head),
            [Suction.NetPositiveSuctionHeadSource],
            new(
                [41466.64408946668, 998.9754498536503],
                4.2327576,
                1e-6,
                new DataSource("TP-410", "example 7.32, five digits")
            )
        );

    private readonly struct NetPositiveSuctionHeadFormula : IFormula
    {
        internal const double Acceleration = Hydrostatics.StandardGravity;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Suction.NetPositiveSuctionHead(a[0], a[1], Acceleration);
    }
}
