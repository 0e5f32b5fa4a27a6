using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The volume of fuel to pump through a line until little of the old fuel is left.</summary>
/// <remarks>
/// Two models bound it: with plug flow, as in a line, one volume is enough; a well-mixed volume (a surge tank, a
/// filter) needs minus the logarithm of the residue. Dead ends without flow take longer than either: open them.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed class Flush
{
    private Flush(double volume, double exchanges, double flow)
    {
        LeastVolume = SiUnits.Volume(volume);
        MixedVolume = SiUnits.Volume(volume * exchanges);
        LeastTime = SiUnits.Duration(volume / flow);
        MixedTime = SiUnits.Duration(volume * exchanges / flow);
    }

    /// <summary>Plug flow: the enclosed volume once.</summary>
    public Volume LeastVolume { get; }

    /// <summary>Well mixed; below the plug-flow volume when the residue may exceed 1/e.</summary>
    public Volume MixedVolume { get; }

    /// <summary>Time for the plug-flow volume, in s.</summary>
    public Duration LeastTime { get; }

    /// <summary>Time for the well-mixed volume, in s.</summary>
    public Duration MixedTime { get; }

    /// <summary>Computes a flush.</summary>
    /// <param name="enclosed">Volume to flush; greater than zero.</param>
    /// <param name="residue">Allowed fraction of the old fuel; from 0.01 % to 99 %.</param>
    /// <param name="flow">Flow through it; greater than zero.</param>
    /// <returns>Volumes and times.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Flush Of(Volume enclosed, Ratio residue, VolumeFlow flow)
    {
        double volume = Guard.Positive(enclosed, enclosed.InSi());
        double share = Guard.InRange(residue, residue.InSi(), 1e-4, 0.99, SiUnits.Ratio);
        double rate = Guard.Positive(flow, flow.InSi());
        return new(volume, PressureDecay.MixedExchanges(new Real(share)).Value, rate);
    }

    /// <summary>The fraction of old fuel left after a volume was pumped through, well mixed.</summary>
    /// <param name="enclosed">Volume that is flushed; greater than zero.</param>
    /// <param name="pumped">Volume pumped through; not negative.</param>
    /// <returns>Fraction of the old fuel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Ratio ResidueAfter(Volume enclosed, Volume pumped)
    {
        double volume = Guard.Positive(enclosed, enclosed.InSi());
        double through = Guard.NotNegative(pumped, pumped.InSi());
        return SiUnits.Ratio(PressureDecay.MixedResidue(new Real(through / volume)).Value);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{LeastVolume} to {MixedVolume}");
}
