namespace FuelMath;

/// <summary>Finds the node or link of a setting, and refuses one that can't be set.</summary>
internal static class NetworkSettings
{
    /// <summary>The index of a node of fixed pressure.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int FixedNode(NetworkPlan plan, string node)
    {
        int i = plan.Node(node);
        return i >= plan.Unknown
            ? i
            : throw new ArgumentException(
                $"Must be a node of fixed pressure; the pressure of '{node}' is sought.",
                nameof(node)
            );
    }

    /// <summary>The index of a junction.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Junction(NetworkPlan plan, string node)
    {
        int i = plan.Node(node);
        return i < plan.Unknown
            ? i
            : throw new ArgumentException(
                $"Must be a junction; the pressure of '{node}' is fixed, so that any draw there changes nothing.",
                nameof(node)
            );
    }

    /// <summary>The index of a node whose pressure is a result.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Sought(NetworkPlan plan, string node)
    {
        int i = plan.Node(node);
        return i < plan.Unknown
            ? i
            : throw new ArgumentException(
                $"Must be a junction; the pressure of '{node}' is given, not found.",
                nameof(node)
            );
    }

    /// <summary>The index of a line whose settings are of a kind.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Line(NetworkPlan plan, string line, SettingKind kind)
    {
        int i = plan.Link(line);
        string wanted = kind switch
        {
            SettingKind.Command => "injectors",
            SettingKind.Reference => "a regulator",
            _ => "a pump",
        };
        return plan.Links[i].Law.Settable == kind
            ? i
            : throw new ArgumentException(
                $"Must hold {wanted}; '{line}' holds a {plan.Links[i].Part.GetType().Name.Split('`')[0]}.",
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
            throw new ArgumentException(
                $"The pump in the place of '{plan.Links[line].Name}' must {why} as the network's own does.",
                nameof(pump)
            );
        }

        double[] settings = new double[old.SettingCount];
        law.Write(settings);
        return settings;
    }
}
