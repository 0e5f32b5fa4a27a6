using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A caller's own law of a part: the pressure that it takes from a flow, written once over any scalar.</summary>
/// <remarks>
/// <para>
/// Implement it by a readonly struct that holds the measures of the part, and hand it to a <see cref="CustomPart{TLaw}"/>.
/// The solver reads it with its exact slope and in vectors, so that it costs what a built-in law costs.
/// </para>
/// <para>
/// The loss is zero at no flow and rises with flow, below zero too: a fall would allow several states. It depends on what
/// <see cref="FlowPoint{T}"/> gives, and on nothing that changes; no branch looks at a value: both sides are worked out, and
/// <see cref="IScalar{T}.Select"/> takes one.
/// </para>
/// </remarks>
public interface IFlowLaw
{
    /// <summary>The pressure lost from the part's first end to its second.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="at">The flow and the fluid.</param>
    /// <returns>The loss, Pa, with the sign of the flow.</returns>
    T Loss<T>(in FlowPoint<T> at)
        where T : struct, IScalar<T>;
}
