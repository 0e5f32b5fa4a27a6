using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Symbols of the inputs of tank workings.</summary>
internal static class TankSymbols
{
    internal static Symbol HeldContent { get; } = new("x0", "", "content of what the tank holds");

    internal static Symbol HeldVolume { get; } = new("V0", "m3", "volume held, at 15 degrees Celsius");

    internal static Symbol AddedContent { get; } = new("xa", "", "content of what is added");

    internal static Symbol AddedVolume { get; } = new("Va", "m3", "volume added, at 15 degrees Celsius");

    internal static Symbol FirstContent { get; } = new("x1", "", "content of the first liquid");

    internal static Symbol SecondContent { get; } = new("x2", "", "content of the second liquid");

    internal static Symbol Target { get; } = new("y", "", "content wanted");

    internal static Symbol Room { get; } = new("Vr", "m3", "volume to be filled, at the tank's temperature");

    internal static Symbol FirstExpansion { get; } =
        new("e1", "", "volume of the first in the tank over that at 15 degrees Celsius");

    internal static Symbol SecondExpansion { get; } =
        new("e2", "", "volume of the second in the tank over that at 15 degrees Celsius");

    internal static Symbol Signal { get; } = new("s", "Hz", "signal of the sensor");

    internal static Symbol SignalAtNone { get; } = new("s0", "Hz", "signal without ethanol");

    internal static Symbol SignalAtAll { get; } = new("s1", "Hz", "signal in ethanol");

    internal static Symbol Sample { get; } = new("Vf", "m3", "volume of fuel sampled");

    internal static Symbol Water { get; } = new("Vw", "m3", "volume of water added");

    internal static Symbol Layer { get; } = new("Vl", "m3", "volume of the lower layer afterwards");
}
