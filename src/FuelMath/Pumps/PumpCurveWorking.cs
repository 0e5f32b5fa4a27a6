using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The workings of a pump curve at a point.</summary>
internal static class PumpCurveWorking
{
    private static readonly DataSource Share = new("Definition", "power out over power in");

    internal static Symbol Volts { get; } = new("U", "V", "voltage at the terminals");

    private static Symbol Current { get; } = new("I", "A", "current, read from the curve");

    private static Symbol Efficiency0 { get; } = new("eta", "", "efficiency of pump and motor together");

    /// <summary>Hydraulic over electric power.</summary>
    internal static Traced Efficiency(Traced rise, double flow, Traced volts, double amperes) =>
        Traced.Step(
            PumpPower.Hydraulic(rise, Traced.Input(Symbols.VolumeFlow, flow))
                / PumpPower.Electric(volts, Traced.Input(Current, amperes)),
            Efficiency0,
            Share
        );
}
