using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>The pressure across injectors against what the controller was told: which injector, how far, and what is to blame.</summary>
public sealed class PressureFindingTests
{
    private static readonly OperatingPoint PartLoad = VerdictCases.At(Workshop.Hold(1), 2500, 45);

    /// <summary>Behind a rail that takes pressure the last injector has the least: too low is said of it, too high of the first.</summary>
    [Theory]
    [InlineData(2.6, "rail end", "Less fuel", "below")]
    [InlineData(3.4, "rail start", "More fuel", "above")]
    public void NotAsTold_OfSeveral_NamesTheFarthest(double setBars, string node, string says, string which)
    {
        SystemState state = Workshop.Four(setBars: setBars).Solve(PartLoad);

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        double bars = state.Injectors.First(i => i.Seat.Node == node).DifferentialPressure.Bars;
        Assert.Equal((node, Severity.Warning), (found.Part, found.Severity));
        Close.WithinOf(1, 1e-12, (bars / 3) - 1, ((Ratio)found.ValueQuantity!).DecimalFractions);
        Close.WithinOf(1, 1e-12, 0.03, ((Ratio)found.LimitQuantity!).DecimalFractions);
        Assert.StartsWith(says, found.Action, StringComparison.Ordinal);
        Assert.Contains(which, found.Value, StringComparison.Ordinal);
    }

    /// <summary>A departure of just the limit is allowed, above and below.</summary>
    [Theory]
    [InlineData(2.6)]
    [InlineData(3.4)]
    public void NotAsTold_AtItsLimit_IsNoFinding(double setBars)
    {
        FuelSystem system = Workshop.Four(setBars: setBars);
        double off = Math.Abs(
            ((Ratio)system.Solve(PartLoad).Findings.Single(IsPressure).ValueQuantity!).DecimalFractions
        );

        Assert.DoesNotContain(Within(off).Findings, IsPressure);
        Assert.Contains(Within(off * (1 - 1e-9)).Findings, IsPressure);

        SystemState Within(double share) =>
            system
                .WithLimits(
                    Limits.CommonPractice.With(
                        new(Limits.Kind.PressureDeviation, Ratio.FromDecimalFractions(share), "a test")
                    )
                )
                .Solve(PartLoad);
    }

    /// <summary>16 % less than told is a danger, 14 % less and a quarter more are warnings.</summary>
    [Theory]
    [InlineData(-0.16, Severity.Danger)]
    [InlineData(-0.14, Severity.Warning)]
    [InlineData(0.25, Severity.Warning)]
    public void NotAsTold_FifteenPercentLess_IsADanger(double off, Severity expected)
    {
        double lowest = Workshop.Four().Solve(PartLoad).Injectors.Min(i => i.DifferentialPressure.Bars);

        Finding found = Told(Workshop.Four(), RailPressure.Reference.Manifold, lowest / (1 + off))
            .Solve(PartLoad)
            .Findings.Single(IsPressure);

        Assert.Equal(expected, found.Severity);
    }

    /// <summary>
    /// A rail that takes more than a bar: its first injector lies far above what was told, its last far below. The nearer one is named
    /// where it is the danger, the farther one where it is none.
    /// </summary>
    [Theory]
    [InlineData(-0.2, "rail end", Severity.Danger)]
    [InlineData(-0.1, "rail start", Severity.Warning)]
    public void NotAsTold_FarAboveAndFarBelow_NamesTheDanger(double off, string node, Severity expected)
    {
        FuelSystem system = NarrowRail();
        SystemState usual = system.Solve(PartLoad);
        double first = usual.Injectors[0].DifferentialPressure.Bars;
        double last = usual.Injectors[^1].DifferentialPressure.Bars;
        double told = last / (1 + off);
        Assert.True((first / told) - 1 > 0.21, $"{first} and {last} bar");

        Finding found = Told(system, RailPressure.Reference.Manifold, told).Solve(PartLoad).Findings.Single(IsPressure);

        Assert.Equal((node, expected), (found.Part, found.Severity));
    }

    /// <summary>Where the discharge is at ambient pressure the two references say the same, and neither can be to blame.</summary>
    [Theory]
    [InlineData(100, FindingCode.PressureNotAsTold)]
    [InlineData(60, FindingCode.RailReferenceNotAsTold)]
    public void Reference_AtAmbientPressure_IsNotToBlame(double manifold, FindingCode expected)
    {
        SystemState state = Told(
                Workshop.Four(reference: RegulatorReference.Ambient, setBars: 3.3),
                RailPressure.Reference.Manifold,
                3
            )
            .Solve(VerdictCases.At(Workshop.Hold(1), 2500, manifold));

        Assert.Equal(expected, state.Findings.First(f => IsPressure(f) || IsReference(f)).Code);
        Assert.Equal(manifold == 100, !state.Findings.Any(IsReference));
    }

    /// <summary>
    /// Fixed at 3 bar and told as following the manifold: 18 % more at part load, and 27 % less under boost, which is a danger. Told the
    /// right reference nothing would be left.
    /// </summary>
    [Theory]
    [InlineData(45, Severity.Warning, "more fuel")]
    [InlineData(180, Severity.Danger, "less fuel")]
    public void Reference_FifteenPercentLess_IsADanger(double manifold, Severity expected, string says)
    {
        SystemState state = VerdictCases
            .Fixed(RailPressure.Reference.Manifold)
            .Solve(VerdictCases.At(Workshop.Hold(0.9), 3000, manifold));

        Finding found = state.Findings.Single(IsReference);
        double bars = state.Injectors.MaxBy(i => Math.Abs(i.DifferentialPressure.Bars - 3))!.DifferentialPressure.Bars;
        Assert.Equal(expected, found.Severity);
        Assert.Contains(says, found.Action, StringComparison.Ordinal);
        Close.WithinOf(1, 1e-12, (bars / 3) - 1, ((Ratio)found.ValueQuantity!).DecimalFractions);
        Close.WithinOf(1, 1e-12, 0.03, ((Ratio)found.LimitQuantity!).DecimalFractions);
        Assert.DoesNotContain(state.Findings, IsPressure);
    }

    /// <summary>The wrong reference and the wrong pressure besides: with the right reference 3 bar of 3.5 told remain, 14 % less.</summary>
    [Fact]
    public void Reference_AndPressure_AreTwoFindings()
    {
        SystemState state = VerdictCases
            .Told(
                Workshop.Four(reference: RegulatorReference.Ambient, setBars: 2.93),
                RailPressure.Reference.Manifold,
                3.5
            )
            .Solve(VerdictCases.At(Workshop.Hold(0.9), 3000, 160));

        double least = state.Injectors.Min(i => i.DifferentialPressure.Bars);
        Close.WithinOf(
            1,
            1e-12,
            (least / 3.5) - 1,
            ((Ratio)state.Findings.Single(IsReference).ValueQuantity!).DecimalFractions
        );
        // Fixed at 3.5 bar against 0.6 bar of boost would be 2.9 bar.
        Finding pressure = state.Findings.Single(IsPressure);
        Close.WithinOf(1, 1e-12, (least / 2.9) - 1, ((Ratio)pressure.ValueQuantity!).DecimalFractions);
        Assert.Equal(Severity.Danger, pressure.Severity);
    }

    /// <summary>Under boost of 0.6 bar, as much as the rail that was told or more, there is nothing left that a pressure could be held against.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.6)]
    public void Reference_WithNothingLeftOfWhatWasTold_StandsAlone(double bars)
    {
        SystemState state = VerdictCases
            .Told(Workshop.Four(reference: RegulatorReference.Ambient), RailPressure.Reference.Manifold, bars)
            .Solve(VerdictCases.At(Workshop.Hold(0.9), 3000, 160));

        Assert.Contains(state.Findings, IsReference);
        Assert.DoesNotContain(state.Findings, IsPressure);
    }

    /// <summary>A controller that reckons with no pressure at all is off by all there is, and the words say so.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.6)]
    public void Reference_ToldARailBelowTheBoost_IsOffByAll(double bars)
    {
        SystemState state = VerdictCases
            .Told(Workshop.Four(setBars: 2.93), RailPressure.Reference.Fixed, bars)
            .Solve(VerdictCases.At(Workshop.Hold(0.9), 3000, 160));

        Finding reference = state.Findings.Single(IsReference);
        Assert.Equal(1, ((Ratio)reference.ValueQuantity!).DecimalFractions);
        Assert.EndsWith("where the controller reckons with none", reference.Value, StringComparison.Ordinal);
        // As told, but following the manifold.
        double most = state.Injectors.Max(i => i.DifferentialPressure.Bars);
        Close.Within(
            1e-12,
            (most / bars) - 1,
            ((Ratio)state.Findings.Single(IsPressure).ValueQuantity!).DecimalFractions
        );
    }

    /// <summary>
    /// Without a regulator the other reference is to blame where it explains the pressure, and only then: a pump alone gives what it gives.
    /// </summary>
    [Theory]
    [InlineData(RailPressure.Reference.Manifold, 0, true)]
    [InlineData(RailPressure.Reference.Manifold, 1, false)]
    [InlineData(RailPressure.Reference.Fixed, 0, true)]
    [InlineData(RailPressure.Reference.Fixed, 1, false)]
    public void Reference_WithoutARegulator_IsToBlameWhereItExplains(
        RailPressure.Reference told,
        double more,
        bool isReference
    )
    {
        FuelSystem bare = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(0.12)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );
        OperatingPoint point = VerdictCases.At(Workshop.Hold(0.85), 6000, 60);
        double across = bare.Solve(point).Injectors[0].DifferentialPressure.Bars;
        // 0.4 bar of vacuum: what was entered is the pressure across, or the gauge pressure of the rail, as the other reference has it.
        double entered = told == RailPressure.Reference.Fixed ? across : across - 0.4;

        SystemState state = VerdictCases.Told(bare, told, entered + more).Solve(point);

        Assert.Equal(isReference, state.Findings.Any(IsReference));
        Assert.Equal(!isReference, state.Findings.Any(IsPressure));
    }

    /// <summary>Two regulators of which one has the other reference: nobody can say that the reference is to blame.</summary>
    [Fact]
    public void Reference_OfRegulatorsThatDiffer_IsNotToBlame()
    {
        FuelSystem system = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(1)),
            new("first", "pump outlet", "tank", Workshop.Regulator(RegulatorReference.Manifold, 6)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            new("regulator", "rail end", "return", Workshop.Regulator(RegulatorReference.Ambient, 3)),
            new("return hose", "return", "tank", Workshop.Hose("return", 3, 8))
        );

        SystemState state = Told(system, RailPressure.Reference.Manifold, 3).Solve(PartLoad);

        Assert.DoesNotContain(state.Findings, IsReference);
        Assert.Contains(state.Findings, IsPressure);
    }

    private static bool IsPressure(Finding finding) => finding.Code == FindingCode.PressureNotAsTold;

    private static bool IsReference(Finding finding) => finding.Code == FindingCode.RailReferenceNotAsTold;

    private static FuelSystem Told(FuelSystem system, RailPressure.Reference reference, double bars) =>
        VerdictCases.Told(system, reference, bars);

    private static FuelSystem NarrowRail() =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(1)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 3.1)),
            new("regulator", "rail end", "return", Workshop.Regulator(RegulatorReference.Manifold, 2.6)),
            new("return hose", "return", "tank", Workshop.Hose("return", 3, 8))
        );
}
