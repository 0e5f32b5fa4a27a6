using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A link as the solver sees it: a pressure loss that rises with flow, also below zero, read in any scalar. Implemented
/// by structs, so that a group of one law is inlined into one loop.
/// </summary>
/// <remarks>Pressures here are those at elevation zero: gauge pressure + density x gravity x elevation.</remarks>
internal interface ILinkLaw<T>
    where T : struct, IScalar<T>
{
    /// <summary>The least slope that Newton uses, as a part of the usual one; the loss itself is untouched.</summary>
    static abstract double LeastSlope { get; }

    /// <summary>Where a cold start begins: the law's own scale of flow. A shut injector that starts with a hose's flow
    /// needs thirty halvings.</summary>
    T FirstFlow { get; }

    /// <summary>The law's own scale of slope, Pa s/m³: its scale of pressure over its scale of flow.</summary>
    T UsualSlope { get; }

    /// <summary>Takes the settings that its description names.</summary>
    void Load(LawSettings part);

    /// <summary>Takes settings other than its description's, in its own order; <see cref="Carry"/> follows.</summary>
    /// <returns>The flow that a warm start begins with.</returns>
    T Set(ReadOnlySpan<T> settings, T flow);

    /// <summary>Works out all that depends on the fluid and on the elevation of the ends.</summary>
    void Carry(LawSettings part, in Surroundings<T> around);

    /// <summary>The law at a flow.</summary>
    /// <param name="flow">Volume flow, m³/s.</param>
    /// <param name="up">Pressure of the upstream node.</param>
    /// <param name="down">Pressure of the downstream node.</param>
    /// <param name="reverse">How steep the law is where a part lets nothing through, Pa s/m³.</param>
    /// <param name="memory">The root of an implicit law, kept between iterations: it converges along with the flows.</param>
    Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory);

    /// <summary>By how much a flow lies outside what the part lets through, m³/s; zero inside.</summary>
    T Trespass(T flow);
}
