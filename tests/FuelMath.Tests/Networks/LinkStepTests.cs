using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>One step of Newton's method in one link, by hand.</summary>
public sealed class LinkStepTests
{
    private const double Exact = 1e-12;

    /// <summary>The equation of a link that Newton's method takes: by the slope of its loss, or by the least one.</summary>
    [Theory]
    [InlineData(50, 0, 50)]
    [InlineData(2, 0, 20)]
    [InlineData(2, 5, 25)]
    [InlineData(50, 5, 55)]
    public void LinearLink_TakesTheSlopeOfItsLoss(double slope, double drag, double taken)
    {
        (Real worst, Real plain) = (new(0), new(0));
        Balance<Real> balance = new(new Dual<Real>(new(30), new(slope)), new(2), new(3));

        LinearLink<Real> link = new(in balance, new(4), new(100), new(10), new(20), new(drag), ref worst, ref plain);

        // 2 x 100 - 3 x 10 - 30 = 140 too much; a slope below 1e12 is judged by pressure.
        Close.Within(Exact, 4 + (140 / taken), link.Free.Value);
        Close.Within(Exact, 2 / taken, link.FromUp.Value);
        Close.Within(Exact, 3 / taken, link.ToDown.Value);
        Assert.Equal((140.0, 140.0), (link.Error.Value, worst.Value));
        Close.Within(1e-14, 140, plain.Value);
    }

    /// <summary>A steep one is judged by flow: 140 Pa at 1e14 Pa s/m3 count as 1.4; the last digit of its flow is forgiven.</summary>
    [Theory]
    [InlineData(0, 1.4, 140 - (2.3e-16 * 1e14 * 4))]
    [InlineData(200, 200, 200)]
    public void LinearLink_Steep_IsJudgedByFlow(double before, double after, double plainAfter)
    {
        (Real worst, Real plain) = (new(before), new(before));
        Balance<Real> balance = new(new Dual<Real>(new(30), new(1e14)), new(2), new(3));

        LinearLink<Real> link = new(in balance, new(-4), new(100), new(10), new(20), new(0), ref worst, ref plain);

        Close.Within(Exact, 1.4, link.Error.Value);
        Close.Within(Exact, after, worst.Value);
        Close.Within(Exact, plainAfter, plain.Value);
    }

    /// <summary>The next flow is what the link gives by itself and what both pressures add; the greatest of each is kept.</summary>
    [Fact]
    public void StepSizes_KeepTheGreatestOfEach()
    {
        StepSizes<Real> sizes = default;

        Real first = sizes.Next(new(1), new(-7), new(2), new(5), new(3), new(-4));
        Real second = sizes.Next(new(0.5), new(1), new(1), new(1), new(1), new(1.5));

        // -7 + 2 x 5 + 3 x 4 = 15, and 1 + 1 - 1.5 = 0.5.
        Assert.Equal((15.0, 0.5), (first.Value, second.Value));
        Assert.Equal((14.0, 15.0), (sizes.Change.Value, sizes.Scale.Value));
        Assert.Equal((7.0, 10.0), (sizes.OwnTerm.Value, sizes.PressureTerm.Value));
    }
}
