namespace FuelMath.Samples.Assessment;

/// <summary>A line plan on one screen: each joint with its verdict, what to act on, what to buy and to cut.</summary>
internal static class LineReport
{
    private const int Width = 100;

    internal static IEnumerable<string> Text(LinePlan line)
    {
        int bad = line.Joints.Count(j => j.Verdict != Joint.Outcome.Seals);
        yield return $"{line.Name}: {line.Joints.Length} joints, "
            + (bad == 0 ? "each made to seal" : $"{bad} that must not be pressurized");
        yield return "";
        for (int i = 0; i < line.Joints.Length; i++)
        {
            Joint joint = line.Joints[i];
            string place = $"{line.Pieces[i].Name} to {line.Pieces[i + 1].Name}";
            foreach (string row in Wrapping.Wrap($"{Word(joint.Verdict)}: {place}: {joint.Reason}", Width, 4))
            {
                yield return row;
            }

            foreach (string row in joint.Cautions.SelectMany(c => Wrapping.Wrap($"    {c}", Width, 4)))
            {
                yield return row;
            }
        }

        foreach (Finding finding in line.Check().Where(f => f.Severity == Severity.Danger))
        {
            foreach (string row in Wrapping.Wrap($"DO: {finding.What}: {finding.Action}", Width, 4))
            {
                yield return row;
            }
        }

        yield return "";
        yield return "To buy and to cut:";
        foreach (LinePlan.BillRow row in line.Bill)
        {
            yield return $"  {row}";
        }

        yield return "";
        yield return "A plan is no proof: relieve the pressure before opening a line, and prove it for tightness before the";
        yield return "first start. Makers' data and licensed practice come first.";
    }

    private static string Word(Joint.Outcome verdict) =>
        verdict switch
        {
            Joint.Outcome.Seals => "seals",
            Joint.Outcome.ThreadsButDoesNotSeal => "LEAKS",
            _ => "DOES NOT FIT",
        };
}
