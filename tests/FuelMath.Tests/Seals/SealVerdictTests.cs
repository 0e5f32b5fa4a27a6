using FsCheck.Xunit;
using FuelMath.Joints;
using UnitsNet;
using Bounds = FuelMath.Joints.ORingFit.Limits;

namespace FuelMath.Tests.Seals;

/// <summary>The severity of each finding on a ring follows from its bands alone, as the page of seals has it.</summary>
public sealed class SealVerdictTests
{
    private static readonly Ratio OversizeLimit = Ratio.FromPercent(3);

    [Property(Arbitrary = [typeof(SealArbitraries)])]
    public void Check_AnyFit_IsJudgedByItsBands(FitMeasures measures)
    {
        ORingFit fit = measures.ToFit();
        Bounds limits = Bounds.RadialStatic;
        Dictionary<FindingCode, Severity> found = fit.Check(limits).ToDictionary(f => f.Code, f => f.Severity);

        Says(
            FindingCode.SealSqueezeLow,
            fit.Squeeze.WorstLeast <= Ratio.Zero || fit.Squeeze.LikelyLeast < limits.LeastSqueeze ? Severity.Danger
                : fit.Squeeze.WorstLeast < limits.LeastSqueeze ? Severity.Warning
                : null
        );
        Says(
            FindingCode.SealSqueezeHigh,
            fit.Squeeze.LikelyGreatest > limits.GreatestSqueeze ? Severity.Warning
                : fit.Squeeze.WorstGreatest > limits.GreatestSqueeze ? Severity.Note
                : null
        );
        Says(
            FindingCode.SealFillHigh,
            fit.Fill.WorstGreatest >= Ratio.FromPercent(100) ? Severity.Danger
                : fit.Fill.WorstGreatest > limits.GreatestFill ? Severity.Warning
                : null
        );
        Says(FindingCode.SealStretchHigh, fit.Stretch.WorstGreatest > limits.GreatestStretch ? Severity.Warning : null);
        Says(
            FindingCode.SealOversize,
            fit.Oversize.Nominal > OversizeLimit ? Severity.Danger
                : fit.Oversize.WorstGreatest > OversizeLimit ? Severity.Warning
                : null
        );

        void Says(FindingCode code, Severity? expected) =>
            Assert.Equal(expected, found.TryGetValue(code, out Severity severity) ? severity : null);
    }

    /// <summary>
    /// A ring of 20.5 mm over its section in a groove of 20 mm is 2.5 % too large: within 3 %, but not with a tenth of a
    /// millimeter of its own and of the groove; 20.7 mm is 3.5 %.
    /// </summary>
    [Theory]
    [InlineData(20.5, 0.0, null)]
    [InlineData(20.5, 0.1, Severity.Warning)]
    [InlineData(20.7, 0.0, Severity.Danger)]
    [InlineData(20.7, 0.1, Severity.Danger)]
    public void Check_RingTooLarge_IsADangerBeyondItsNominalMeasures(double ring, double off, Severity? expected)
    {
        ORingFit fit = new FitMeasures(ring, 2, (20 / ring) - 1, 0.8, off).ToFit();

        Assert.Equal(
            expected,
            fit.Check(Bounds.RadialStatic).SingleOrDefault(f => f.Code == FindingCode.SealOversize)?.Severity
        );
    }

    /// <summary>A squeeze of just the most that is allowed is a note while only the worst case exceeds it.</summary>
    [Fact]
    public void Check_SqueezeLikelyAtItsLimit_IsANote()
    {
        ORingFit fit = new FitMeasures(20, 3, 0.02, 0.8, 0.05).ToFit();

        Assert.Equal(Severity.Note, SqueezeAt(fit.Squeeze.LikelyGreatest));
        Assert.Equal(Severity.Warning, SqueezeAt(fit.Squeeze.LikelyGreatest * (1 - 1e-9)));

        Severity SqueezeAt(Ratio most) =>
            Assert
                .Single(
                    fit.Check(
                        new Bounds(
                            Ratio.FromPercent(1),
                            most,
                            Ratio.FromPercent(5),
                            Ratio.FromPercent(90),
                            FitMeasures.Source
                        )
                    ),
                    f => f.Code == FindingCode.SealSqueezeHigh
                )
                .Severity;
    }

    /// <summary>What is allowed at most may be reached: a limit of just the value is kept, one below it is not.</summary>
    [Property(Arbitrary = [typeof(SealArbitraries)])]
    public void Check_AtItsOwnValues_IsKept(FitMeasures measures)
    {
        ORingFit fit = measures.ToFit();
        Ratio fill = fit.Fill.WorstGreatest;
        Ratio stretch = fit.Stretch.WorstGreatest;
        if (fill < Ratio.FromPercent(100) && stretch > Ratio.Zero && stretch < Ratio.FromPercent(25))
        {
            Assert.DoesNotContain(
                Codes(fill, stretch),
                c => c is FindingCode.SealFillHigh or FindingCode.SealStretchHigh
            );
            Assert.Equal(
                2,
                Codes(fill * (1 - 1e-9), stretch * (1 - 1e-9))
                    .Count(c => c is FindingCode.SealFillHigh or FindingCode.SealStretchHigh)
            );
        }

        IEnumerable<FindingCode> Codes(Ratio mostFill, Ratio mostStretch) =>
            fit.Check(
                    new Bounds(Ratio.FromPercent(10), Ratio.FromPercent(30), mostStretch, mostFill, FitMeasures.Source)
                )
                .Select(f => f.Code);
    }
}
