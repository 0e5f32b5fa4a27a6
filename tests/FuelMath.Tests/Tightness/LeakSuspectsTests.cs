using FuelMath.Tests.Systems;
using FuelMath.Tightness;

namespace FuelMath.Tests.Tightness;

/// <summary>What a gauge cannot tell apart, and what an isolating step does.</summary>
public sealed class LeakSuspectsTests
{
    private static readonly LeakSuspects All = LeakSuspects.Of(Workshop.Four());

    // One pump, one regulator with seat and diaphragm, four injectors, and everything outside.
    [Fact]
    public void Of_ASystem_NamesEveryPlace()
    {
        Assert.Equal(8, All.All.Length);
        Assert.Equal(4, All.All.Count(s => s.Kind == LeakSuspectKind.InjectorSeat));
        Assert.Equal("CheckValve: pump", All.All.Single(s => s.Kind == LeakSuspectKind.CheckValve).ToString());
        Assert.Contains(
            "never while it runs",
            All.All.Single(s => s.Kind == LeakSuspectKind.RegulatorSeat).IsolatingStep
        );
        Assert.Equal(
            "primary injector 3 of chamber 3",
            All.All.Where(s => s.Kind == LeakSuspectKind.InjectorSeat).ElementAt(2).Part
        );
        Assert.False(All.IsOneKind);
    }

    /// <summary>A reducing regulator cannot bleed into a return that is not there; a relief valve can.</summary>
    [Fact]
    public void Of_ASystemWithoutReturn_NamesItsReliefValve()
    {
        LeakSuspects all = LeakSuspects.Of(PlumbingRig.WithoutReturn());

        Assert.Equal("relief", all.All.Single(s => s.Kind == LeakSuspectKind.ReliefSeat).Part);
        Assert.Equal("regulator", all.All.Single(s => s.Kind == LeakSuspectKind.RegulatorDiaphragm).Part);
        Assert.DoesNotContain(all.All, s => s.Kind == LeakSuspectKind.RegulatorSeat);
    }

    [Fact]
    public void After_StandsStill_LeavesThatKindAlone()
    {
        LeakSuspects left = All.After(LeakSuspectKind.CheckValve, IsolationOutcome.StandsStill);

        Assert.True(left.IsOneKind);
        Assert.Equal(LeakSuspectKind.CheckValve, Assert.Single(left.All).Kind);
    }

    [Fact]
    public void After_FallsAsBefore_ClearsThatKind()
    {
        LeakSuspects left = All.After(LeakSuspectKind.CheckValve, IsolationOutcome.FallsAsBefore)
            .After(LeakSuspectKind.RegulatorSeat, IsolationOutcome.FallsAsBefore)
            .After(LeakSuspectKind.RegulatorDiaphragm, IsolationOutcome.FallsAsBefore)
            .After(LeakSuspectKind.InjectorSeat, IsolationOutcome.FallsAsBefore);

        Assert.Equal(LeakSuspectKind.Outside, Assert.Single(left.All).Kind);
    }

    [Fact]
    public void After_FallsMoreSlowly_LeavesAll() =>
        Assert.Equal(8, All.After(LeakSuspectKind.CheckValve, IsolationOutcome.FallsMoreSlowly).All.Length);

    [Fact]
    public void After_AClearedKind_IsRefused() =>
        Words.Refused<ArgumentException>(
            "isolated",
            "Must be one of: RegulatorSeat, RegulatorDiaphragm, InjectorSeat, Outside; it was CheckValve.",
            () =>
                All.After(LeakSuspectKind.CheckValve, IsolationOutcome.FallsAsBefore)
                    .After(LeakSuspectKind.CheckValve, IsolationOutcome.StandsStill)
        );

    [Fact]
    public void After_AContradiction_IsRefused() =>
        Words.Refused<ArgumentException>(
            "outcome",
            "Nothing but CheckValve was left, and it was shut off: a gauge that still falls contradicts an earlier step.",
            () =>
                All.After(LeakSuspectKind.CheckValve, IsolationOutcome.StandsStill)
                    .After(LeakSuspectKind.CheckValve, IsolationOutcome.FallsAsBefore)
        );
}
