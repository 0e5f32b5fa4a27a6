using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Formulas;

/// <summary>Viscosity of pure liquids, in the form in which a handbook tabulates its coefficients.</summary>
/// <remarks>
/// The coefficients belong to a substance and carry their own range of temperature; outside it the form still gives a
/// number, so the caller checks the range.
/// </remarks>
public static class SaturatedLiquid
{
    private static readonly Symbol ViscosityStep = new(
        "mu",
        "Pa s",
        "dynamic viscosity of the liquid",
        new DataSource("Perry-2008", "table 2-313")
    );

    /// <summary>
    /// Dynamic viscosity, ln mu = c1 + c2/T + c3 ln T + c4 T^c5. Source: [Perry-2008] table 2-313, equation 101.
    /// </summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="c1">First coefficient.</param>
    /// <param name="c2">Second coefficient, in K.</param>
    /// <param name="c3">Third coefficient.</param>
    /// <param name="c4">Fourth coefficient; zero when the table has none.</param>
    /// <param name="c5">Fifth coefficient.</param>
    /// <param name="temperature">In K; greater than zero.</param>
    /// <returns>The dynamic viscosity, in Pa s.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Viscosity<T>(double c1, double c2, double c3, double c4, double c5, T temperature)
        where T : struct, IScalar<T> =>
        T.Step(T.Exp(c1 + c2 / temperature + c3 * T.Log(temperature) + c4 * T.Pow(temperature, c5)), ViscosityStep);
}
