namespace FuelMath;

/// <summary>What there is to say of boiling fuel.</summary>
/// <remarks>
/// Vapor pressure rises with temperature. Below the range of its data the value at the lower end is therefore an upper
/// bound, and a margin against it is proven; above the range, or with none known, the margin is not known, which is a
/// warning where fuel is warm and a note where it is not.
/// </remarks>
internal sealed class VaporFindings(SolvedSystem solved)
{
    /// <summary>
    /// 37.8 °C, at which the volatility of gasolines is rated. Source: [Common-practice] warmer fuel is hot fuel.
    /// </summary>
    internal const double Hot = 310.95;

    private static readonly DataSource Unchecked = new(
        "Definition",
        "a margin needs a vapor pressure to be held against"
    );

    private readonly double fuel = solved.Point.Fuel.InSi();

    internal void Find()
    {
        LookAtClass();
        LiquidVaporPressure known = solved.System.Fuel.VaporPressure;
        if (!known.IsKnown)
        {
            if (!known.IsNegligible)
            {
                NotChecked(
                    $"No vapor pressure is known for '{solved.System.Fuel.Name}': boiling is not checked",
                    "unknown",
                    "a vapor pressure"
                );
            }

            return;
        }

        (double lowest, double highest) = (known.Law.Lowest, known.Law.Highest);
        double slack = Guard.EdgeTolerance * highest;
        if (fuel > highest + slack)
        {
            NotChecked(
                "The vapor pressure is not known at this fuel temperature: boiling is not checked",
                Shown.Celsius(fuel),
                Shown.Celsius(highest).As(n => $"data up to {n}")
            );
            return;
        }

        bool isBound = fuel < lowest - slack;
        Judge(known.At(SiUnits.Temperature(Math.Clamp(fuel, lowest, highest))).Si, isBound, lowest);
    }

    /// <summary>Where the fuel told and the class told contradict each other: the higher vapor pressure was taken.</summary>
    private void LookAtClass()
    {
        if (solved.System.Fuel.Recipe is not E85Recipe { Class: { } told, AsMixed: { } mixed } || told.Allows(mixed))
        {
            return;
        }

        solved.Add(
            Finding.Of(
                FindingCode.FuelOutsideClass,
                Severity.Note,
                solved.System.Fuel.Name,
                $"The gasoline told and E85 class {told.Number} do not go together",
                Shown.Bar(mixed.Si).As(n => $"{n} as mixed, at {Show.Celsius(E85Class.At.InSi())}"),
                $"{Show.Bar(told.LowestVaporPressure.Si)} to {Show.Bar(told.HighestVaporPressure.Si)}",
                E85Class.Source,
                "The higher of both is reckoned with: ask which class is in the pump, or measure the vapor pressure."
            )
        );
    }

    private void Judge(double vapor, bool isBound, double lowest)
    {
        double limit = solved.System.Limits.VaporMarginDifference.InSi();

        // A node that is cut off keeps whatever it had: its margin is not a number, and it is not among them.
        (string Node, double Margin)[] low =
        [
            .. solved
                .Pressures.Select(
                    (p, i) => (solved.System.Network.Nodes[i].Name, p + solved.Point.Air.Ambient.Si - vapor)
                )
                .Where(n => n.Item2 < limit)
                .OrderBy(n => n.Item2),
        ];
        if (isBound && low.Length > 0)
        {
            NotChecked(
                "The vapor pressure is not known at this fuel temperature: boiling is not checked",
                Shown.Celsius(fuel),
                Shown.Celsius(lowest).As(n => $"data from {n}")
            );
            return;
        }

        foreach ((string node, double margin) in low)
        {
            solved.Add(
                FindingCode.VaporMarginLow,
                margin <= 0 ? Severity.Danger : Severity.Warning,
                node,
                margin <= 0 ? $"Fuel boils at '{node}'" : $"Fuel is near boiling at '{node}'",
                Shown
                    .Bar(margin)
                    .As(n =>
                        $"{n} {(margin < 0 ? "below" : "above")} its vapor pressure of {Show.Bar(vapor)} at {Show.Celsius(fuel)} ({solved.System.Fuel.VaporPressure.Origin})"
                    ),
                Shown.Bar(limit).As(n => $"at least {n} above"),
                "Cool the fuel, flood the pump inlet, shorten and widen the suction side, or use a less volatile fuel."
            );
        }
    }

    private void NotChecked(string what, Shown value, Shown limit) =>
        solved.Add(
            Finding
                .Of(
                    FindingCode.VaporNotChecked,
                    fuel > Hot ? Severity.Warning : Severity.Note,
                    solved.System.Fuel.Name,
                    what,
                    value,
                    limit,
                    Unchecked,
                    "Measure the vapor pressure of this fuel at this temperature, or keep the fuel cool and the pump inlet flooded."
                )
                .AsNotKnown()
        );
}
