using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>What a law of one's own is asked at: a flow, and the fluid that flows. SI.</summary>
/// <typeparam name="T">The scalar type.</typeparam>
/// <remarks>Lives on the stack for one call. The default value is not a valid point.</remarks>
public readonly ref struct FlowPoint<T>
    where T : struct, IScalar<T>
{
    /// <summary>Below this Reynolds number a friction factor stays: its loss at no flow is then zero, not undefined.</summary>
    private const double LeastReynolds = 1e-6;

    private readonly ref KeptRoot<T> kept;

    /// <summary>A point by itself, to try a law out.</summary>
    /// <param name="flow">Volume flow, m³/s, of either sign.</param>
    /// <param name="density">Density of the fluid, kg/m³; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid, Pa·s; greater than zero.</param>
    public FlowPoint(T flow, T density, T viscosity) => (Flow, Density, Viscosity) = (flow, density, viscosity);

    /// <summary>A point in a solve, where the root of friction is kept between iterations.</summary>
    internal FlowPoint(T flow, T density, T viscosity, ref KeptRoot<T> kept)
        : this(flow, density, viscosity) => this.kept = ref kept;

    /// <summary>Volume flow, m³/s, of either sign.</summary>
    public T Flow { get; }

    /// <summary>Density of the fluid, kg/m³.</summary>
    public T Density { get; }

    /// <summary>Dynamic viscosity of the fluid, Pa·s.</summary>
    public T Viscosity { get; }

    /// <summary>
    /// The Darcy friction factor in any regime: <see cref="Friction.Factor"/>, at the cost of a formula without a root where
    /// the solver asks again and again.
    /// </summary>
    /// <param name="reynolds">Reynolds number; not negative. Below 1e-6 the factor stays what it is there.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 0.05.</param>
    /// <returns>The factor.</returns>
    /// <remarks>
    /// The solver keeps one root for a part: the first factor that a law asks for at a point uses it, further ones are solved
    /// in full. Source: [White-2003] section 6.4; [Colebrook-1939]; [Common-practice] the straight passage.
    /// </remarks>
    public T FrictionFactor(T reynolds, T relativeRoughness) =>
        Unsafe.IsNullRef(ref kept) || kept.IsUsed
            ? Solved(reynolds, relativeRoughness)
            : Kept(ref kept, reynolds, relativeRoughness);

    /// <remarks>Neither way is inlined: both in one method crowd each other, and the law, out of the registers.</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Kept(ref KeptRoot<T> kept, T reynolds, T relativeRoughness)
    {
        T root = Friction.TurbulentRootFrom(kept.Root, reynolds, relativeRoughness / 3.7);
        (kept.Root, kept.IsUsed) = (root, true);
        return Factor(reynolds, root);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Solved(T reynolds, T relativeRoughness) =>
        Factor(reynolds, Friction.TurbulentRoot(reynolds, relativeRoughness / 3.7));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Factor(T reynolds, T root) =>
        T.Select(
            T.Less(reynolds, T.Of(Friction.LaminarUpTo)),
            Friction.LaminarFactor(T.Max(reynolds, T.Of(LeastReynolds))),
            Friction.FactorAboveLaminar(reynolds, 1 / (root * root))
        );
}
