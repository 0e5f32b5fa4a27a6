namespace FuelMath;

/// <summary>Finds what a setting is for, and says when it can't be set.</summary>
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

    /// <summary>The index of a link of injectors.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Injectors(NetworkPlan plan, string link) =>
        Link(plan, link, p => p is CappedPart, "a capped orifice");

    /// <summary>The index of a regulator.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Regulator(NetworkPlan plan, string link) =>
        Link(plan, link, p => p is RegulatorPart, "a regulator");

    /// <summary>The index of a pump.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    internal static int Pump(NetworkPlan plan, string link) => Link(plan, link, p => p.IsPump, "a pump");

    /// <summary>The part that a pump becomes in the place of another.</summary>
    /// <exception cref="ArgumentException">It does not fit there.</exception>
    internal static LinkPart Replacement(NetworkPlan plan, int link, NetworkPump pump)
    {
        ArgumentNullException.ThrowIfNull(pump);
        string name = plan.Links[link].Name;
        LinkPart part = pump.PartFor(name);
        ArgumentException Unfit(string what) =>
            new($"The pump in the place of '{name}' must {what} as the network's own does.", nameof(pump));
        if (pump.Switch is not null)
        {
            throw Unfit("always run");
        }

        return (plan.Links[link].Part, part) switch
        {
            (PumpTablePart old, PumpTablePart now) when old.Extend != now.Extend => throw Unfit(
                "treat what lies beyond the ends of its points"
            ),
            (PumpTablePart old, PumpTablePart now) when old.Pieces.Length < now.Pieces.Length => throw Unfit(
                $"have no more than {old.Pieces.Length - 1} points"
            ),
            (PumpPowerPart old, PumpPowerPart now) when !old.Exponent.Equals(now.Exponent) => throw Unfit(
                "have the exponent"
            ),
            (PumpTablePart, PumpTablePart { HasHump: true }) => throw Unfit("have a curve that falls throughout"),
            (PumpTablePart, PumpTablePart) or (PumpPowerPart, PumpPowerPart) => part,
            _ => throw Unfit("be a table or a power law"),
        };
    }

    /// <summary>The settings that put one pump in the place of another, which it fits.</summary>
    internal static double[] Numbers(LinkPart pump, LinkPart old)
    {
        var settings = new double[old.SettingCount];
        ((PumpPart)pump).Write(settings);
        return settings;
    }

    private static int Link(NetworkPlan plan, string link, Func<LinkPart, bool> fits, string what)
    {
        int i = plan.Link(link);
        return fits(plan.Links[i].Part)
            ? i
            : throw new ArgumentException($"Must be {what}; '{link}' is a {plan.Links[i].Kind}.", nameof(link));
    }
}
