namespace FuelMath;

/// <summary>The findings of regulators in a solved state.</summary>
internal static class RegulatorFindings
{
    /// <summary>A bypass regulator that is shut or fully open.</summary>
    internal static IEnumerable<Finding> OfBypass(PartState at, string? basis)
    {
        if (basis is not null)
        {
            yield return Estimate(at, basis);
        }

        if (double.IsNaN(at.Inlet))
        {
            // Every way to it is shut: nothing is drawn there, and nothing has to be supplied.
            yield break;
        }

        if (at.Condition is not (Network.LineCondition.Regulating or Network.LineCondition.FullyOpen))
        {
            yield return Finding.Of(
                FindingCode.RegulatorShut,
                Severity.Danger,
                at.Line,
                $"Regulator '{at.Line}' is shut: the pump does not supply what is drawn",
                $"inlet {Show.Bar(at.Inlet)} gauge",
                "regulating",
                PartState.ByDefinition,
                "Rail pressure has fallen below its set point: more pump, less restriction, more voltage at the pump, or less demand."
            );
        }
        else if (at.Condition == Network.LineCondition.FullyOpen)
        {
            yield return Finding.Of(
                FindingCode.RegulatorFullyOpen,
                Severity.Warning,
                at.Line,
                $"Regulator '{at.Line}' is fully open: the return path lifts the rail pressure",
                $"inlet {Show.Bar(at.Inlet)} gauge",
                "regulating",
                PartState.ByDefinition,
                "Widen the return line or pump less: the rail pressure is no longer set by the regulator."
            );
        }
    }

    /// <summary>A reducing regulator that is starved: seated is satisfied and worth no word.</summary>
    internal static IEnumerable<Finding> OfReducing(PartState at, string? basis)
    {
        if (basis is not null)
        {
            yield return Estimate(at, basis);
        }

        if (at.Condition == Network.LineCondition.FullyOpen)
        {
            yield return Finding.Of(
                FindingCode.RegulatorStarved,
                Severity.Danger,
                at.Line,
                $"Regulator '{at.Line}' is starved: its supply does not reach what it should hold",
                $"outlet {Show.Bar(at.Outlet)} gauge from {Show.Bar(at.Inlet)} gauge",
                "regulating",
                PartState.ByDefinition,
                "Rail pressure has fallen below its set point: more pump, less restriction ahead of it, more voltage at the pump, or less demand."
            );
        }
    }

    private static Finding Estimate(PartState at, string basis) =>
        Finding.Of(
            FindingCode.RegulatorEstimated,
            Severity.Note,
            at.Line,
            $"What is known of regulator '{at.Line}' is in part an estimate",
            basis,
            "none",
            PartState.ByDefinition,
            "Take a second reading at another flow, and measure what it loses when fully open."
        );
}
