using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Every way out of a system, from every place of it: never a verdict that lets it run.</summary>
public sealed class EscapingFuelTests
{
    private static readonly OperatingPoint Load = VerdictCases.At(Workshop.Hold(0.85), 6000, 110);

    /// <summary>What a hole may look like: an opening, an open fitting or hose, a joint, a filter, a valve that sticks open.</summary>
    private static readonly Dictionary<string, Func<FlowPart>> Holes = new()
    {
        ["jet"] = () => Jet(150),
        ["drip"] = () => Jet(0.0003),
        ["open fitting"] = () => PlumbingParts.Elbow(),
        ["open hose"] = () => Workshop.Hose("open", 0.3, 3),
        ["hose with fittings"] = () => PlumbingParts.Fitted(),
        ["filter"] = () => Workshop.Filter(),
        ["joint by readings"] = () => PlumbingParts.LossTable(),
        ["own law"] = () => PlumbingParts.Own(),
        ["relief valve, open"] = () => PlumbingRig.Relief(0.1),
        ["check valve"] = () =>
            new CheckValve(
                Pressure.FromKilopascals(2),
                Pressure.FromKilopascals(10),
                VolumeFlow.FromLitersPerHour(200),
                PlumbingRig.Petrol
            ),
        ["regulator that returns into the open"] = () => Workshop.Regulator(RegulatorReference.Ambient, 2.5),
    };

    public static TheoryData<string, string> Everywhere
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string hole in Holes.Keys)
            {
                foreach (string place in new[] { "pump outlet", "filter outlet", "rail start", "rail end", "return" })
                {
                    // The return runs at a few hundredths of a bar: a valve stays shut, and a joint passes next to nothing.
                    if (place != "return" || hole is "jet" or "drip" or "open hose" or "own law")
                    {
                        all.Add(hole, place);
                    }
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void Assess_FuelThatLeaves_MustNotRun(string hole, string place)
    {
        FuelSystem leaking = Leaking(PlumbingRig.Usual(), place, Holes[hole]());

        SystemAssessment assessed = new(leaking, [Load]);
        SystemState? state = assessed.Points[0].Deciding.State;

        if (state is null)
        {
            // So much leaves that the pump has no data there, or none of it reaches the rail: refused, which does not hold.
            Assert.NotEqual(Verdict.Outcome.Holds, assessed.Verdict.Kind);
            return;
        }

        Assert.Equal(Verdict.Outcome.DoNotRun, assessed.Verdict.Kind);
        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.FuelEscapes);
        Assert.Equal(("outside", Severity.Danger), (found.Part, found.Severity));
        Assert.Equal("Fuel leaves the system at 'outside', through 'hole'", found.What);
        Close.Within(1e-9, state.FlowThrough("hole").LitersPerHour, ((VolumeFlow)found.ValueQuantity!).LitersPerHour);
        Assert.DoesNotContain(" 0.0 L/h", found.Value, StringComparison.Ordinal);
    }

    /// <summary>Fuel that runs to a tank from which a pump draws comes back.</summary>
    [Fact]
    public void Assess_AJetIntoTheTank_IsNoEscape()
    {
        FuelSystem bled = PlumbingRig.With([.. PlumbingRig.Usual(), new("bleed", "rail end", "tank", Jet(20))]);

        Assert.DoesNotContain(bled.Solve(Load).Findings, f => f.Code == FindingCode.FuelEscapes);
    }

    [Fact]
    public void Assess_AReliefValveThatIsShut_IsNoEscape() =>
        Assert.DoesNotContain(
            Leaking(PlumbingRig.Usual(), "pump outlet", PlumbingRig.Relief(8)).Solve(Load).Findings,
            f => f.Code == FindingCode.FuelEscapes
        );

    /// <summary>Its pump stands still and draws nothing now; when it starts it does.</summary>
    [Fact]
    public void Assess_ATankWhosePumpStandsStill_IsNoEscape()
    {
        FuelSystem two = WithTank(
            "second tank",
            [
                .. PlumbingRig.Usual(),
                new Line("second pump", "second inlet", "pump outlet", Workshop.Pump(1)).SwitchedBy(
                    PumpSwitch.ManifoldAbove(PlumbingRig.Bar(0.5), PlumbingRig.Bar(0.4), false)
                ),
                new("second suction", "second tank", "second inlet", Workshop.Hose("suction", 0.5, 10)),
                new("bleed", "rail end", "second tank", Jet(20)),
            ]
        );

        Assert.DoesNotContain(two.Solve(Load).Findings, f => f.Code == FindingCode.FuelEscapes);
        Assert.Contains(
            Leaking([.. two.Network.Lines], "second inlet", Jet(20), "second tank").Solve(Load).Findings,
            f => f.Code == FindingCode.FuelEscapes
        );
    }

    /// <summary>A leak is said in liters an hour from one on, and in a smaller unit below, so that it never reads as nothing.</summary>
    [Theory]
    [InlineData(0.9, "cm³/min")]
    [InlineData(1.2, "L/h")]
    [InlineData(40, "L/h")]
    public void Escape_IsSaidInAUnitOfItsSize(double litersPerHour, string unit)
    {
        SystemState state = Leaking(PlumbingRig.Usual(), "rail end", Jet(litersPerHour)).Solve(Load);

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.FuelEscapes);
        Assert.InRange(((VolumeFlow)found.ValueQuantity!).LitersPerHour / litersPerHour, 0.9, 1.1);
        Assert.EndsWith(unit, found.Value);
        Assert.Equal(VolumeFlow.Zero, found.LimitQuantity);
    }

    /// <summary>
    /// Only a pump that would draw from a place, once it runs, makes it a tank. A shut valve that leads away does not, nor does a
    /// pump that stands still and would deliver there, though another one draws from where that one does.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Escape_WithSomethingStillBeside_IsFound(bool isPump)
    {
        Line[] beside = isPump
            ? [Still("second pump", "second tank", "outside"), Still("third pump", "second tank", "pump outlet")]
            : [new("valve", "outside", "tank", PlumbingRig.Relief(3))];
        SystemState state = Leaking([.. PlumbingRig.Usual(), .. beside], "rail end", Jet(20), "second tank")
            .Solve(Load);

        Assert.All(beside, l => Assert.Equal(0, state.FlowThrough(l.Name).LitersPerHour, 1e-9));
        Assert.Equal("outside", Assert.Single(state.Findings, f => f.Code == FindingCode.FuelEscapes).Part);
    }

    private static Line Still(string name, string from, string to) =>
        new Line(name, from, to, Workshop.Pump(1)).SwitchedBy(
            PumpSwitch.ManifoldAbove(PlumbingRig.Bar(0.5), PlumbingRig.Bar(0.4), false)
        );

    /// <summary>
    /// What a pump could still give beside a leak, from its own curve: where it meets the pressure of the rail, 0.6 bar of the
    /// open regulator at 150 L/h, which grow with the square of the flow, and the filter; less what it delivers now.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    public void PumpReserve_WithALeak_IsWhatTheCurveHoldsBeyondAllThatIsDelivered(double leak)
    {
        FuelSystem system = VerdictCases.DeadHead(0.5);
        if (leak > 0)
        {
            system = Leaking([.. system.Network.Lines], "rail end", Jet(leak));
        }

        SystemState state = system.Solve(Load);
        PumpCurve curve = ((Pump)system.Network.Lines[0].Part).CurveAt(state.Pumps[0].Voltage);
        (double least, double most) = (0, 200);
        while (most - least > 1e-6)
        {
            double flow = (least + most) / 2;
            double bars =
                state.PressureAt("rail start").AboveAmbient.Bars
                + (0.6 * Math.Pow(flow / 150, 2))
                + (0.09 * flow / 160);
            bool given = curve.FlowAt(Pressure.FromBars(bars)).LitersPerHour > flow;
            (least, most) = given ? (flow, most) : (least, flow);
        }

        // The reserve keeps the pressure just ahead of the regulator instead of in the rail, and less flow from the injectors.
        Assert.InRange(
            (state.Pumps[0].Flow.LitersPerHour + state.PumpReserve!.Value.LitersPerHour) / least,
            0.97,
            1.01
        );
    }

    /// <summary>
    /// A bleed to the tank takes its flow at the pressure that must hold: 15 % are held against it, too. 60 L/h of injectors
    /// and 100 L/h of bleed; what the regulator sends back is above 15 % of the first and below 15 % of both.
    /// </summary>
    [Fact]
    public void PumpReserve_WithABleed_IsHeldAgainstAllThatIsDelivered()
    {
        FuelSystem Bled(double bleed) =>
            PlumbingRig.With([.. PlumbingRig.Usual(), new("bleed", "rail end", "tank", Jet(bleed))]);
        double drawn = Bled(10).Solve(Load).Injectors.Sum(i => i.MeanFlow.LitersPerHour);
        double delivered = Bled(10).Solve(Load).Pumps[0].Flow.LitersPerHour;
        SystemState enough = Bled((delivered / 1.3) - drawn).Solve(Load);
        SystemState little = Bled((delivered / 1.08) - drawn).Solve(Load);

        Assert.True(little.PumpReserve!.Value.LitersPerHour > 0.15 * drawn);
        Finding low = Assert.Single(little.Findings, f => f.Code == FindingCode.PumpReserveLow);
        double held = 0.15 * (delivered / 1.08);
        Assert.Equal(little.PumpReserve!.Value, low.ValueQuantity);
        Close.Within(0.05, held, ((VolumeFlow)low.LimitQuantity!).LitersPerHour);
        Assert.DoesNotContain(enough.Findings, f => f.Code == FindingCode.PumpReserveLow);
    }

    /// <summary>So many liters an hour at the pressure of the rail, 3.1 bar.</summary>
    private static Jet Jet(double litersPerHour) =>
        new(
            "hole",
            VolumeFlow.FromLitersPerHour(litersPerHour),
            Pressure.FromBars(3.1),
            PlumbingRig.Petrol,
            Workshop.Invented
        );

    private static FuelSystem Leaking(Line[] lines, string place, FlowPart hole, string also = "tank") =>
        WithTank("outside", [.. lines, new("hole", place, "outside", hole)], also);

    private static FuelSystem WithTank(string name, Line[] lines, string also = "tank")
    {
        FuelSystem system = PlumbingRig.With(lines);
        return system.WithNetwork(
            new(
                system.Network.Nodes.Select(n =>
                    n.Name == name || n.Name == also
                        ? Network.Node.FixedPressure(
                            n.Name,
                            default,
                            n.Name == "second tank" ? Length.FromMeters(0.5) : Length.Zero
                        )
                        : n
                ),
                lines
            )
        );
    }
}
