using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The argument of a caller's law: the flow and the fluid, in SI units.</summary>
/// <typeparam name="T">The scalar type.</typeparam>
/// <remarks>Exists on the stack for one call. The default value is not a valid point.</remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public readonly ref struct FlowPoint<T>
    where T : struct, IScalar<T>
{
    /// <summary>
    /// Below this Reynolds number the friction factor is constant, so that the loss at no flow is zero, not undefined.
    /// </summary>
    private const double LeastReynolds = 1e-6;

    private readonly ref KeptRoot<T> kept;

    /// <summary>A single point, for trying a law.</summary>
    /// <param name="flow">Volume flow, m³/s, of either sign.</param>
    /// <param name="density">Density of the fluid, kg/m³; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid, Pa·s; greater than zero.</param>
    public FlowPoint(T flow, T density, T viscosity) => (Flow, Density, Viscosity) = (flow, density, viscosity);

    /// <summary>A point in a solve, with the friction root kept between iterations.</summary>
    internal FlowPoint(T flow, T density, T viscosity, ref KeptRoot<T> kept)
        : this(flow, density, viscosity) => this.kept = ref kept;

    /// <summary>Volume flow, m³/s, of either sign.</summary>
    public T Flow { get; }

    /// <summary>Density of the fluid, kg/m³.</summary>
    public T Density { get; }

    /// <summary>Dynamic viscosity of the fluid, Pa·s.</summary>
    public T Viscosity { get; }

    /// <summary>
    /// The Darcy friction factor in any regime: <see cref="Friction.Factor{T}(T, T)"/>, without solving the implicit law anew
    /// in each iteration of a solver.
    /// </summary>
    /// <param name="reynolds">Reynolds number; not negative. Below 1e-6 the factor is constant.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <returns>The factor.</returns>
    /// <remarks>
    /// The solver keeps one root per part: the first factor of a law at a point uses it, further ones are solved in
    /// full. Source: [White-2003] section 6.4; [Colebrook-1939]; [Common-practice] the straight passage.
    /// </remarks>
    public T FrictionFactor(T reynolds, T relativeRoughness) =>
        Unsafe.IsNullRef(ref kept) || kept.IsUsed
            ? Solved(reynolds, relativeRoughness)
            : Kept(ref kept, reynolds, relativeRoughness);

    /// <remarks>Neither branch is inlined: both in one method would need too many registers.</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Kept(ref KeptRoot<T> kept, T reynolds, T relativeRoughness)
    {
        kept.IsUsed = true;
        return Friction.Factor(T.Max(reynolds, T.Of(LeastReynolds)), relativeRoughness, ref kept.Root);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Solved(T reynolds, T relativeRoughness) =>
        Friction.Factor(T.Max(reynolds, T.Of(LeastReynolds)), relativeRoughness);
}
