using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The findings of a line.</summary>
internal static class LineFindings
{
    private static readonly DataSource Forms = new("Definition", "forms and sizes of the two ends");

    internal static ImmutableArray<Finding> Of(LinePlan line)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        for (int i = 0; i < line.Joints.Length; i++)
        {
            Find(found, line.Joints[i], $"'{line.Pieces[i].Name}' to '{line.Pieces[i + 1].Name}'");
        }

        string[] guessed =
        [
            .. line
                .Pieces.SelectMany(p => p.Fittings)
                .Where(f => f.Basis == Fitting.LossBasis.Estimate)
                .Select(f => f.Name)
                .Distinct(StringComparer.Ordinal),
        ];
        if (guessed.Length > 0)
        {
            found.Add(
                new(
                    FindingCode.LossEstimated,
                    Severity.Note,
                    line.Name,
                    $"Loss coefficients of line '{line.Name}' are estimates",
                    string.Join(", ", guessed),
                    "none",
                    Forms,
                    "Measure the pressure across the line when it matters."
                )
            );
        }

        return found.ToImmutable();
    }

    private static void Find(ImmutableArray<Finding>.Builder found, Joint joint, string place)
    {
        string ends = $"{joint.First} with {joint.Second}";
        if (joint.Verdict != Joint.Outcome.Seals)
        {
            bool leaks = joint.Verdict == Joint.Outcome.ThreadsButDoesNotSeal;
            found.Add(
                new(
                    FindingCode.JointDoesNotSeal,
                    Severity.Danger,
                    place,
                    leaks ? $"Joint {place} threads together and does not seal" : $"Joint {place} does not go together",
                    ends,
                    "seals",
                    Forms,
                    $"{joint.Reason} Between them goes: {AdapterSearch.Generic(joint.First, joint.Second).Name}."
                )
            );
        }

        foreach (string caution in joint.Cautions)
        {
            found.Add(
                new(FindingCode.JointCaution, Severity.Note, place, $"Joint {place}", ends, "none", Forms, caution)
            );
        }
    }
}
