using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The working of a pump's curve at a flow.</summary>
internal static class PumpTableWorking
{
    private static readonly DataSource Cubic = new("Fritsch-Carlson-1980", "the cubic between two points of the curve");

    internal static Symbol PressureRise { get; } = new("dp", "Pa", "pressure rise");

    private static Symbol Start { get; } = new("Q1", "m3/s", "flow of the point below");

    private static Symbol Beyond { get; } = new("t", "m3/s", "flow beyond that point");

    private static Symbol C0 { get; } = new("dp1", "Pa", "pressure rise at that point");

    private static Symbol C1 { get; } = new("c1", "Pa s/m3", "slope of the curve there");

    private static Symbol C2 { get; } = new("c2", "Pa s2/m6", "second coefficient of the curve there");

    private static Symbol C3 { get; } = new("c3", "Pa s3/m9", "third coefficient of the curve there");

    /// <summary>The pressure rise at a flow.</summary>
    internal static Traced Rise(ReadOnlySpan<Piece> pieces, Traced flow)
    {
        int at = 0;
        while (at + 1 < pieces.Length && pieces[at + 1].X0 <= flow.Value)
        {
            at++;
        }

        Piece piece = pieces[at];
        Traced t = Traced.Step(flow - Traced.Input(Start, piece.X0), Beyond, Cubic);
        Traced slope = Traced.Input(C1, piece.C1);
        Traced curved =
            piece.C2 == 0 && piece.C3 == 0
                ? slope
                : slope + (t * (Traced.Input(C2, piece.C2) + (t * Traced.Input(C3, piece.C3))));
        return Traced.Step(Traced.Input(C0, piece.C0) + (t * curved), PressureRise, Cubic);
    }
}
