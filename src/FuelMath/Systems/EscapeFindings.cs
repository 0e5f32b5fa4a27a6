using UnitsNet.Units;

namespace FuelMath;

/// <summary>Finds fuel that leaves the system for good: into a place of given pressure that gives none back.</summary>
/// <remarks>
/// A steady state circulates: what runs into a tank is drawn from it again, or burned. A place that only receives fuel is
/// the outside, or a tank that overflows. No amount is small enough: it is fuel beside a hot engine.
/// </remarks>
internal sealed class EscapeFindings(SolvedSystem solved)
{
    /// <summary>Flow below which a line counts as shut, m³/s: what parts that shut and rounding leave is far below.</summary>
    private const double Still = 1e-12;

    private static readonly DataSource Kept = new("Definition", "a fuel system keeps its fuel until it is injected");

    private readonly Network network = solved.System.Network;

    internal void Find()
    {
        foreach (Network.Node place in network.Nodes)
        {
            // A surge tank overflows into another one, and what it loses is a finding of its own.
            if (place is { IsFixed: true, UsableVolume: null })
            {
                LookAt(place.Name);
            }
        }
    }

    private void LookAt(string place)
    {
        double received = 0;
        List<string> through = [];
        for (int i = 0; i < solved.Flows.Length; i++)
        {
            double into = Into(place, i);
            if (into < -Still)
            {
                return;
            }

            if (into > Still)
            {
                received += into;
                through.Add($"'{network.Lines[i].Name}'");
            }
        }

        if (received == 0 || IsHeldForAStoppedPump(place))
        {
            return;
        }

        solved.Add(
            FindingCode.FuelEscapes,
            Severity.Danger,
            place,
            $"Fuel leaves the system at '{place}', through {string.Join(", ", through)}",
            Shown.LitersPerHour(received).As(_ => Words(received)),
            Shown.LitersPerHour(0).As(_ => "none"),
            "Do not run: escaped fuel burns. Shut it, and search for what else leaks. Where this is a tank whose fuel is drawn again, draw that line, too, or draw both tanks as one.",
            Kept
        );
    }

    /// <summary>Flow from a line into a node, m³/s; negative where it draws from there.</summary>
    private double Into(string place, int line)
    {
        Line at = network.Lines[line];
        return (at.To == place ? solved.Flows[line] : 0) - (at.From == place ? solved.Flows[line] : 0);
    }

    /// <summary>Whether a pump that delivers nothing now would draw from here: only lines without flow lie between.</summary>
    private bool IsHeldForAStoppedPump(string place)
    {
        HashSet<string> before = [place];
        int known = 0;
        while (known < before.Count)
        {
            known = before.Count;
            for (int i = 0; i < solved.Flows.Length; i++)
            {
                Line line = network.Lines[i];
                if (Math.Abs(solved.Flows[i]) > Still || !(before.Contains(line.From) || before.Contains(line.To)))
                {
                    continue;
                }

                if (line.Part.IsPump)
                {
                    if (before.Contains(line.From))
                    {
                        return true;
                    }

                    continue;
                }

                before.UnionWith([line.From, line.To]);
            }
        }

        return false;
    }

    /// <summary>A small leak in a unit in which it is not rounded to nothing.</summary>
    private static string Words(double flow) =>
        flow >= 1 / 3.6e6
            ? Show.LitersPerHour(flow)
            : Guard.Show(SiUnits.VolumeFlow(flow), VolumeFlowUnit.CubicCentimeterPerMinute);
}
