using FuelMath.Samples.Assessment;
using FuelMath.Statistics;
using FuelMath.Tests.Assessments;
using FuelMath.Workbooks;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What a whole result says of a system, seen as a practitioner would read it: a danger that is silent, or a false one.</summary>
public sealed class WholeResultTests
{
    private static readonly OperatingPoint Cut = Workshop.Point(4000, 40, FuelCommand.Cut);

    private static readonly OperatingPoint Held = Workshop.Point(4000, 90, Workshop.Hold(0.9));

    /// <summary>
    /// A pump that stops when nothing is drawn: rail, regulator and return keep what they had, which no steady state tells.
    /// </summary>
    [Fact]
    public void Solve_EveryPumpStopped_LeavesARailWithoutPressureAndWithoutAFinding()
    {
        Line[] lines = PlumbingRig.Usual();
        lines[0] = lines[0]
            .SwitchedBy(
                PumpSwitch.TotalDrawAbove(
                    VolumeFlow.FromLitersPerHour(0.2),
                    VolumeFlow.FromLitersPerHour(0.1),
                    wasRunning: false
                )
            );
        FuelSystem system = PlumbingRig.With(lines);
        SystemState state = system.Solve(Cut);

        Assert.Empty(state.Pumps);
        SystemState.RegulatorResult regulator = Assert.Single(state.Regulators);
        Assert.Equal((RegulatorCondition.Seated, null), (regulator.State, regulator.Inlet));
        Assert.Equal(0, regulator.Flow.LitersPerHour);
        Assert.Contains("unknown", regulator.ToString());
        Assert.DoesNotContain(state.Findings, f => f.Severity > Severity.Note);
        Assert.Equal(Verdict.Outcome.Holds, new SystemAssessment(system, [Cut]).Verdict.Kind);

        // What is made of it says what it can, and refuses nothing.
        UncertainInput pump = UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented);
        SystemAssessment whole = new(system.WithUncertainInputs([pump]), [Cut, Held]);
        Assert.NotEmpty(new AssessmentTables(whole).All);
        Assert.NotEmpty(new TuningSheet(whole).ToLines(TuningSheet.PageWidth));
        Assert.NotEmpty(Workbook.FromAssessment(whole).SheetNames);
        Assert.Contains("shut off", PathPicture.Of(system, state));
    }

    private static FuelSystem WithoutReturn() =>
        PlumbingRig.With(
            new("pump", "tank", "pump outlet", Closed()),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );

    private static Pump Closed() =>
        new(
            "pump",
            [
                .. new[] { 8.0, 15 }.Select(volts => new PumpCurve(
                    ElectricPotential.FromVolts(volts),
                    [
                        new(Pressure.Zero, VolumeFlow.FromLitersPerHour(120), ElectricCurrent.FromAmperes(4)),
                        new(Pressure.FromBars(4), VolumeFlow.Zero, ElectricCurrent.FromAmperes(8)),
                    ],
                    Workshop.Invented
                )),
            ],
            Workshop.Gasoline,
            Workshop.Invented
        );

    /// <summary>Without a return a pump has nowhere to deliver to at fuel cut: worth acting on, and no engine out of fuel.</summary>
    [Fact]
    public void Findings_DeadHeadedWhileNothingIsDrawn_IsAWarning()
    {
        Finding found = Assert.Single(WithoutReturn().Solve(Cut).Findings, f => f.Code == FindingCode.PumpStalled);

        Assert.Equal((Severity.Warning, "pump"), (found.Severity, found.Part));
    }

    /// <summary>Where the rail is measured and no regulator is there, nothing says which pressure must hold.</summary>
    [Fact]
    public void Findings_MeasuredRailWithoutARegulator_SaysThatTheReserveIsNotKnown()
    {
        SystemState state = VerdictCases.Told(WithoutReturn(), RailPressure.Reference.Measured).Solve(Held);

        Assert.Null(state.PumpReserve);
        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PumpReserveNotKnown);
        Assert.Equal((Severity.Note, true), (found.Severity, found.IsNotKnown));
        Assert.Contains(found, state.Verdict.NotJudged);
    }

    /// <summary>
    /// A sensor holds the mixture of injectors of 500 cm³/min that the controller takes for others: it needs believed over
    /// fitted flow, and a little for what is lost on the way. Beyond 125 % the mixture would stay lean.
    /// </summary>
    [Theory]
    [InlineData(300, Severity.Warning)]
    [InlineData(400, null)]
    [InlineData(600, null)]
    [InlineData(650, Severity.Danger)]
    [InlineData(750, Severity.Danger)]
    public void Findings_HeldMixture_NeedsACorrectionThatAControllerGives(double believed, Severity? severity)
    {
        SystemState state = Workshop.Four(believed: Workshop.Injector("believed", believed)).Solve(Held);

        Finding? found = state.Findings.SingleOrDefault(f => f.Code == FindingCode.CorrectionAtLimit);
        Assert.Equal(severity, found?.Severity);
        Close.WithinOf(1, 0.02, believed / 500, state.Banks[0].Correction!.Value.DecimalFractions);
        if (found is not null)
        {
            Close.Within(
                1e-12,
                state.Banks[0].Correction!.Value.DecimalFractions,
                ((Ratio)found.ValueQuantity!).DecimalFractions
            );
            Close.Within(1e-12, believed > 500 ? 1.25 : 0.75, ((Ratio)found.LimitQuantity!).DecimalFractions);
        }
    }

    /// <summary>Believed over fitted flow is the correction: 560/500 is 112 %, 460/500 is 92 %.</summary>
    [Theory]
    [InlineData(560, Limits.Kind.HighestCorrection, 115, null)]
    [InlineData(560, Limits.Kind.HighestCorrection, 110, Severity.Danger)]
    [InlineData(460, Limits.Kind.LowestCorrection, 90, null)]
    [InlineData(460, Limits.Kind.LowestCorrection, 95, Severity.Warning)]
    public void Findings_HeldMixture_IsHeldAgainstTheOwnersController(
        double believed,
        Limits.Kind kind,
        double percent,
        Severity? severity
    )
    {
        FuelSystem system = Workshop
            .Four(believed: Workshop.Injector("believed", believed))
            .WithLimits(
                Limits.CommonPractice.With(
                    new Limits.OwnLimit(kind, Ratio.FromPercent(percent), "the controller's setting")
                )
            );

        Finding? found = system.Solve(Held).Findings.SingleOrDefault(f => f.Code == FindingCode.CorrectionAtLimit);

        Assert.Equal(severity, found?.Severity);
        Assert.Equal(found is null ? null : new DataSource("Owner", "the controller's setting"), found?.LimitSource);
        Close.Within(1e-12, percent, ((Ratio?)found?.LimitQuantity)?.Percent ?? percent);
    }

    /// <summary>
    /// Injectors that are too large for an idle get their shortest repeatable pulse, and the engine too much fuel: told also
    /// where the mixture is still within its limit. Half of the least width that is asked for gives twice the fuel.
    /// </summary>
    [Theory]
    [InlineData(0.3, false)]
    [InlineData(1.02, true)]
    [InlineData(1.5, true)]
    public void Findings_PulseAtTheShortest_IsTold(double timesNeeded, bool told)
    {
        OperatingPoint idle = Workshop.Point(900, 30, Workshop.Hold(1));
        double needed = Workshop.Four().Solve(idle).Injectors[0].Pulse.EffectiveWidth.Milliseconds;
        Injector injector = Workshop.Injector("rated", 500, smallestMilliseconds: timesNeeded * needed);
        FuelSystem system = Workshop.Four([injector, injector, injector, injector], believed: injector);

        Assert.All(
            [Workshop.Hold(1), FuelCommand.OpenLoop(Lambda.FromRatio(1))],
            command =>
            {
                SystemState state = system.Solve(Workshop.Point(900, 30, command));
                Finding? found = state.Findings.FirstOrDefault(f => f.Code == FindingCode.PulseNotRepeatable);
                Assert.Equal(told ? Severity.Warning : null, found?.Severity);
                if (told && command.Kind == FuelCommand.CommandKind.HoldLambda)
                {
                    Close.Within(1e-3, 1 / timesNeeded, state.Lambda!.Value.ToRatio());
                    Assert.Contains(Show.Percent((1 / state.Lambda!.Value.ToRatio()) - 1), found!.Value);
                }
            }
        );
    }

    /// <summary>
    /// A pump that is made weaker, step by step, until its pressure is below that of a boosted manifold: no step may have a
    /// better verdict than the one before, and the last ones say that no fuel passes.
    /// </summary>
    [Theory]
    [InlineData(FuelCommand.CommandKind.HoldLambda)]
    [InlineData(FuelCommand.CommandKind.OpenLoop)]
    [InlineData(FuelCommand.CommandKind.AllOpen)]
    public void Verdict_WeakerAndWeakerPump_NeverGetsBetter(FuelCommand.CommandKind kind)
    {
        FuelCommand command = kind switch
        {
            FuelCommand.CommandKind.HoldLambda => Workshop.Hold(0.85),
            FuelCommand.CommandKind.OpenLoop => FuelCommand.OpenLoop(Lambda.FromRatio(0.85)),
            _ => FuelCommand.AllOpen,
        };
        OperatingPoint boosted = Workshop.Point(5000, 200, command);
        SystemAssessment[] steps =
        [
            .. Enumerable
                .Range(0, 40)
                .Select(i => new SystemAssessment(
                    PlumbingRig.With(PlumbingRig.Usual(pump: Reaching(8 * Math.Pow(0.9, i)))),
                    [boosted]
                ))
                // The dead times of the rig are known from 0.5 bar.
                .Where(s => s.Points[0].Deciding.Refusal is not OutsideTableException),
        ];

        Assert.Equal(steps.Select(s => s.Verdict.Kind).Order(), steps.Select(s => s.Verdict.Kind));
        Finding last = Assert.Single(steps[^1].Verdict.Reasons);
        Assert.Equal((FindingCode.ChamberWithoutFuel, Severity.Danger), (last.Code, last.Severity));
        Assert.False(last.IsNotKnown);
    }

    private static Pump Reaching(double bars) =>
        new(
            "pump",
            [
                .. new[] { 4.0, 15 }.Select(volts => new PumpCurve(
                    ElectricPotential.FromVolts(volts),
                    [
                        new(Pressure.Zero, VolumeFlow.FromLitersPerHour(300), ElectricCurrent.FromAmperes(6)),
                        new(Pressure.FromBars(bars), VolumeFlow.Zero, ElectricCurrent.FromAmperes(12)),
                    ],
                    Workshop.Invented
                )),
            ],
            Workshop.Gasoline,
            Workshop.Invented
        );

    /// <summary>Half a meter of petrol gives 0.036 bar: its findings show more than "0.04 bar below 0.04 bar".</summary>
    [Theory]
    [InlineData(3650, "0.0365 bar")]
    [InlineData(-120, "-0.0012 bar")]
    [InlineData(9999, "0.1000 bar")]
    [InlineData(10_000, "0.10 bar")]
    [InlineData(0, "0.00 bar")]
    public void Show_SmallPressure_HasDigits(double pascals, string shown) => Assert.Equal(shown, Show.Bar(pascals));
}
