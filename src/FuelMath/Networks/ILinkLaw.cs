using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A link in the form of the solver: a pressure loss that rises with flow, also below zero, in any scalar. Implemented
/// by structs, so that a group of one law is inlined into one loop.
/// </summary>
/// <remarks>
/// Pressures here are those at elevation zero: gauge pressure + density x gravity x elevation. What has a body here is that
/// of an open passage without settings of its own.
/// </remarks>
internal interface ILinkLaw<TLaw, T>
    where TLaw : struct, ILinkLaw<TLaw, T>
    where T : struct, IScalar<T>
{
    /// <summary>
    /// The least slope in Newton's method, as a fraction of the usual one; the loss itself is unchanged.
    /// </summary>
    static virtual double LeastSlope => Stiff.Least;

    /// <summary>Whether caching it pays, and it has no settings except the fluid.</summary>
    static virtual bool IsCostly => false;

    /// <summary>
    /// The flow of a cold start: the law's own scale. A closed injector that starts with a hose's flow would need
    /// thirty halvings.
    /// </summary>
    T FirstFlow { get; }

    /// <summary>The law's own scale of slope, Pa s/m³: its scale of pressure over its scale of flow.</summary>
    T UsualSlope { get; }

    /// <summary>Loads the settings of its description.</summary>
    void Load(LawSettings settings);

    /// <summary>Computes all that depends on the fluid and on the elevation of the ends.</summary>
    void Carry(LawSettings settings, in Surroundings<T> around);

    /// <summary>The law at a flow.</summary>
    /// <param name="flow">Volume flow, m³/s.</param>
    /// <param name="up">Pressure of the upstream node.</param>
    /// <param name="down">Pressure of the downstream node.</param>
    /// <param name="reverse">The slope of the law where a part is closed, Pa s/m³.</param>
    /// <param name="memory">
    /// The root of an implicit law, kept between iterations, so that it converges together with the flows.
    /// </param>
    Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory);

    /// <summary>
    /// Sets other settings than its description's, in its own order; call <see cref="Carry"/> afterwards.
    /// </summary>
    /// <returns>The flow that a warm start begins with.</returns>
    static virtual T Set(ref TLaw law, ReadOnlySpan<T> settings, T flow) => flow;

    /// <summary>The flow in excess of what the part allows, m³/s; zero inside its range.</summary>
    static virtual T Trespass(ref TLaw law, T flow) => T.Of(0);

    /// <summary>By how much a flow that the part lets through lies outside its data, m³/s; zero inside.</summary>
    static virtual T OutsideData(ref TLaw law, T flow) => T.Of(0);

    /// <summary>What the part does at a flow, as the number of a <see cref="Network.LineCondition"/>.</summary>
    /// <param name="law">The law.</param>
    /// <param name="flow">Volume flow, m³/s.</param>
    /// <param name="up">Pressure of the upstream node.</param>
    /// <param name="down">Pressure of the downstream node.</param>
    /// <param name="noFlow">A flow that counts as none, m³/s.</param>
    static virtual T Condition(ref TLaw law, T flow, T up, T down, T noFlow) => T.Of((int)Network.LineCondition.Open);
}
