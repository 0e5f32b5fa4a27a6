using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A caller's own law of a part: its pressure loss over flow, written once over any scalar.</summary>
/// <remarks>
/// <para>
/// Implement it as a readonly struct that holds the dimensions of the part, and pass it to a
/// <see cref="CustomPart{TLaw}"/>. The solver evaluates it with its exact slope and in vectors, so it is as fast as a
/// built-in law.
/// </para>
/// <para>
/// The loss is zero at zero flow and rises with flow, also for negative flow: a fall would allow several states. It
/// depends only on <see cref="FlowPoint{T}"/> and constants, and never branches on a value: compute both sides and
/// choose with <see cref="IScalar{T}.Select"/>.
/// </para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public interface IFlowLaw
{
    /// <summary>The pressure lost from the part's first end to its second.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="at">The flow and the fluid.</param>
    /// <returns>The loss, Pa, with the sign of the flow.</returns>
    T Loss<T>(in FlowPoint<T> at)
        where T : struct, IScalar<T>;
}
