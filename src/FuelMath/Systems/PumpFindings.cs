using System.Globalization;

namespace FuelMath;

/// <summary>Findings of pumps whose curve was measured in a fluid of another density.</summary>
internal sealed class PumpFindings(SolvedSystem solved)
{
    /// <summary>Below this share a different flow by the other principle is no finding; the results contain it.</summary>
    private const double WorthAWord = 0.01;

    private static readonly DataSource Similarity = new("White-2003", "sections 11.1 and 11.3");

    internal void Find()
    {
        Pump[] pumps = [.. solved.System.Network.Lines.Select(l => l.Part).OfType<Pump>()];
        double density = solved.System.Fuel.DensityAt(solved.Point.Fuel).InSi();
        foreach ((SystemState.PumpResult match, Pump pump) in solved.Parts.Pumps.Zip(pumps))
        {
            double flow = match.Flow.InSi();
            if (match.GreatestFlow is not { } more || more.InSi() - flow <= WorthAWord * flow)
            {
                continue;
            }

            double ratio = pump.DensityRatio(density);
            solved.Add(
                FindingCode.PumpPrincipleNotKnown,
                Severity.Note,
                match.Line,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"What kind of pump '{match.Line}' is, is not known, and the fuel is {(ratio > 1 ? "denser" : "lighter")} than the fluid of its curve"
                ),
                Shown
                    .LitersPerHour(flow)
                    .As(_ =>
                        $"{Show.LitersPerHour(flow)} as {(ratio > 1 ? Displacing : Slinging)}, {Show.LitersPerHour(more.InSi())} as {(ratio > 1 ? Slinging : Displacing)}, {Show.Percent(Math.Abs(ratio - 1))} {(ratio > 1 ? "denser" : "lighter")}"
                    ),
                Shown.Percent(WorthAWord).As(n => $"within {n}"),
                "The lesser flow is reckoned with. Say whether it is a displacement or a rotodynamic (turbine) pump, or measure it with this fuel.",
                Similarity
            );
        }
    }

    private const string Displacing = "a displacement pump";

    private const string Slinging = "a rotodynamic one";

    /// <summary>The estimate in a result where a pump runs in another fluid than that of its test; null where there is none.</summary>
    internal static string? Words(Pump pump, double density)
    {
        double ratio = pump.DensityRatio(density);
        if (pump.Principle == Pump.WorkingPrinciple.Displacement || Math.Abs(ratio - 1) < 1e-9)
        {
            return null;
        }

        string fluid = string.Create(
            CultureInfo.InvariantCulture,
            $"Pump '{pump.Name}' in a {(ratio > 1 ? "denser" : "lighter")} fuel than the fluid of its curve{(pump.FluidTemperature is null ? ", taken at 20 °C" : "")}: "
        );
        return fluid
            + (
                pump.Principle == Pump.WorkingPrinciple.Rotodynamic
                    ? "as a rotodynamic pump of the same speed and head."
                : ratio > 1 ? "its principle is not known; as a displacement pump, which gives less."
                : "its principle is not known; as a rotodynamic pump of the same speed and head, which gives less."
            );
    }
}
