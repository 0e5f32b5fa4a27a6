using System.Runtime.CompilerServices;
using R = FuelMath.Formulas.ColumnRanges;

namespace FuelMath.Formulas;

/// <summary>Pipe friction over whole columns. SI units.</summary>
/// <remarks>
/// <para>
/// The formulas of <see cref="Friction"/> in the widest vectors of the machine. They use the logarithm of vectors, so a
/// row may differ from <see cref="Real"/> by up to 8 units in the last place; both are equally accurate. A row's result
/// depends neither on its place nor on its neighbors, nor on the width of the vectors.
/// </para>
/// <para>
/// A column of results may be one of the inputs, row by row. It must not overlap one partly. All inputs are checked
/// before the first result is written.
/// </para>
/// </remarks>
public static class FrictionColumns
{
    /// <summary>The Darcy friction factor of turbulent flow after Colebrook and White.</summary>
    /// <param name="reynolds">Reynolds number of each row, 4000 to 1e11.</param>
    /// <param name="relativeRoughness">Roughness over bore of each row, 0 to 0.05.</param>
    /// <param name="factor">Receives the friction factor of each row.</param>
    /// <remarks>Source: [Colebrook-1939] equation of the transition curve.</remarks>
    /// <exception cref="ArgumentException">The columns have unequal lengths, or overlap partly.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or NaN.</exception>
    public static void ColebrookFactor(
        ReadOnlySpan<double> reynolds,
        ReadOnlySpan<double> relativeRoughness,
        Span<double> factor
    )
    {
        ColumnChecks.Shape(reynolds, nameof(reynolds), factor, nameof(factor));
        ColumnChecks.Shape(relativeRoughness, nameof(relativeRoughness), factor, nameof(factor));
        ColumnChecks.InRange(reynolds, Friction.TurbulentFrom, R.LargestReynolds, "");
        ColumnChecks.InRange(relativeRoughness, 0, R.LargestRelativeRoughness, "");
        ColumnRunner.Run(default(ColebrookRow), reynolds, relativeRoughness, relativeRoughness, factor);
    }

    /// <summary>The pressure lost to friction in one pipe at each row's velocity, in any regime.</summary>
    /// <param name="bore">Inner diameter, m; 1e-6 to 1e6.</param>
    /// <param name="length">Length, m; 0 to 1e6.</param>
    /// <param name="roughness">Roughness of the wall, m; 0 to a twentieth of the bore.</param>
    /// <param name="velocity">Mean velocity of each row, m/s; -1000 to 1000.</param>
    /// <param name="density">Density of each row, kg/m³; 1 to 10 000.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity of each row, Pa s; 1e-7 to 1000.</param>
    /// <param name="pressureLoss">Receives the pressure lost of each row, Pa, with the sign of the velocity.</param>
    /// <remarks>Source: [White-2003] sections 6.3 (Darcy-Weisbach) and 6.4; [Colebrook-1939].</remarks>
    /// <exception cref="ArgumentException">The columns have unequal lengths, or overlap partly.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or NaN.</exception>
    public static void PressureLoss(
        double bore,
        double length,
        double roughness,
        ReadOnlySpan<double> velocity,
        ReadOnlySpan<double> density,
        ReadOnlySpan<double> dynamicViscosity,
        Span<double> pressureLoss
    )
    {
        ColumnChecks.InRange(bore, R.SmallestLength, R.LargestLength, "m");
        ColumnChecks.InRange(length, 0, R.LargestLength, "m");
        ColumnChecks.InRange(roughness, 0, R.LargestRelativeRoughness * bore, "m");
        ColumnChecks.Shape(velocity, nameof(velocity), pressureLoss, nameof(pressureLoss));
        ColumnChecks.Shape(density, nameof(density), pressureLoss, nameof(pressureLoss));
        ColumnChecks.Shape(dynamicViscosity, nameof(dynamicViscosity), pressureLoss, nameof(pressureLoss));
        ColumnChecks.InRange(velocity, -R.LargestVelocity, R.LargestVelocity, "m/s");
        ColumnChecks.InRange(density, R.SmallestDensity, R.LargestDensity, "kg/m3");
        ColumnChecks.InRange(dynamicViscosity, R.SmallestViscosity, R.LargestViscosity, "Pa s");
        ColumnRunner.Run(new PipeRow(bore, length, roughness), velocity, density, dynamicViscosity, pressureLoss);
    }

    internal readonly struct ColebrookRow : IRowFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(T a, T b, T c)
            where T : struct, IScalar<T> => Friction.ColebrookFactor(a, b);
    }

    internal readonly struct PipeRow(double bore, double length, double roughness) : IRowFormula
    {
        private readonly double bore = bore;
        private readonly double length = length;
        private readonly double roughness = roughness;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(T a, T b, T c)
            where T : struct, IScalar<T> => Friction.PressureLoss(a, T.Of(bore), T.Of(length), T.Of(roughness), b, c);
    }
}
