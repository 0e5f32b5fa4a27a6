using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Hydrostatics"/> in the catalog.</summary>
internal static class HydrostaticsEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [ColumnPressure()];

    private static FormulaInfo ColumnPressure() =>
        FormulaInfo.Of(
            default(ColumnPressureFormula),
            "Hydrostatics.ColumnPressure",
            "The pressure difference between foot and top of a column of fluid",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.Length.Within(-10000, 10000).Given("height", "z", "height", -10, 10),
            ],
            [],
            [new FormulaInfo.Constant("acceleration", "m/s2", ColumnPressureFormula.Acceleration)],
            K.DifferentialPressure.Gives(Hydrostatics.ColumnPressureResult),
            [Hydrostatics.ColumnPressureSource],
            new([750, 1], 7354.9875, 1e-14, new DataSource("Definition", "750 times 9.80665, by hand"))
        );

    private readonly struct ColumnPressureFormula : IFormula
    {
        internal const double Acceleration = Hydrostatics.StandardGravity;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Hydrostatics.ColumnPressure(a[0], Acceleration, a[1]);
    }
}
