using ScottPlot;

namespace FuelMath.Samples.Assessment;

/// <summary>What comes into a surge tank and what goes, at each point: two stacks as high as each other unless it drains.</summary>
internal static class SurgeTankChart
{
    internal static IEnumerable<string> Of(IReadOnlyList<SystemState> states)
    {
        foreach (string node in states[0].SurgeTanks.Select(t => t.Node))
        {
            (string Point, SurgeTankBalance Tank)[] all =
            [
                .. states.Select(s => (s.Point.Name, s.SurgeTanks.First(t => t.Node == node))),
            ];
            yield return Of(node, all);
        }
    }

    private static string Of(string node, (string Point, SurgeTankBalance Tank)[] all)
    {
        Plot plot = Charts.New("", "flow, L/h");
        Stack(
            plot,
            all,
            -0.2,
            ("lifted", Charts.Blue, t => t.LiftFlow.LitersPerHour),
            ("returned", Charts.Palette[2], t => t.ReturnFlow.LitersPerHour)
        );
        Stack(
            plot,
            all,
            0.2,
            ("drawn by its pumps", Charts.Palette[3], t => t.DrawnFlow.LitersPerHour),
            ("overflows", Charts.Ochre, t => t.OverflowFlow.LitersPerHour)
        );
        plot.Axes.Bottom.SetTicks(
            [.. all.Select((_, i) => (double)i)],
            [.. all.Select(p => p.Point.Replace(' ', '\n'))]
        );
        plot.Axes.Bottom.MajorTickStyle.Length = 0;
        double top = all.Max(p => (p.Tank.LiftFlow + p.Tank.ReturnFlow).LitersPerHour);
        plot.Axes.SetLimits(
            -0.6,
            all.Length - 0.4,
            0,
            1.1 * Math.Max(top, all.Max(p => p.Tank.DrawnFlow.LitersPerHour))
        );
        return Pictures.Figure(
            $"Surge tank '{node}': in (left) and out (right)",
            Charts.Finish(plot),
            "In L/h. " + string.Join(" ", all.Select(p => $"{p.Point}: {InWords(p.Tank)}.")),
            "In L/h; as high as each other unless it drains. The numbers stand in the appendix."
        );
    }

    private static void Stack(
        Plot plot,
        (string Point, SurgeTankBalance Tank)[] all,
        double beside,
        params (string Name, Color Color, Func<SurgeTankBalance, double> Flow)[] layers
    )
    {
        double[] below = new double[all.Length];
        foreach ((string name, Color color, Func<SurgeTankBalance, double> flow) in layers)
        {
            var bars = plot.Add.Bars(
                (Bar[])
                    [
                        .. all.Select(
                            (p, i) =>
                                new Bar
                                {
                                    Position = i + beside,
                                    ValueBase = below[i],
                                    Value = below[i] + flow(p.Tank),
                                    FillColor = color,
                                    LineColor = Charts.Ink,
                                    Size = 0.36,
                                }
                        ),
                    ]
            );
            bars.LegendText = name;
            for (int i = 0; i < all.Length; i++)
            {
                below[i] += flow(all[i].Tank);
            }
        }
    }

    private static string InWords(SurgeTankBalance tank) =>
        $"{Say.LitersPerHour(tank.LiftFlow)} lifted, {Say.LitersPerHour(tank.ReturnFlow)} returned, {Say.LitersPerHour(tank.DrawnFlow)} drawn, "
        + (
            tank.DrainsWithLift
                ? $"empty after {Say.Number(tank.LastsWithLift().Seconds, "0")} s"
                : $"{Say.LitersPerHour(tank.OverflowFlow)} overflow"
        );
}
