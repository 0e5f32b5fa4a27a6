namespace FuelMath;

/// <summary>The ways out of the rails beside the injectors: a leak or a jet as well as a bleed to the tank.</summary>
/// <remarks>
/// What a bypass regulator or a relief valve sends back is no demand on the pumps: it shuts before the pressure falls.
/// </remarks>
internal static class PumpOutlets
{
    /// <summary>What the pumps of the rails must deliver at the pressure that must hold, m³/s.</summary>
    internal static double Demand(ReportedSolve solve)
    {
        double demand = 0;
        foreach (double flow in solve.InjectorFlows)
        {
            demand += flow;
        }

        foreach ((int line, int sign) in solve.State.Path.Outlets)
        {
            demand += Math.Max(sign * solve.LineFlows[line], 0);
        }

        return demand;
    }

    /// <summary>The lines between the rails and a tank that no valve shuts, with the sign of flow into the tank.</summary>
    internal static (int Line, int Sign)[] Of(FuelSystem system)
    {
        HashSet<string> tanks = [.. system.Network.Nodes.Where(n => n.IsFixed).Select(n => n.Name)];
        HashSet<string> open = PumpReserve.RailLines(system, l => !l.Part.ReturnsSurplus);
        return
        [
            .. system
                .Network.Lines.Index()
                .Where(l => !l.Item.Part.IsPump && open.Contains(l.Item.Name))
                .Where(l => tanks.Contains(l.Item.From) != tanks.Contains(l.Item.To))
                .Select(l => (l.Index, tanks.Contains(l.Item.To) ? 1 : -1)),
        ];
    }

    /// <summary>
    /// The lines that lead only to such a way out: what they take does not lower the pressure at an injector.
    /// </summary>
    internal static HashSet<int> BranchesIn(ReportedSolve solve)
    {
        Network network = solve.System.Network;
        HashSet<int> aside =
        [
            .. solve.State.Path.Outlets.Where(o => o.Sign * solve.LineFlows[o.Line] > 0).Select(o => o.Line),
        ];
        if (aside.Count == 0)
        {
            return aside;
        }

        string[] fed = [.. solve.State.Path.Seats.Select(s => s.Node)];
        string[] inner = [.. network.Nodes.Where(n => !n.IsFixed).Select(n => n.Name).Except(fed)];
        int known = 0;
        while (known < aside.Count)
        {
            known = aside.Count;
            foreach (string node in inner)
            {
                int[] left =
                [
                    .. network
                        .Lines.Index()
                        .Where(l => (l.Item.From == node || l.Item.To == node) && !aside.Contains(l.Index))
                        .Select(l => l.Index),
                ];
                if (left.Length == 1 && network.Lines[left[0]].Part.IsPassage)
                {
                    aside.Add(left[0]);
                }
            }
        }

        return aside;
    }
}
