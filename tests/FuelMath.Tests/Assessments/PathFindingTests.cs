using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>What is said of pumps and regulators in a state, and what is left unsaid because something else says it.</summary>
public sealed class PathFindingTests
{
    private static readonly OperatingPoint Load = VerdictCases.At(Workshop.Hold(0.85), 6000, 110);

    /// <summary>
    /// Asked for ten times what is drawn no pump has enough left: said wherever its regulator holds, or is fully open, and not where it is
    /// starved or shut, which is a danger of its own.
    /// </summary>
    [Theory]
    [InlineData("return", 1, null, true)]
    [InlineData("return", 0.2, FindingCode.RegulatorShut, false)]
    [InlineData("narrow return", 0.8, FindingCode.RegulatorFullyOpen, true)]
    [InlineData("no return", 0.4, null, true)]
    [InlineData("no return", 0.15, FindingCode.RegulatorStarved, false)]
    public void PumpReserve_BehindARegulator_IsSaidUnlessItIsStarved(
        string kind,
        double pump,
        FindingCode? says,
        bool isLow
    )
    {
        FuelSystem system = kind switch
        {
            "return" => Workshop.Four(deliveryShare: pump),
            "narrow return" => Workshop.Four(deliveryShare: pump, returnBoreMillimeters: 2.5),
            _ => VerdictCases.DeadHead(pump),
        };

        SystemState state = Greedy(system).Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 160));

        FindingCode[] regulators =
        [
            FindingCode.RegulatorShut,
            FindingCode.RegulatorFullyOpen,
            FindingCode.RegulatorStarved,
        ];
        Assert.Equal(
            says is { } code ? [code] : [],
            state.Findings.Select(f => f.Code).Where(c => regulators.Contains(c))
        );
        Assert.Equal(isLow, state.Findings.Any(f => f.Code == FindingCode.PumpReserveLow));
    }

    /// <summary>One of two regulators that is starved is enough: the pumps have nothing left for it.</summary>
    [Fact]
    public void PumpReserve_WithOneOfTwoStarved_IsNotSaid()
    {
        FuelSystem system = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(0.5)),
            new("first", "pump outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("narrow", "pump outlet", "second inlet", Workshop.Hose("narrow", 1, 1.15)),
            new("second", "second inlet", "rail end", PlumbingRig.Reducing(RegulatorReference.Manifold))
        );

        SystemState state = Greedy(system).Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 110));

        Assert.Equal(["second"], state.Findings.Where(f => f.Code == FindingCode.RegulatorStarved).Select(f => f.Part));
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.PumpReserveLow);
    }

    /// <summary>
    /// Why the reserve is not known: pumps beside each other that feed a third, or nothing that says which pressure must hold. Held against
    /// 15 % of what is drawn; where nothing is drawn there is no question.
    /// </summary>
    [Theory]
    [InlineData(true, false, true)]
    [InlineData(false, false, true)]
    [InlineData(false, true, false)]
    public void PumpReserve_NotKnown_SaysWhy(bool isMixed, bool isCut, bool isFound)
    {
        Line[] mixed =
        [
            new("lift 1", "tank", "pump outlet", Workshop.Pump(0.12)),
            new("lift 2", "tank", "pump outlet", Workshop.Pump(0.12)),
            new("main", "pump outlet", "filter outlet", Workshop.Pump(0.2)),
            new("regulator", "filter outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
        ];
        Line[] bare =
        [
            new("pump", "tank", "rail start", Workshop.Pump(0.3)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
        ];
        FuelSystem system = isMixed
            ? PlumbingRig.With(mixed)
            : VerdictCases.Told(PlumbingRig.With(bare), RailPressure.Reference.Measured);

        SystemState state = system.Solve(isCut ? VerdictCases.At(FuelCommand.Cut, 6000, 110) : Load);

        Finding? found = state.Findings.SingleOrDefault(f => f.Code == FindingCode.PumpReserveNotKnown);
        Assert.Null(state.PumpReserve);
        Assert.Equal(isFound, found is not null);
        if (found is not null)
        {
            double drawn = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
            Assert.Equal(("pumps", Severity.Note, true), (found.Part, found.Severity, found.IsNotKnown));
            Assert.Equal(isMixed, found.What.Contains("in series", StringComparison.Ordinal));
            Assert.Equal(!isMixed, found.What.Contains("without a regulator", StringComparison.Ordinal));
            Close.Within(1e-6, drawn, ((VolumeFlow)found.ValueQuantity!).LitersPerHour);
            Close.Within(1e-6, 0.15 * drawn, ((VolumeFlow)found.LimitQuantity!).LitersPerHour);
        }
    }

    /// <summary>A path by gravity has no pump whose reserve could be asked for.</summary>
    [Fact]
    public void PumpReserve_WithoutAPump_IsNoQuestion()
    {
        FuelSystem system = VerdictCases.Told(
            PlumbingRig.With(
                new("fall", "tank", "rail start", Workshop.Hose("fall", 1, 10)),
                new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
            ),
            RailPressure.Reference.Measured
        );
        system = system.WithNetwork(
            new(
                system.Network.Nodes.Select(n =>
                    n.Name == "tank" ? Network.Node.FixedPressure("tank", PlumbingRig.Bar(3), Length.Zero) : n
                ),
                system.Network.Lines
            )
        );

        Assert.DoesNotContain(
            system.Solve(VerdictCases.At(Workshop.Hold(1))).Findings,
            f => f.Code is FindingCode.PumpReserveNotKnown or FindingCode.PumpReserveLow
        );
    }

    /// <summary>A regulator of which nothing is known, because every way to it is shut, is not called shut.</summary>
    [Theory]
    [InlineData(double.NaN, Network.LineCondition.Shut, null)]
    [InlineData(1e5, Network.LineCondition.Shut, FindingCode.RegulatorShut)]
    [InlineData(3e5, Network.LineCondition.Regulating, null)]
    [InlineData(3e5, Network.LineCondition.FullyOpen, FindingCode.RegulatorFullyOpen)]
    public void BypassRegulator_InEachCondition(double inlet, Network.LineCondition condition, FindingCode? expected)
    {
        Finding[] found = [.. RegulatorFindings.OfBypass(State(inlet, condition), null)];

        Assert.Equal(expected is { } code ? [code] : [], found.Select(f => f.Code));
        Assert.All(
            found,
            f =>
                Assert.Equal(
                    ("line", expected == FindingCode.RegulatorShut ? Severity.Danger : Severity.Warning),
                    (f.Part, f.Severity)
                )
        );
    }

    /// <summary>What is an estimate is said first, in any condition, with what it rests on.</summary>
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(3e5)]
    public void Regulator_OfEstimates_SaysSo(double inlet)
    {
        foreach (
            Finding found in new[]
            {
                RegulatorFindings.OfBypass(State(inlet, Network.LineCondition.Regulating), "a guess").Single(),
                RegulatorFindings.OfReducing(State(inlet, Network.LineCondition.Regulating), "a guess").Single(),
            }
        )
        {
            Assert.Equal(
                (FindingCode.RegulatorEstimated, Severity.Note, "line", "a guess"),
                (found.Code, found.Severity, found.Part, found.Value)
            );
        }
    }

    /// <summary>A reducing regulator that is fully open is starved; one that is seated or regulates is satisfied.</summary>
    [Theory]
    [InlineData(Network.LineCondition.FullyOpen, true)]
    [InlineData(Network.LineCondition.Shut, false)]
    [InlineData(Network.LineCondition.Regulating, false)]
    public void ReducingRegulator_InEachCondition(Network.LineCondition condition, bool isStarved) =>
        Assert.Equal(
            isStarved ? [(FindingCode.RegulatorStarved, Severity.Danger, "line")] : [],
            RegulatorFindings.OfReducing(State(3e5, condition), null).Select(f => (f.Code, f.Severity, f.Part))
        );

    /// <summary>The gravest first, whoever finds it: of a leaking, starved system the notes come last.</summary>
    [Fact]
    public void Findings_OfAState_TheGravestFirst()
    {
        SystemState state = VerdictCases
            .Told(Greedy(Workshop.Four(deliveryShare: 0.2, pumpOhms: 0.3)), RailPressure.Reference.Fixed, 4)
            .Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 160));
        Severity[] severities = [.. state.Findings.Select(f => f.Severity)];

        Assert.Equal(3, severities.Distinct().Count());
        Assert.Equal(severities.OrderDescending(), severities);
    }

    /// <summary>An owner's limit is told with what stood before it, whether or not it is exceeded.</summary>
    [Fact]
    public void OwnLimit_IsTold()
    {
        Finding own = Greedy(Workshop.Four()).Solve(Load).Findings.Single(f => f.Code == FindingCode.LimitOfOwner);

        Assert.Equal((Severity.Note, "limits"), (own.Severity, own.Part));
        Close.Within(1e-12, 10, ((Ratio)own.ValueQuantity!).DecimalFractions);
        Close.Within(1e-12, 0.15, ((Ratio)own.LimitQuantity!).DecimalFractions);
        Assert.EndsWith("a test", own.What, StringComparison.Ordinal);
    }

    private static FuelSystem Greedy(FuelSystem system) =>
        system.WithLimits(
            Limits.CommonPractice.With(new(Limits.Kind.PumpReserve, Ratio.FromDecimalFractions(10), "a test"))
        );

    private static PartState State(double inlet, Network.LineCondition condition) =>
        new()
        {
            Line = "line",
            Condition = condition,
            Flow = 1e-5,
            Inlet = inlet,
            Outlet = 0,
            NothingDrawn = false,
            Density = 745,
            Viscosity = 5e-4,
            PumpVolts = 13,
            IsSuction = false,
            GreatestVelocity = 4,
            VelocitySource = Workshop.Invented,
        };
}
