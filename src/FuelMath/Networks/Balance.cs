using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// The equation of a link at a flow: Up x upstream pressure - Down x downstream pressure = Loss(flow). The weight of a
/// side without influence on a regulator is zero.
/// </summary>
internal readonly struct Balance<T>
    where T : struct, IScalar<T>
{
    internal readonly Dual<T> Loss;
    internal readonly T Up;
    internal readonly T Down;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Balance(Dual<T> loss)
        : this(loss, T.Of(1), T.Of(1)) { }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Balance(Dual<T> loss, T up, T down)
    {
        Loss = loss;
        Up = up;
        Down = down;
    }
}
