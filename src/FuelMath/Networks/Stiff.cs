using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A one-way part is a law with a very steep reverse branch, so that no discrete state changes between iterations.
/// </summary>
internal static class Stiff
{
    /// <summary>Pumps, regulators and injectors, Pa s/m³: 300 kPa drive 3e-16 m³/s through a closed one.</summary>
    internal const double Reverse = 1e21;

    /// <summary>
    /// Check valves are tighter by this factor, so that a pump held closed by one still shows its own pressure.
    /// </summary>
    internal const double CheckOver = 1e9;

    /// <summary>Above this slope, Pa s/m³, a link is judged by its flow: 1e-15 m³/s corresponds to 1 mPa.</summary>
    internal const double JudgedByFlow = 1e12;

    /// <summary>
    /// A steep law at a nonzero flow, as a commanded one, is only as accurate as the last digit of the flow.
    /// </summary>
    internal const double LastDigit = 2.3e-16;

    /// <summary>
    /// The least slope in Newton's method, as a fraction of a law's usual one: a square law has zero slope at zero
    /// flow.
    /// </summary>
    internal const double Least = 1e-5;

    /// <summary>
    /// The same for a part that closes at zero flow, where the last digit of a pressure must not decide.
    /// </summary>
    internal const double NoisyLeast = 1e-3;

    /// <summary>Steep below zero, zero above.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Dual<T> OneWay<T>(Dual<T> flow, T steepness)
        where T : struct, IScalar<T> =>
        Dual<T>.Select(Dual<T>.Less(flow, Dual<T>.Of(0)), steepness * flow, Dual<T>.Of(0));
}
