using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Joints;

/// <summary>The findings of an O-ring in its groove.</summary>
internal static class SealFindings
{
    /// <summary>
    /// A ring that is compressed along its circumference by more than this buckles. Source: [Common-practice] O-ring
    /// design guides.
    /// </summary>
    private const double MostOversize = 0.03;

    private static readonly DataSource Oversize = new(
        "Common-practice",
        "ring larger than its seat, O-ring design guides"
    );

    internal static ImmutableArray<Finding> Of(ORingFit fit, ORingFit.Limits limits)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        string ring = fit.Ring.Name;
        double least = limits.LeastSqueeze.InSi();
        double most = limits.GreatestSqueeze.InSi();
        if (fit.Squeeze.Si.WorstLeast <= 0)
        {
            Add(
                FindingCode.SealSqueezeLow,
                Severity.Danger,
                $"{ring} does not touch both walls at its worst",
                fit.Squeeze,
                $"at least {Spread.Percent(least)}",
                "It leaks before pressure presses it: squeeze must seal at no pressure. Another ring or another groove."
            );
        }
        else if (fit.Squeeze.Si.WorstLeast < least)
        {
            Add(
                FindingCode.SealSqueezeLow,
                fit.Squeeze.Si.LikelyLeast < least ? Severity.Danger : Severity.Warning,
                $"{ring} is squeezed too little",
                fit.Squeeze,
                $"at least {Spread.Percent(least)}",
                "Squeeze must seal at no pressure, in the cold and after the rubber has set. Measure the parts, or take a thicker ring."
            );
        }

        if (fit.Squeeze.Si.WorstGreatest > most)
        {
            Add(
                FindingCode.SealSqueezeHigh,
                fit.Squeeze.Si.LikelyGreatest > most ? Severity.Warning : Severity.Note,
                $"{ring} is squeezed too much",
                fit.Squeeze,
                $"at most {Spread.Percent(most)}",
                "It is cut or rolls on assembly, and sets sooner. Oil it, chamfer the edge, or take a thinner ring."
            );
        }

        if (fit.Fill.Si.WorstGreatest > limits.GreatestFill.InSi())
        {
            Add(
                FindingCode.SealFillHigh,
                fit.Fill.Si.WorstGreatest >= 1 ? Severity.Danger : Severity.Warning,
                $"{ring} fills its groove",
                fit.Fill,
                $"at most {Spread.Percent(limits.GreatestFill.InSi())}",
                "Rubber does not compress: when it swells or warms it bends or breaks what holds it. A wider groove."
            );
        }

        if (fit.Stretch.Si.WorstGreatest > limits.GreatestStretch.InSi())
        {
            Add(
                FindingCode.SealStretchHigh,
                Severity.Warning,
                $"{ring} is stretched much",
                fit.Stretch,
                $"at most {Spread.Percent(limits.GreatestStretch.InSi())}",
                "It thins and ages sooner. A ring of the next larger inside diameter."
            );
        }

        if (fit.Oversize.Si.WorstGreatest > MostOversize)
        {
            found.Add(
                new(
                    FindingCode.SealOversize,
                    fit.Oversize.Si.Nominal > MostOversize ? Severity.Danger : Severity.Warning,
                    ring,
                    $"{ring} is too large for its groove",
                    fit.Oversize.ToString(),
                    $"at most {Spread.Percent(MostOversize)}",
                    Oversize,
                    "It buckles, is pinched and cut when the parts go together, and then leaks. A ring of the next smaller inside diameter."
                )
            );
        }

        found.Add(
            new(
                FindingCode.SealMaterialNotKnown,
                Severity.Note,
                ring,
                $"The rubber of {ring} is not known here",
                "a question to its maker",
                "none",
                limits.Source,
                "Ask the maker whether it stands this fuel, with its alcohol and additives, at the least and greatest temperature, and how far it swells."
            )
        );
        return found.ToImmutable();

        void Add(
            FindingCode code,
            Severity severity,
            string what,
            TolerancedLength.Band<Ratio> value,
            string limit,
            string action
        ) => found.Add(new(code, severity, ring, what, value.ToString(), limit, limits.Source, action));
    }
}
