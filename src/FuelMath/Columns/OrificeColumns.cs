using System.Runtime.CompilerServices;
using R = FuelMath.Formulas.ColumnRanges;

namespace FuelMath.Formulas;

/// <summary>Flow of a rated orifice or injector over whole columns, such as a log. SI units.</summary>
/// <remarks>
/// <para>
/// The formula of <see cref="Orifice"/> in the widest vectors of the machine. Without a logarithm, each row is
/// bit-identical to <see cref="Real"/> on every machine.
/// </para>
/// <para>
/// A column of results may be one of the inputs, row by row. It must not overlap one partly. All inputs are checked
/// before the first result is written.
/// </para>
/// </remarks>
public static class OrificeColumns
{
    /// <summary>
    /// Mass flow of a rating converted to each row's pressure and density: m = m0 sqrt(dp/dp0 rho/rho0).
    /// </summary>
    /// <param name="referenceMassFlow">Rated mass flow, kg/s; 0 to 10 000.</param>
    /// <param name="referenceDifferentialPressure">Differential pressure of the rating, Pa; 1 to 1e9.</param>
    /// <param name="referenceDensity">Density of the rating's fluid, kg/m³; 1 to 10 000.</param>
    /// <param name="differentialPressure">Differential pressure of each row, Pa; 0 to 1e9.</param>
    /// <param name="density">Density of each row, kg/m³; 1 to 10 000.</param>
    /// <param name="massFlow">Receives the mass flow of each row, kg/s.</param>
    /// <remarks>Source: [White-2003] section 6.12, as the ratio of two states.</remarks>
    /// <exception cref="ArgumentException">The columns have unequal lengths, or overlap partly.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or NaN.</exception>
    public static void CarriedMassFlow(
        double referenceMassFlow,
        double referenceDifferentialPressure,
        double referenceDensity,
        ReadOnlySpan<double> differentialPressure,
        ReadOnlySpan<double> density,
        Span<double> massFlow
    )
    {
        ColumnChecks.InRange(referenceMassFlow, 0, R.LargestMassFlow, "kg/s");
        ColumnChecks.InRange(referenceDifferentialPressure, 1, R.LargestPressure, "Pa");
        ColumnChecks.InRange(referenceDensity, R.SmallestDensity, R.LargestDensity, "kg/m3");
        ColumnChecks.Shape(differentialPressure, nameof(differentialPressure), massFlow, nameof(massFlow));
        ColumnChecks.Shape(density, nameof(density), massFlow, nameof(massFlow));
        ColumnChecks.InRange(differentialPressure, 0, R.LargestPressure, "Pa");
        ColumnChecks.InRange(density, R.SmallestDensity, R.LargestDensity, "kg/m3");
        ColumnRunner.Run(
            new Row(referenceMassFlow, referenceDifferentialPressure, referenceDensity),
            differentialPressure,
            density,
            density,
            massFlow
        );
    }

    internal readonly struct Row(double massFlow, double differentialPressure, double density) : IRowFormula
    {
        private readonly double massFlow = massFlow;
        private readonly double differentialPressure = differentialPressure;
        private readonly double density = density;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(T a, T b, T c)
            where T : struct, IScalar<T> =>
            Orifice.CarriedMassFlow(T.Of(massFlow), T.Of(differentialPressure), T.Of(density), a, b);
    }
}
