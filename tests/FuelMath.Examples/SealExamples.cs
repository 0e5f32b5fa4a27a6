using System.Collections.Immutable;
using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class SealExamples
{
    private static readonly DataSource Drawing = new("Workshop-class", "rail of the time-trial car");

    [Fact]
    public void InjectorPlay()
    {
        #region Stack
        AxialClosure stack = new(
            "injector 1",
            [
                AxialClosure.Part.Opening("rail seat to port seat", Mm(60, 0.2)),
                AxialClosure.Part.Filling("body between its seats", Mm(48, 0.15)),
                AxialClosure.Part.Filling("adapter", Mm(11.2, 0.05)),
            ]
        );

        TolerancedLength.Band<Length> play = stack.Gap; // 0.8 mm nominal
        ImmutableArray<Finding> findings = stack.Check(
            Length.FromMillimeters(0.3),
            Length.FromMillimeters(1.1),
            Drawing
        );
        string what = findings[0].What; // "Stack 'injector 1' can have too much play"
        #endregion

        Assert.Equal(0.8, play.Nominal.Millimeters, 1e-9);
        Assert.Single(findings);
        Assert.Equal("Stack 'injector 1' can have too much play", what);
    }

    [Fact]
    public void InjectorTopSeal()
    {
        #region RailSeal
        ORing ring = new("top ring of the injector", Mm(7.5, 0.1), Mm(3.5, 0.09), Drawing);
        Gland cup = Gland.Piston(Mm(7.7, 0.05), Mm(13.5, 0.05), Mm(4.6, 0.1));

        ORingFit asMade = new(ring, cup, ORingFit.Conditions.AsMade);
        ORingFit swollen = new(ring, cup, ORingFit.Conditions.FromSwell(Ratio.FromPercent(12)));

        Ratio least = asMade.Squeeze.WorstLeast; // 12.0 %
        ImmutableArray<Finding> findings = swollen.Check(ORingFit.Limits.RadialStatic);
        string what = findings[0].What; // "top ring of the injector fills its groove"
        #endregion

        Assert.InRange(least.Percent, 9, 15);
        Assert.Equal("top ring of the injector fills its groove", what);
    }

    private static TolerancedLength Mm(double nominal, double tolerance) =>
        new(Length.FromMillimeters(nominal), Length.FromMillimeters(tolerance));
}
