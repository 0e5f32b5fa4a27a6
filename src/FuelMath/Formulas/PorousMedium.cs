using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Pressure lost in a filter or strainer. SI units.</summary>
/// <seealso href="../guide/filters.html">Filters</seealso>
public static class PorousMedium
{
    internal static readonly DataSource PressureLossSource = new("Forchheimer-1901", "the law of two terms");

    /// <summary>A linear and a quadratic part: dp = a mu Q + b rho Q|Q|.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="linear">Linear coefficient a, 1/m³.</param>
    /// <param name="quadratic">Quadratic coefficient b, 1/m⁴.</param>
    /// <param name="dynamicViscosity">Dynamic viscosity, Pa s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="volumeFlow">Volume flow, m³/s; either sign.</param>
    /// <returns>Pressure lost, Pa, with the sign of the flow.</returns>
    /// <remarks>Source: [Forchheimer-1901] the law of two terms; the first alone is Darcy's.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PressureLoss<T>(T linear, T quadratic, T dynamicViscosity, T density, T volumeFlow)
        where T : struct, IScalar<T> =>
        T.Step(
            (linear * dynamicViscosity * volumeFlow) + (quadratic * density * volumeFlow * T.Abs(volumeFlow)),
            Symbols.PressureLoss,
            PressureLossSource
        );
}
