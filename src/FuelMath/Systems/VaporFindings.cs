using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Sources;

namespace FuelMath.Systems;

/// <summary>What there is to say of boiling fuel.</summary>
internal sealed class VaporFindings(SolvedSystem solved)
{
    private static readonly DataSource Unchecked = new(
        "Definition",
        "a margin needs a vapor pressure to be held against"
    );

    internal void Look()
    {
        if (!solved.System.Fuel.HasVaporPressure)
        {
            solved.Add(
                Severity.Note,
                $"No vapor pressure is known for '{solved.System.Fuel.Name}'",
                "unknown",
                "none",
                "Hot-fuel behavior is not checked. Measure the blend, or keep the fuel cool and the pump inlet flooded.",
                Unchecked
            );
            return;
        }

        double vapor;
        try
        {
            vapor = solved.System.Fuel.VaporPressureAt(solved.Point.Fuel).Si;
        }
        catch (ArgumentOutOfRangeException outside)
        {
            solved.Add(
                Severity.Note,
                "Vapor margin is not checked at this fuel temperature",
                $"{solved.Point.Fuel.InSi() - 273.15:0} degC",
                "the range of the vapor-pressure data",
                outside.Message.Split(Environment.NewLine)[0],
                Unchecked
            );
            return;
        }

        double least = double.PositiveInfinity;
        string where = "";
        for (int i = 0; i < solved.Pressures.Length; i++)
        {
            double margin = solved.Pressures[i] + solved.Point.Ambient.Si - vapor;
            if (margin < least)
            {
                (least, where) = (margin, solved.System.Plan.Nodes[i].Name);
            }
        }

        double limit = solved.System.Limits.VaporMarginDifference.InSi();
        if (least < limit)
        {
            solved.Add(
                least <= 0 ? Severity.Danger : Severity.Warning,
                $"Fuel is near boiling at '{where}'",
                $"{Show.Bar(least)} above vapor pressure",
                Show.Bar(limit),
                "Cool the fuel, flood the pump inlet, shorten and widen the suction side, or use a less volatile fuel."
            );
        }
    }
}
