using FuelMath.ShopTests;
using FuelMath.Tests.Systems;

namespace FuelMath.Tests.Tightness;

/// <summary>What a gauge cannot tell apart, and what an isolating step does.</summary>
public sealed class LeakSuspectsTests
{
    private static readonly LeakSuspects All = LeakSuspects.Of(Workshop.Four());

    // One pump, one regulator with seat and diaphragm, four injectors; outside, all that is under pressure: pump, filter,
    // feed, rail and regulator, and not the return hose.
    [Fact]
    public void Of_ASystem_NamesEveryPlace()
    {
        Assert.Equal(12, All.All.Length);
        Assert.Equal(4, All.All.Count(s => s.Kind == LeakSuspects.SuspectKind.InjectorSeat));
        Assert.Equal(
            ["pump", "filter", "feed", "rail", "regulator"],
            All.All.Where(s => s.Kind == LeakSuspects.SuspectKind.Outside).Select(s => s.Part)
        );
        Assert.Equal("CheckValve: pump", All.All.Single(s => s.Kind == LeakSuspects.SuspectKind.CheckValve).ToString());
        Assert.Contains(
            "never while it runs",
            All.All.Single(s => s.Kind == LeakSuspects.SuspectKind.RegulatorSeat).IsolatingStep
        );
        Assert.Equal(
            "primary injector 3 of chamber 3",
            All.All.Where(s => s.Kind == LeakSuspects.SuspectKind.InjectorSeat).ElementAt(2).Part
        );
        Assert.False(All.IsOneKind);
    }

    /// <summary>A check valve in a line is called one; what its clamp shuts off is the same.</summary>
    [Fact]
    public void Of_ASystemWithACheckValve_CallsItThat()
    {
        LeakSuspects all = LeakSuspects.Of(
            PlumbingRig.With([
                .. PlumbingRig
                    .Usual()
                    .Select(l => l.Name == "feed" ? new Line("feed", "past", "rail start", l.Part) : l),
                new("valve", "filter outlet", "past", PlainParts.CheckValve),
            ])
        );

        Assert.Equal(
            ["right after pump 'pump'", "right after check valve 'valve'"],
            all.All.Where(s => s.Kind == LeakSuspects.SuspectKind.CheckValve)
                .Select(s => s.IsolatingStep.Split(" clamp ")[1].Split(" once ")[0])
        );
    }

    /// <summary>Only a regulator with a hose has one to pull.</summary>
    [Theory]
    [InlineData(RegulatorReference.Manifold, true)]
    [InlineData(RegulatorReference.Ambient, false)]
    [InlineData(RegulatorReference.Tank, false)]
    public void Diaphragm_ByReference_PullsAHoseThatIsThere(RegulatorReference reference, bool hose) =>
        Assert.Equal(
            hose,
            LeakSuspects
                .Of(Workshop.Four(reference: reference))
                .All.Single(s => s.Kind == LeakSuspects.SuspectKind.RegulatorDiaphragm)
                .IsolatingStep.StartsWith("Pull the reference hose", StringComparison.Ordinal)
        );

    /// <summary>A reducing regulator cannot bleed into a return that is not there; a relief valve can.</summary>
    [Fact]
    public void Of_ASystemWithoutReturn_NamesItsReliefValve()
    {
        LeakSuspects all = LeakSuspects.Of(PlumbingRig.WithoutReturn());

        Assert.Equal("relief", all.All.Single(s => s.Kind == LeakSuspects.SuspectKind.ReliefSeat).Part);
        Assert.Equal("regulator", all.All.Single(s => s.Kind == LeakSuspects.SuspectKind.RegulatorDiaphragm).Part);
        Assert.DoesNotContain(all.All, s => s.Kind == LeakSuspects.SuspectKind.RegulatorSeat);
    }

    /// <summary>A clamp after the pump shuts off the joints and the hose before it, too: they stay suspects.</summary>
    [Fact]
    public void After_AClampThatStandsStill_LeavesAllBeforeIt()
    {
        LeakSuspects left = All.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.StandsStill);

        Assert.False(left.IsOneKind);
        Assert.Equal(
            ["CheckValve: pump", "Outside: filter", "Outside: pump"],
            left.All.Select(s => s.ToString()).Order()
        );
    }

    /// <summary>A relief valve at the pump's outlet may lie before the clamp.</summary>
    [Fact]
    public void After_AClampThatStandsStill_LeavesTheReliefValveThere()
    {
        LeakSuspects all = LeakSuspects.Of(PlumbingRig.WithoutReturn());
        string outlet = PlumbingRig.WithoutReturn().Network.Lines.First(l => l.Part is Pump).To;
        bool near = PlumbingRig.WithoutReturn().Network.Lines.First(l => l.Part is ReliefValve).From == outlet;

        LeakSuspects left = all.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.StandsStill);

        Assert.Equal(near, left.All.Any(s => s.Kind == LeakSuspects.SuspectKind.ReliefSeat));
    }

    /// <summary>Falling as before, it clears the check valve and the pump's own joint, not the part that the clamp sits on.</summary>
    [Fact]
    public void After_FallsAsBefore_ClearsWhatIsShutOff()
    {
        LeakSuspects left = All.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.FallsAsBefore);

        Assert.Equal(10, left.All.Length);
        Assert.Contains(left.All, s => s.ToString() == "Outside: filter");
        Assert.DoesNotContain(left.All, s => s.Part == "pump");
    }

    /// <summary>Each other step shuts off one kind.</summary>
    [Fact]
    public void After_ASeatThatStandsStill_LeavesThatKindAlone() =>
        Assert.Equal(
            LeakSuspects.SuspectKind.RegulatorSeat,
            Assert.Single(All.After(LeakSuspects.SuspectKind.RegulatorSeat, LeakSuspects.Outcome.StandsStill).All).Kind
        );

    [Fact]
    public void After_AllOthersCleared_LeavesOutside()
    {
        LeakSuspects left = All.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.FallsAsBefore)
            .After(LeakSuspects.SuspectKind.RegulatorSeat, LeakSuspects.Outcome.FallsAsBefore)
            .After(LeakSuspects.SuspectKind.RegulatorDiaphragm, LeakSuspects.Outcome.FallsAsBefore)
            .After(LeakSuspects.SuspectKind.InjectorSeat, LeakSuspects.Outcome.FallsAsBefore);

        Assert.True(left.IsOneKind);
        Assert.All(left.All, s => Assert.Equal(LeakSuspects.SuspectKind.Outside, s.Kind));
    }

    [Fact]
    public void After_FallsMoreSlowly_LeavesAll() =>
        Assert.Equal(
            12,
            All.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.FallsMoreSlowly).All.Length
        );

    [Fact]
    public void After_AClearedKind_IsRefused() =>
        Words.Refused<ArgumentException>(
            "isolated",
            () =>
                All.After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.FallsAsBefore)
                    .After(LeakSuspects.SuspectKind.CheckValve, LeakSuspects.Outcome.StandsStill)
        );

    /// <summary>With one kind left, its step must stop the fall: slower or as before contradicts, standing still does not.</summary>
    [Theory]
    [InlineData(LeakSuspects.Outcome.StandsStill, false)]
    [InlineData(LeakSuspects.Outcome.FallsMoreSlowly, true)]
    [InlineData(LeakSuspects.Outcome.FallsAsBefore, true)]
    public void After_TheOnlyKindLeft_StandsStillOrContradicts(LeakSuspects.Outcome outcome, bool refused)
    {
        LeakSuspects left = All.After(LeakSuspects.SuspectKind.RegulatorSeat, LeakSuspects.Outcome.StandsStill);
        Assert.True(left.IsOneKind);
        LeakSuspects Next() => left.After(LeakSuspects.SuspectKind.RegulatorSeat, outcome);

        if (refused)
        {
            var error = Words.Refused<RefusedArgumentException>(nameof(outcome), () => Next());
            Assert.Equal(RefusalCode.Contradiction, error.Refusal.Code);
        }
        else
        {
            Assert.Equal(left.All.AsEnumerable(), Next().All);
        }
    }

    /// <summary>
    /// Behind a surge tank that a second pump fills, the rail's pressure is lost only between its own pump and its regulator: what
    /// lies before, and what returns, is open to the surge tank.
    /// </summary>
    [Fact]
    public void Of_ASystemWithASurgeTank_LeavesTheOpenCircuitOut()
    {
        LeakSuspects all = LeakSuspects.Of(SurgeTankSystemTests.With(1));

        Assert.Equal(
            ["pump", "filter", "feed", "rail", "regulator"],
            all.All.Where(s => s.Kind == LeakSuspects.SuspectKind.Outside).Select(s => s.Part)
        );
        Assert.Equal(["pump"], all.All.Where(s => s.Kind == LeakSuspects.SuspectKind.CheckValve).Select(s => s.Part));
        Assert.Equal(12, all.All.Length);
    }

    /// <summary>Between two pumps in line the pressure is shut in too, and what leaks there is seen from outside.</summary>
    [Fact]
    public void Of_ASystemWithTwoPumpsInLine_NamesWhatLiesBetween()
    {
        LeakSuspects all = LeakSuspects.Of(
            PlumbingRig.With([
                new("lift pump", "tank", "lifted", Workshop.Pump(1)),
                new("between", "lifted", "before", Workshop.Hose("between", 1, 8)),
                .. PlumbingRig
                    .Usual()
                    .Select(l => l.Name == "pump" ? new Line("pump", "before", "pump outlet", l.Part) : l),
            ])
        );

        Assert.Equal(
            ["lift pump", "between", "pump", "filter", "feed", "rail", "regulator"],
            all.All.Where(s => s.Kind == LeakSuspects.SuspectKind.Outside).Select(s => s.Part)
        );
    }

    [Fact]
    public void After_AContradiction_IsRefused() =>
        Words.Refused<ArgumentException>(
            "outcome",
            () =>
                All.After(LeakSuspects.SuspectKind.RegulatorSeat, LeakSuspects.Outcome.StandsStill)
                    .After(LeakSuspects.SuspectKind.RegulatorSeat, LeakSuspects.Outcome.FallsAsBefore)
        );
}
