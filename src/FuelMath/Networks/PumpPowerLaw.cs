using System.Runtime.CompilerServices;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>A pump with a check valve whose rise is shutoff - factor q^exponent.</summary>
internal struct PumpPowerLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private double exponent;
    private T shutoff;
    private T factor;
    private T first;
    private T usual;
    private T smallest;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public void Load(LinkPart part)
    {
        var pump = (PumpPowerPart)part;
        exponent = pump.Exponent;
        shutoff = T.Of(pump.Shutoff);
        factor = T.Of(pump.Factor);
        double half = Math.Pow(pump.Shutoff / 2 / pump.Factor, 1 / pump.Exponent);
        first = T.Of(half);
        usual = T.Of(pump.Shutoff / half);

        // A power has no slope by its logarithm at zero, and less than a billionth of the scale moves nothing.
        smallest = T.Of(1e-9 * half);
    }

    /// <inheritdoc />
    public void Carry(LinkPart part, in Surroundings<T> around) { }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> fall = factor * Dual<T>.Pow(Dual<T>.Max(flow, smallest), exponent);
        return new(fall - shutoff + Stiff.OneWay(flow, reverse));
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
