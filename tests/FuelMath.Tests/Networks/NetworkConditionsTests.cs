using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>What parts need beside a fluid: refused by line where it is missing, and used where it is given.</summary>
public sealed class NetworkConditionsTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");
    private static readonly NetworkConditions Petrol = new(
        Density.FromKilogramsPerCubicMeter(740),
        DynamicViscosity.FromPascalSeconds(4e-4)
    );

    private static Pump Pump { get; } =
        new("pump of two voltages", [Curve(8, 0.6), Curve(12, 1)], StandardFuels.PumpGasoline, Source);

    private static Jet Jet { get; } =
        new("jet", Make.LitersPerHour(60), Make.Kilopascals(300), Density.FromKilogramsPerCubicMeter(740), Source);

    public static TheoryData<string> Missing => ["feed", "manifold regulator", "tank regulator"];

    [Theory]
    [MemberData(nameof(Missing))]
    public void Solve_WithoutWhatALineNeeds_IsRefusedWithTheLine(string line)
    {
        Network network = line switch
        {
            "feed" => PumpThroughAJet(),
            "manifold regulator" => Regulated(line, RegulatorReference.Manifold, "tank"),
            _ => Regulated(line, RegulatorReference.Tank, "return"),
        };
        NetworkConditions some = line == "feed" ? Petrol : Petrol.WithPumpVoltage(Volts(12));

        ArgumentException refusal = Assert.Throws<ArgumentException>(() => network.Solve(some));

        Words.Says($"'{line}'", refusal);
        Assert.Throws<ArgumentException>(() => network.At(some));
    }

    /// <summary>The pump of the network is the one that its own curve gives at the voltage, measured or between.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(9.7)]
    [InlineData(12)]
    public void Solve_AtAVoltage_MeetsThePumpsCurveThere(double volts)
    {
        NetworkState state = PumpThroughAJet().Solve(Petrol.WithPumpVoltage(Volts(volts)));

        Pressure rise = Make.Kilopascals(state.KilopascalsAt("rail"));
        Close.Within(1e-7, Pump.CurveAt(Volts(volts)).FlowAt(rise).LitersPerHour, state.LitersPerHourIn("feed"));
        Close.Within(1e-7, Jet.FlowAt(rise, Petrol.Density).LitersPerHour, state.LitersPerHourIn("jet"));
    }

    [Fact]
    public void Solve_OutsideThePumpsVoltages_IsRefused() =>
        Assert.Throws<OutsideTableException>(() => PumpThroughAJet().Solve(Petrol.WithPumpVoltage(Volts(13))));

    /// <summary>A pump that joins runs at the voltage of the point, as one that always runs does; one that leaves stands still.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(9.7)]
    [InlineData(12)]
    public void Solve_ASwitchedPumpAtAVoltage_RunsAtIt(double volts)
    {
        NetworkConditions at = Petrol.WithPumpVoltage(Volts(volts));
        PumpSwitch joins = PumpSwitch.PressureBelow("rail", Make.Gauge(5000), Make.Gauge(6000), false);
        PumpSwitch leaves = PumpSwitch.PressureBelow("rail", Make.Gauge(1), Make.Gauge(2), true);
        NetworkState one = Of(null, false).Solve(at);
        NetworkState both = Of(null, true).Solve(at);

        NetworkState joined = Of(joins, true).Solve(at);
        NetworkState left = Of(leaves, true).Solve(at);

        Close.Within(1e-9, both.LitersPerHourIn("second"), joined.LitersPerHourIn("second"));
        Close.Within(1e-9, both.KilopascalsAt("rail"), joined.KilopascalsAt("rail"));
        Close.Within(1e-9, one.LitersPerHourIn("feed"), left.LitersPerHourIn("feed"));
        Close.Within(1e-9, one.KilopascalsAt("rail"), left.KilopascalsAt("rail"));
        Assert.Equal(Network.LineCondition.Stopped, left.ConditionOf("second"));
        Assert.True(both.KilopascalsAt("rail") > one.KilopascalsAt("rail") + 1);

        Network Of(PumpSwitch? by, bool second)
        {
            Line extra = new("second", "tank", "rail", Pump);
            Line[] lines =
            [
                new Line("feed", "tank", "rail", Pump),
                new Line("jet", "rail", "tank", Jet),
                new Line("other jet", "rail", "tank", Jet),
            ];
            return new(
                [Make.Fixed("tank", 0), Make.Junction("rail")],
                second ? [.. lines, by is null ? extra : extra.SwitchedBy(by)] : lines
            );
        }
    }

    /// <summary>The rail follows the port one to one and a little more: the seat takes its area off the diaphragm.</summary>
    [Theory]
    [InlineData(RegulatorReference.Manifold)]
    [InlineData(RegulatorReference.Tank)]
    public void Solve_WithAPortPressure_MovesTheRail(RegulatorReference reference)
    {
        Network network = Regulated("regulator", reference, "return");

        double at0 = Rail(0);
        double at50 = Rail(50);

        Assert.InRange(at50 - at0, 50, 60);

        double Rail(double port)
        {
            NetworkConditions at = Petrol.WithPumpVoltage(Volts(12));
            at =
                reference == RegulatorReference.Tank
                    ? at.WithTank(Make.Gauge(port))
                    : at.WithManifold(Make.Gauge(port));
            NetworkState state = network.Solve(at);
            Assert.Equal(Network.LineCondition.Regulating, state.ConditionOf("regulator"));
            return state.KilopascalsAt("rail");
        }
    }

    /// <summary>A regulator that returns to a node of fixed pressure sits in that tank; nothing else has to be said.</summary>
    [Fact]
    public void Solve_RegulatorReturnsToATank_RefersToIt()
    {
        NetworkConditions at = Petrol.WithPumpVoltage(Volts(12));
        double open = Regulated("regulator", RegulatorReference.Tank, "tank").Solve(at).KilopascalsAt("rail");
        double ambient = Regulated("regulator", RegulatorReference.Ambient, "tank").Solve(at).KilopascalsAt("rail");

        Close.Within(1e-12, ambient, open);
    }

    [Fact]
    public void At_Conditions_SolvesAsThoseGivenWithEachSolve()
    {
        NetworkConditions at = Petrol.WithPumpVoltage(Volts(9.7)).WithManifold(Make.Gauge(40));
        Network network = Regulated("regulator", RegulatorReference.Manifold, "return");
        NetworkState with = network.Solve(at);
        Network bound = network.At(at);

        Assert.Same(at, bound.Conditions);
        Assert.Null(network.Conditions);
        Same(bound.Solve());
        Same(bound.Solve(with));
        Same(Assert.Single(bound.SolveAll()).State);
        Same(bound.Under(default).Solve());
        Network.Buffer buffer = new(bound);
        bound.Solve(buffer);
        Same(buffer.ToState());
        buffer.SetReference("regulator", Make.Gauge(0));
        buffer.Reset();
        bound.Solve(buffer);
        Same(buffer.ToState());
        Same(new NetworkBatch(bound, 3).Solve(null, CancellationToken.None).ToState(2));

        void Same(NetworkState state) =>
            Assert.All(
                with.LineNames,
                l => Close.WithinOf(100, 1e-9, with.LitersPerHourIn(l), state.LitersPerHourIn(l))
            );
    }

    [Fact]
    public void Solve_WithoutConditions_IsRefused()
    {
        Network network = PumpThroughAJet();

        Assert.Throws<InvalidOperationException>(network.Solve);
        Assert.Throws<InvalidOperationException>(() => network.SolveAll());
        Assert.Throws<InvalidOperationException>(() => new Network.Buffer(network));
        Assert.Throws<InvalidOperationException>(() => new NetworkBatch(network, 2));
    }

    /// <summary>A caller's own part must not be left out of a document in silence.</summary>
    [Fact]
    public void Write_NetworkWithAPartOfTheCallers_IsRefusedWithTheLine()
    {
        CustomPart<OwnLaws.Porous> own = new("own", new OwnLaws.Porous(1e9, 1e12), Make.LitersPerHour(100));
        Network network = new([Make.Fixed("a", 10), Make.Fixed("b", 0)], [new Line("feed", "a", "b", own)]);

        ArgumentException refusal = Assert.Throws<ArgumentException>(() => NetworkDocument.Write(network));

        Words.Says("'feed'", refusal);
    }

    /// <summary>Measured parts and what they need are written like all others.</summary>
    [Fact]
    public void WriteThenRead_NetworkOfMeasuredParts_SolvesTheSame()
    {
        Network network = PumpThroughAJet().At(Petrol.WithPumpVoltage(Volts(12)));
        Network back = NetworkDocument.Read(NetworkDocument.Write(network));

        Assert.Equal(network.Solve().LitersPerHourIn("jet"), back.Solve().LitersPerHourIn("jet"));
    }

    [Fact]
    public void Constructor_BadValues_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "density",
            () => new NetworkConditions(Density.Zero, Petrol.Viscosity)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "viscosity",
            () => new NetworkConditions(Petrol.Density, DynamicViscosity.FromPascalSeconds(-1))
        );
        Assert.Throws<ArgumentOutOfRangeException>("voltage", () => Petrol.WithPumpVoltage(Volts(0)));
        Assert.Throws<ArgumentException>("to", () => new Line("line", "a", "a", Jet));
        Assert.Throws<ArgumentNullException>("part", () => new Line("line", "a", "b", null!));
    }

    private static Network PumpThroughAJet() =>
        new(
            [Make.Fixed("tank", 0), Make.Junction("rail"), Make.Fixed("space", 0)],
            [new Line("feed", "tank", "rail", Pump), new Line("jet", "rail", "space", Jet)]
        );

    /// <summary>A pump, a regulator from the rail to a node, and from there a short way to the tank.</summary>
    private static Network Regulated(string line, RegulatorReference reference, string to) =>
        new(
            [Make.Fixed("tank", 0), Make.Junction("rail"), Make.Junction("return")],
            [
                new Line("feed", "tank", "rail", Pump),
                new Line(line, "rail", to, Regulator(reference)),
                new Line(
                    "return",
                    "return",
                    "tank",
                    new Jet("wide", Make.LitersPerHour(900), Make.Kilopascals(1), Petrol.Density, Source)
                ),
            ]
        );

    private static BypassRegulator Regulator(RegulatorReference reference) =>
        new(
            "regulator",
            new BypassRegulator.BenchReading(Pressure.FromBars(3), Make.LitersPerHour(50)),
            new BypassRegulator.BenchReading(Pressure.FromBars(3.1), Make.LitersPerHour(250)),
            new RegulatorMechanics(
                Area.FromSquareCentimeters(8),
                Area.FromSquareCentimeters(0.4),
                new RegulatorMechanics.Restriction(Pressure.FromBars(0.3), Make.LitersPerHour(300), Petrol.Density)
            ),
            reference,
            Source
        );

    private static PumpCurve Curve(double volts, double share) =>
        new(Volts(volts), [Point(2, 260 * share, 9), Point(4, 190 * share, 11), Point(6.5, 60 * share, 14)], Source);

    private static PumpCurve.Point Point(double bars, double litersPerHour, double amperes) =>
        new(Pressure.FromBars(bars), Make.LitersPerHour(litersPerHour), ElectricCurrent.FromAmperes(amperes));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);
}
