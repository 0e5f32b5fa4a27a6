using FuelMath.Formulas;
using FuelMath.Scalars;
using FuelMath.Sources;
using FuelMath.Tables;

namespace FuelMath.Pumps;

/// <summary>What a pump curve says at a point, step by step.</summary>
internal static class PumpCurveWorking
{
    private static readonly DataSource Cubic = new("Fritsch-Carlson-1980", "the cubic between two points of the curve");
    private static readonly DataSource Share = new("Definition", "power out over power in");

    internal static Symbol PressureRise { get; } = new("dp", "Pa", "pressure rise");

    internal static Symbol Volts { get; } = new("U", "V", "voltage at the terminals");

    private static Symbol Current { get; } = new("I", "A", "current, read from the curve");

    private static Symbol Start { get; } = new("Q1", "m3/s", "flow of the point below");

    private static Symbol Beyond { get; } = new("t", "m3/s", "flow beyond that point");

    private static Symbol C0 { get; } = new("dp1", "Pa", "pressure rise at that point");

    private static Symbol C1 { get; } = new("c1", "Pa s/m3", "slope of the curve there");

    private static Symbol C2 { get; } = new("c2", "Pa s2/m6", "second coefficient of the curve there");

    private static Symbol C3 { get; } = new("c3", "Pa s3/m9", "third coefficient of the curve there");

    private static Symbol Efficiency0 { get; } = new("eta", "", "efficiency of pump and motor together");

    /// <summary>The pressure rise at a flow within the curve.</summary>
    internal static Traced Rise(Curve riseOverFlow, Traced flow)
    {
        int at = 0;
        while (at + 1 < riseOverFlow.Pieces.Length && riseOverFlow.Pieces[at + 1].X0 <= flow.Value)
        {
            at++;
        }

        Piece piece = riseOverFlow.Pieces[at];
        Traced t = Traced.Step(flow - Traced.Input(Start, piece.X0), Beyond, Cubic);
        Traced curved =
            piece.C2 == 0 && piece.C3 == 0
                ? Traced.Input(C1, piece.C1)
                : Traced.Input(C1, piece.C1) + (t * (Traced.Input(C2, piece.C2) + (t * Traced.Input(C3, piece.C3))));
        return Traced.Step(Traced.Input(C0, piece.C0) + (t * curved), PressureRise, Cubic);
    }

    /// <summary>Hydraulic over electric power.</summary>
    internal static Traced Efficiency(Traced rise, double flow, Traced volts, double amperes) =>
        Traced.Step(
            PumpPower.Hydraulic(rise, Traced.Input(Symbols.VolumeFlow, flow))
                / PumpPower.Electric(volts, Traced.Input(Current, amperes)),
            Efficiency0,
            Share
        );
}
