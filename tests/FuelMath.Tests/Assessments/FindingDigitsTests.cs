using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A value beyond its limit never reads like the limit.</summary>
public sealed class FindingDigitsTests
{
    private static readonly DataSource Rule = new("Definition", "a test");

    [Theory]
    [InlineData(0.77, "0.77 V", "0.70 V")]
    [InlineData(0.7049, "0.705 V", "0.700 V")]
    [InlineData(0.7004, "0.7004 V", "0.7000 V")]
    [InlineData(0.69999, "0.69999 V", "0.70000 V")]
    [InlineData(0.7, "0.70 V", "0.70 V")]
    public void Of_ValueNearItsLimit_ShowsTheDigitsThatTellThemApart(double volts, string value, string limit)
    {
        Finding found = Made(Shown.Volts(volts), Shown.Volts(0.7));

        Assert.Equal((value, limit), (found.Value, found.Limit));
    }

    /// <summary>Words around a number carry no sign: 3.04 % below is held against 3 %.</summary>
    [Fact]
    public void Of_WordsAroundANumber_ShowTheDigitsThatTellThemApart()
    {
        Finding found = Made(
            Shown.Percent(-0.0304).As(n => $"{n} below 3.00 bar"),
            Shown.Percent(0.03).As(n => $"within {n}")
        );

        Assert.Equal(("3.04 % below 3.00 bar", "within 3.00 %"), (found.Value, found.Limit));
    }

    /// <summary>Numbers that differ by a millionth of themselves read differently, with the same places.</summary>
    [Property]
    public Property Of_ValuesThatDiffer_ReadDifferently() =>
        Prop.ForAll(
            Gen.Zip(Gen.Choose(1_000, 9_999_999), Gen.Choose(1, 1_000_000)).ToArbitrary(),
            pair =>
            {
                (double limit, double over) = (pair.Item1 / 1e5, 1 + (pair.Item2 / 1e6));
                Finding found = Made(Shown.Percent(limit * over), Shown.Percent(limit));
                return found.Value != found.Limit && Places(found.Value) == Places(found.Limit);
            }
        );

    /// <summary>The drop to the pump of a solved rig against a limit that is 0.1 mV less.</summary>
    [Fact]
    public void Findings_DropJustAboveTheLimit_ReadsAboveIt()
    {
        FuelSystem rig = Workshop.Four(pumpOhms: 0.2);
        OperatingPoint point = VerdictCases.At(Workshop.Open(0.9));
        Finding usual = rig.Solve(point).Findings.Single(f => f.Code == FindingCode.PumpVoltageLow);
        double drop = ((ElectricPotential)usual.ValueQuantity!).Volts;

        Finding found = rig.WithLimits(
                Limits.CommonPractice.With(
                    new Limits.OwnLimit(Limits.Kind.VoltageDrop, ElectricPotential.FromVolts(drop - 1e-4), "a test")
                )
            )
            .Solve(point)
            .Findings.Single(f => f.Code == FindingCode.PumpVoltageLow);

        Assert.NotEqual(found.Value, found.Limit);
    }

    private static int Places(string text) => text.Split(' ')[0].Split('.')[1].Length;

    private static Finding Made(Shown value, Shown limit) =>
        Finding.Of(FindingCode.Custom, Severity.Warning, "part", "something", value, limit, Rule, "Do it.");
}
