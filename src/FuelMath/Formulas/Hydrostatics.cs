using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The weight of a column of fluid. SI units.</summary>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public static class Hydrostatics
{
    internal static readonly DataSource ColumnPressureSource = new(
        "White-2003",
        "section 2.3 (hydrostatics in liquids)"
    );

    internal static readonly Symbol ColumnPressureResult = new("dp", "Pa", "pressure of the column");

    /// <summary>Standard acceleration of free fall, m/s2.</summary>
    /// <remarks>Source: [CGPM-1901] declaration on the conventional value of g.</remarks>
    public const double StandardGravity = 9.80665;

    /// <summary>The pressure difference between the foot and the top of a column: dp = rho a z.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="acceleration">Acceleration along the column, m/s2; <see cref="StandardGravity"/> at rest.</param>
    /// <param name="height">Height, m; either sign.</param>
    /// <returns>Pressure difference, Pa, with the sign of the height.</returns>
    /// <remarks>Valid for a fluid of constant density. Source: [White-2003] section 2.3 (hydrostatics in liquids).</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ColumnPressure<T>(T density, double acceleration, T height)
        where T : struct, IScalar<T> =>
        T.Step(acceleration * density * height, ColumnPressureResult, ColumnPressureSource);
}
