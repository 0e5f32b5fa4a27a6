namespace FuelMath.Samples.Assessment;

/// <summary>A first answer on one screen: verdict by point, what to act on, and which missing datum matters most.</summary>
internal static class BriefReport
{
    private const int Width = 100;
    private const int MostFindings = 5;

    internal static IEnumerable<string> Text(BriefAssessment first)
    {
        yield return $"{first.Brief.Name}: a first answer, {first.Influences.Length} inputs estimated";
        yield return "It is no clearance to load an engine: verify with a sensor at light load first.";
        yield return "";
        foreach (SystemAssessment.PointAssessment point in first.Assessment.Points)
        {
            foreach (string line in Wrapping.Wrap($"{point}", Width, 4))
            {
                yield return line;
            }
        }

        SystemAssessment.GroupedFinding[] act = [.. first.Assessment.Findings.Where(f => f.Severity != Severity.Note)];
        foreach (SystemAssessment.GroupedFinding finding in act.Take(MostFindings))
        {
            foreach (string line in Wrapping.Wrap($"- {finding.What}. Do: {finding.Action}", Width, 4))
            {
                yield return line;
            }
        }

        if (act.Length > MostFindings)
        {
            yield return $"  and {act.Length - MostFindings} more";
        }

        yield return "";
        yield return "What is estimated, what matters most first (one at a time, over its usual range):";
        foreach (BriefAssessment.EstimateInfluence influence in first.Influences)
        {
            foreach (string line in Wrapping.Wrap($"- {influence}", Width, 4))
            {
                yield return line;
            }
        }

        yield return "";
        yield return "Taken without a range: how dead time goes with voltage, the pump at other voltages and beyond";
        yield return "its points, wires, coils, regulator areas (SystemBrief.Taken lists them).";
    }
}
