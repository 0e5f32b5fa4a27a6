using FuelMath.Samples.Assessment;
using FuelMath.ShopTests;
using FuelMath.Statistics;
using FuelMath.Tests.Documents;
using FuelMath.Tests.Tightness;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// Everything with everything: each ability is tried with a system that holds each part. A cell that is empty is listed with
/// its reason, and is held to be refused.
/// </summary>
public sealed class AbilityMatrixTests
{
    private const int MostEmpty = 5;

    private static readonly OperatingPoint Point = Workshop.Point(5000, 100, Workshop.Hold(0.9));

    private static readonly Dictionary<string, Func<FuelSystem>> Parts = new()
    {
        ["hose"] = () => PlumbingRig.With(PlumbingRig.Usual()),
        ["coil"] = () => PlumbingRig.With(PlumbingRig.Usual(feed: Coiled())),
        ["fitting"] = () => Between("elbow", PlumbingParts.Elbow()),
        ["hose with fittings"] = () => Between("fitted", PlumbingParts.Fitted()),
        ["filter"] = () => PlumbingRig.With(PlumbingRig.Usual(filter: Workshop.Filter())),
        ["strainer"] = () => Between("strainer", PlumbingParts.Strainer(1200)),
        ["pump"] = () => PlumbingRig.With(PlumbingRig.Usual(pump: Workshop.Pump(1.2))),
        ["pumps side by side"] = () => Beside("second", Workshop.Pump(0.8)),
        ["bypass regulator"] = () =>
            PlumbingRig.With(PlumbingRig.Usual(regulator: Workshop.Regulator(RegulatorReference.Ambient, 3))),
        ["reducing regulator"] = () => PlumbingRig.WithoutReturn(),
        ["relief valve"] = () => Leading("relief", "pump outlet", PlumbingRig.Relief(6)),
        ["check valve"] = () =>
            Between(
                "check valve",
                new CheckValve(
                    Pressure.FromKilopascals(2),
                    Pressure.FromKilopascals(10),
                    VolumeFlow.FromLitersPerHour(200),
                    PlumbingRig.Petrol
                )
            ),
        ["jet"] = () => Leading("jet", "rail end", PlumbingParts.Jet()),
        ["loss table"] = () => Leading("restriction", "rail end", PlumbingParts.LossTable()),
        ["own part"] = () => Leading("own", "rail end", PlumbingParts.Own()),
        ["surge tank"] = () => SurgeTankSystemTests.With(0.5),
        ["pump on a switch"] = () =>
            Beside("second", Workshop.Pump(0.8), PumpSwitch.ManifoldAbove(Gauge(-20), Gauge(-40), false)),
    };

    private static readonly Dictionary<string, Action<FuelSystem>> Abilities = new()
    {
        ["state"] = s => Assert.InRange(s.Solve(Point).Lambda!.Value.ToRatio(), 0.8999, 0.9001),
        ["document"] = s =>
        {
            string text = SystemDocument.Write(s);
            FuelSystem read = SystemDocument.Read(text);
            Assert.Equal(text, SystemDocument.Write(read));
            Assert.Equal(s.Solve(Point).PressureAt("rail end").Si, read.Solve(Point).PressureAt("rail end").Si, 3);
        },
        ["schema"] = s =>
        {
            using var written = System.Text.Json.JsonDocument.Parse(SystemDocument.Write(s));
            Assert.True(TestFiles.SystemSchema.Evaluate(written.RootElement).IsValid);
        },
        ["sweep"] = s =>
        {
            Sweep sweep = new(
                s,
                Point,
                [Point.Speed, Point.Speed / 2],
                [new(Pressure.FromKilopascals(50)), Point.Air.Manifold],
                CancellationToken.None
            );
            Assert.All(sweep.Points, p => Assert.NotNull(p.State));
            Assert.Equal(s.Solve(Point).PressureAt("rail end"), sweep.At(0, 1).State!.PressureAt("rail end"));
        },
        ["Monte Carlo"] = s =>
        {
            SystemMonteCarlo run = new(
                s,
                Point,
                [UncertainInput.PumpFlow(Ratio.FromPercent(2), SpreadShape.Normal, Workshop.Invented)],
                100,
                1,
                null,
                CancellationToken.None
            );
            Assert.Equal(0, run.RefusedCount);
            double sought = s.Solve(Point).PressureAt("rail end").Si;
            Close.Within(0.02 * sought, sought, run.PressureAt("rail end").Mean.Si);
        },
        ["batch"] = s =>
        {
            NetworkBatch batch = new(NetworkOf(s), 3);
            NetworkBatch.Result result = batch.Solve(null, CancellationToken.None);
            Assert.Equal(3, result.SolvedCount);
        },
        ["findings"] = s =>
        {
            SystemState state = s.Solve(Point);
            Assert.NotEmpty(state.Verdict.ToString());
            Assert.DoesNotContain(state.Findings, f => f.Part.Length == 0);
        },
        ["leak suspects"] = s => Assert.NotEmpty(LeakSuspects.Of(s).All),
        ["bucket test"] = s =>
            Assert.True(
                BucketTest
                    .Of(s, Workshop.Point(0, 100, FuelCommand.Cut), Duration.FromSeconds(30))
                    .ExpectedVolume.Liters > 0.05
            ),
        ["working"] = s =>
            Assert.NotEmpty(
                s.Solve(Point).PressureWorkingAt("rail end").ToText(System.Globalization.CultureInfo.InvariantCulture)
            ),
        ["pressure-rise test"] = s =>
        {
            OperatingPoint keyOn = Workshop.Point(0, 100, FuelCommand.Cut, volts: 13.8);
            PressureRiseTest rise = PressureRiseTest.Of(s, keyOn, "rail end", new ClosedLine(0.4, 20, 5, 3, 1).Volume);
            Assert.InRange(rise.ShortestTime.Seconds, 1e-3, rise.IsothermalTime.Seconds);
            Assert.Equal(s.Solve(keyOn).PressureAt("rail end").Si, rise.ExpectedPressure.Si);
        },
        ["voltage-drop test"] = s =>
        {
            VoltageDropTest test = VoltageDropTest.Of(WithOwnCircuit(s), Point);
            SystemState.PumpResult fed = test.State.Pumps.First(p => p.Line == FirstPump(s));
            Close.Within(
                1e-9,
                Point.Supply.Volts - fed.Voltage.Volts,
                test.Steps.Where(d => d.Place.Contains($"'{fed.Line}'", StringComparison.Ordinal))
                    .Sum(d => d.ExpectedDrop.Volts)
            );
        },
        ["own circuit"] = s =>
        {
            SystemState.PumpResult fed = WithOwnCircuit(s).Solve(Point).Pumps.First(p => p.Line == FirstPump(s));
            Close.Within(1e-7, Point.Supply.Volts - (0.15 * fed.Current.Amperes), fed.Voltage.Volts);
        },
        ["acceleration"] = s =>
        {
            // Still fuel falls by density x acceleration x distance; what flows hardly changes.
            FuelSystem placed = s.WithNetwork(
                new(
                    s.Network.Nodes.Select(n =>
                        n.Name == "filter outlet" ? n.AtPlace(Length.FromMeters(1.5), default) : n
                    ),
                    s.Network.Lines
                )
            );
            OperatingPoint fast = Point.WithAcceleration(
                new(Acceleration.FromMetersPerSecondSquared(5), default, default)
            );
            double weight = -s.Fuel.DensityAt(Point.Fuel).KilogramsPerCubicMeter * 5 * 1.5;
            Close.Within(
                -0.05 * weight,
                weight,
                placed.Solve(fast).PressureAt("filter outlet").Si - placed.Solve(Point).PressureAt("filter outlet").Si
            );
        },
        ["history"] = s =>
            Assert.All(
                new OperatingHistory(s, [Point, Point], CancellationToken.None).Points,
                p => Assert.Equal(s.Solve(Point).PressureAt("rail end").Si, p.State!.PressureAt("rail end").Si)
            ),
        ["assessment"] = s =>
        {
            SystemAssessment assessment = new(s, [Point]);
            Assert.NotNull(assessment.Points[0].Of(SystemAssessment.StateBasis.AsDescribed)?.State);
            Assert.All(assessment.Findings, f => Assert.NotEmpty(f.Occurrences));
        },
        ["shares"] = s =>
            Assert.InRange(
                new SystemShares(
                    s,
                    Point,
                    [UncertainInput.FuelDensity(Ratio.FromPercent(1), SpreadShape.Normal, Workshop.Invented)]
                )
                    .DutyCycleOf(s.Stages[0].Name)
                    .StandardDeviation.DecimalFractions,
                1e-6,
                0.1
            ),
        ["page and charts"] = s =>
        {
            Assessed assessed = Assessed.Of(new SystemAssessment(s, [Point]), null, null, null);
            string page = new HtmlPage(assessed).ToText();
            Assert.All(s.Network.Lines, l => Assert.Contains($"{l.Name} from ", page, StringComparison.Ordinal));
            // Each pump that works, the path, lambda by chamber with the sensor and without, duty over speed; a surge tank
            // its balance.
            int pumps = assessed.Sheet.Assessment.Points[0].Deciding.State!.Pumps.Length;
            int tanks = assessed.Sheet.Assessment.Points[0].Deciding.State!.SurgeTanks.Length;
            Assert.Equal(pumps + tanks + 4, page.Split("<figure ").Length - 1);
            Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        },
        ["table files"] = s =>
            Assert.All(
                SheetFolder.Tables(Assessed.Of(new SystemAssessment(s, [Point]), null, null, null)),
                t => Assert.Equal(t.ToCsv(), SheetTable.FromCsv(t.Name, t.ToCsv()).ToCsv())
            ),
        ["wiring"] = s => Assert.True(VoltageDropEffect.Of(s, Point).PumpVoltageDrop.Volts > 0.01),
    };

    /// <summary>What can't be, and why.</summary>
    private static readonly Dictionary<(string Part, string Ability), string> Empty = new()
    {
        [("own part", "document")] =
            "A law is code, which a document does not hold; a loss table is written in its place.",
        [("own part", "schema")] = "The same.",
        [("pump on a switch", "batch")] = "A batch has one state a point by its laws; a sweep takes switches.",
        [("reducing regulator", "bucket test")] = "The bucket test measures what returns, and nothing does.",
    };

    public static TheoryData<string, string> Cells
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string part in Parts.Keys)
            {
                foreach (string ability in Abilities.Keys)
                {
                    all.Add(part, ability);
                }
            }

            return all;
        }
    }

    [Fact]
    public void EmptyCells_AreFewAndKnown()
    {
        Assert.InRange(Empty.Count, 0, MostEmpty);
        Assert.All(Empty.Keys, c => Assert.True(Parts.ContainsKey(c.Part) && Abilities.ContainsKey(c.Ability)));
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public void Cell_IsFilledOrRefused(string part, string ability)
    {
        FuelSystem system = Parts[part]();
        if (Empty.ContainsKey((part, ability)))
        {
            Assert.ThrowsAny<Exception>(() => Abilities[ability](system));
            return;
        }

        Abilities[ability](system);
    }

    private static Hose Coiled() => Workshop.Hose("coil", 3, 8.7).WithCoil(Length.FromMillimeters(150));

    private static FuelSystem Between(string name, FlowPart part) =>
        PlumbingRig.With([
            .. PlumbingRig.Usual().Select(l => l.Name == "feed" ? new Line("feed", "past", "rail start", l.Part) : l),
            new(name, "filter outlet", "past", part),
        ]);

    private static FuelSystem Leading(string name, string from, FlowPart part) =>
        PlumbingRig.With([.. PlumbingRig.Usual(), new(name, from, "tank", part)]);

    private static FuelSystem Beside(string name, FlowPart pump, PumpSwitch? by = null)
    {
        Line line = new(name, "tank", "pump outlet", pump);
        return PlumbingRig.With([.. PlumbingRig.Usual(), by is null ? line : line.SwitchedBy(by)]);
    }

    private static Network NetworkOf(FuelSystem system) =>
        system.Network.At(
            new NetworkConditions(PlumbingRig.Petrol, DynamicViscosity.FromMillipascalSeconds(0.45))
                .WithPumpVoltage(ElectricPotential.FromVolts(12))
                .WithManifold(Gauge(0))
        );

    private static string FirstPump(FuelSystem system) => system.Network.Lines.First(l => l.Part is Pump).Name;

    private static FuelSystem WithOwnCircuit(FuelSystem system) =>
        system.WithPower(
            system.Power.WithFeeds([
                new PowerSupply.PumpFeed(
                    FirstPump(system),
                    new Circuit("own", [], [], ElectricResistance.FromMilliohms(150))
                ),
            ])
        );

    private static GaugePressure Gauge(double kilopascals) => new(Pressure.FromKilopascals(kilopascals));
}
