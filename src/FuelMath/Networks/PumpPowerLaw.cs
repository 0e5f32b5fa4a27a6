using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A pump with a check valve whose rise is shutoff - factor q^exponent.</summary>
internal struct PumpPowerLaw<T> : ILinkLaw<PumpPowerLaw<T>, T>
    where T : struct, IScalar<T>
{
    private double exponent;
    private T shutoff;
    private T factor;
    private T first;
    private T usual;
    private T smallest;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public static T Set(ref PumpPowerLaw<T> law, ReadOnlySpan<T> settings, T flow)
    {
        law.Set(settings[0], settings[1], settings[2]);
        return flow;
    }

    /// <inheritdoc />
    public void Load(LawSettings settings)
    {
        var pump = (PumpPowerSettings)settings;
        exponent = pump.Exponent;
        Set(T.Of(pump.Shutoff), T.Of(pump.Factor), T.Of(pump.Half));
    }

    /// <param name="newShutoff">The rise at no flow, Pa.</param>
    /// <param name="newFactor">The factor of the power of flow.</param>
    /// <param name="half">The flow at half the shutoff, m³/s.</param>
    internal void Set(T newShutoff, T newFactor, T half)
    {
        shutoff = newShutoff;
        factor = newFactor;
        first = half;
        usual = newShutoff / half;

        // A power by its logarithm has no slope at zero; a flow below 1e-9 of the scale is negligible.
        smallest = 1e-9 * half;
    }

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around) { }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> fall = factor * Dual<T>.Pow(Dual<T>.Max(flow, smallest), exponent);
        return new(fall - shutoff + Stiff.OneWay(flow, reverse));
    }

    /// <inheritdoc />
    public static T Trespass(ref PumpPowerLaw<T> law, T flow) => T.Max(-flow, T.Of(0));

    /// <inheritdoc />
    public static T Condition(ref PumpPowerLaw<T> law, T flow, T up, T down, T noFlow) =>
        PumpSettings.Condition(ref law, flow, up, down, noFlow);
}
