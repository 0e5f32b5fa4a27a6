namespace FuelMath;

/// <summary>Finds the node or link of a setting, and refuses one that can't be set.</summary>
internal static class NetworkSettings
{
    /// <summary>A node of fixed pressure.</summary>
    /// <exception cref="ArgumentException">It is another.</exception>
    internal static int FixedNode(NetworkPlan plan, int node) =>
        node >= plan.Unknown
            ? node
            : throw new RefusedArgumentException(
                RefusalCode.FixedPressureNeeded,
                $"Must be a node of fixed pressure; the pressure of '{plan.Nodes[node].Name:node}' is sought.",
                nameof(node)
            );

    /// <summary>A junction.</summary>
    /// <exception cref="ArgumentException">It is another node.</exception>
    internal static int Junction(NetworkPlan plan, int node) =>
        node < plan.Unknown
            ? node
            : throw new RefusedArgumentException(
                RefusalCode.JunctionNeeded,
                $"Must be a junction; the pressure of '{plan.Nodes[node].Name:node}' is fixed, so that any draw there changes nothing.",
                nameof(node)
            );

    /// <summary>A line whose settings are of a kind.</summary>
    /// <exception cref="ArgumentException">It holds another part.</exception>
    internal static int Line(NetworkPlan plan, int line, SettingKind kind)
    {
        string wanted = kind switch
        {
            SettingKind.Command => "injectors",
            SettingKind.Reference => "a regulator",
            _ => "a pump",
        };
        return plan.Links[line].Law.Settable == kind
            ? line
            : throw new RefusedArgumentException(
                RefusalCode.WrongKind,
                $"Must hold {wanted:allowed}; '{plan.Links[line].Name:part}' holds a {plan.Links[line].Part.GetType().Name.Split('`')[0]:given}.",
                nameof(line)
            );
    }

    /// <summary>The settings of a line's own description.</summary>
    internal static double[] Own(NetworkPlan plan, int line)
    {
        LawSettings law = plan.Links[line].Law;
        double[] settings = new double[law.SettingCount];
        law.Write(settings);
        return settings;
    }

    /// <summary>The settings of a replacement pump.</summary>
    /// <exception cref="ArgumentException">It does not fit.</exception>
    internal static double[] Replacement(NetworkPlan plan, int line, PlainPump pump)
    {
        ArgumentNullException.ThrowIfNull(pump);
        LawSettings old = plan.Links[line].Law;
        PumpSettings law = pump.Law;
        if (law.WhyUnlike(old) is { } why)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"The pump in the place of '{plan.Links[line].Name:part}' must {why:rule} as the network's own does.",
                nameof(pump)
            );
        }

        double[] settings = new double[old.SettingCount];
        law.Write(settings);
        return settings;
    }
}
