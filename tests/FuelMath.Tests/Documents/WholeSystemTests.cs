using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>Systems made in code from what the bundled files leave out: written, valid, and the same when read.</summary>
public sealed class WholeSystemTests
{
    private static readonly DataSource Source = new("Workshop-class", "test");

    private static readonly FuelSystem Car = SystemDocument.Read(TestFiles.System("time-trial-car"));

    public static TheoryData<string> Names => [.. Systems().Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void WriteThenRead_System_GivesTheSameTextAndIsValid(string name)
    {
        string text = SystemDocument.Write(Systems()[name]);
        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        using var document = System.Text.Json.JsonDocument.Parse(text);
        Assert.True(TestFiles.SystemSchema.Evaluate(document.RootElement).IsValid, text);
    }

    /// <summary>What was made in code and what was read from its text give one answer, to the last bit.</summary>
    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    public void WriteThenRead_BundledSystem_SolvesTheSame(string name)
    {
        FuelSystem given = SystemDocument.Read(TestFiles.System(name));
        FuelSystem back = SystemDocument.Read(SystemDocument.Write(given));
        foreach (OperatingPoint point in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            SystemState expected = given.Solve(point);
            SystemState state = back.Solve(point);
            Assert.All(
                given.Network.Lines,
                l => Assert.Equal(expected.FlowThrough(l.Name).InSi(), state.FlowThrough(l.Name).InSi())
            );
            Assert.Equal(expected.Lambda, state.Lambda);
        }
    }

    private static Dictionary<string, FuelSystem> Systems()
    {
        Engine rotary = Engine.Rotary(
            "rotary",
            2,
            SiUnits.Volume(654e-6),
            VolumetricEfficiency.FromConstant(SiUnits.Ratio(0.9), Source)
        );
        Engine seven = Engine.TwoStroke(
            "seven cylinders",
            7,
            SiUnits.Volume(1e-3),
            VolumetricEfficiency.FromSpeeds(
                [SiUnits.RotationalSpeed(100), SiUnits.RotationalSpeed(700.1)],
                AbsolutePressure.StandardAtmosphere,
                [SiUnits.Ratio(0.5), SiUnits.Ratio(1 / 3.0)],
                OutsideRange.HoldEnds,
                Source
            ),
            SiUnits.Ratio(0.7)
        );
        Limits limits = new(
            SiUnits.Ratio(0.9),
            SiUnits.Ratio(0.2),
            SiUnits.Ratio(0.04),
            SiUnits.Ratio(0.06),
            SiUnits.ElectricPotential(0.5),
            SiUnits.Speed(3),
            SiUnits.Speed(1),
            SiUnits.Pressure(3e4),
            SiUnits.Ratio(0.8),
            SiUnits.Ratio(1.2),
            Source
        );
        PowerSupply power = new PowerSupply.TwoCircuits(
            new Circuit(
                "pumps",
                [
                    Conductor.FromParallel(3, WireSize.FromAwg(-1), SiUnits.Length(2), SiUnits.Temperature(300)),
                    new Conductor(WireSize.FromAwg(0), SiUnits.Length(2), SiUnits.Temperature(300)),
                    new Conductor(WireSize.FromAwg(40), SiUnits.Length(0.1), SiUnits.Temperature(300)),
                ],
                [],
                SiUnits.ElectricResistance(0)
            ),
            ((PowerSupply.TwoCircuits)Car.Power).Injectors
        );
        Fuel mass = FuelBlend.ByMass(
            "mass blend",
            [new(StandardFuels.IsoOctane, SiUnits.Ratio(0.6)), new(StandardFuels.Toluene, SiUnits.Ratio(0.4))]
        );
        return new()
        {
            ["rotary with its own limits"] = Of(rotary, mass, limits, power, Car.Network),
            ["seven cylinders, regulators of each reference"] = Of(
                seven,
                StandardFuels.Ethanol,
                Limits.CommonPractice,
                Car.Power,
                WithReference(RegulatorReference.Tank)
            ),
            ["fed by a mesh"] = Car.WithPower(FedByAMesh()),
            ["ambient reference"] = Of(
                Car.Engine,
                StandardFuels.Methanol,
                limits,
                power,
                WithReference(RegulatorReference.Ambient)
            ),
            ["fittings on a hose and by themselves"] = Of(
                Car.Engine,
                StandardFuels.Methanol,
                limits,
                power,
                WithFittings()
            ),
        };
    }

    /// <summary>Every kind of source and load.</summary>
    private static PowerSupply.Meshed FedByAMesh()
    {
        ElectricResistance some = SiUnits.ElectricResistance(0.01);
        return new PowerSupply.Meshed(
            new WiringMesh(
                "all kinds",
                "post",
                [
                    new WiringMesh.Branch(
                        "feed",
                        "plus",
                        "pump",
                        [new Conductor(WireSize.FromAwg(10), SiUnits.Length(3), SiUnits.Temperature(320))],
                        some
                    ),
                    WiringMesh.Branch.FromResistance("rail", "plus", "coils", some),
                    WiringMesh.Branch.FromResistance("lead", "alternator", "plus", some),
                    WiringMesh.Branch.FromResistance("strap", "block", "post", some),
                ],
                [
                    WiringMesh.Source.Battery("battery", "plus", "post", SiUnits.ElectricPotential(12.6), some),
                    WiringMesh.Source.Alternator(
                        "generator",
                        "alternator",
                        "block",
                        SiUnits.ElectricPotential(14),
                        SiUnits.ElectricCurrent(60)
                    ),
                    WiringMesh.Source.Held("bench supply", "bench", "block", SiUnits.ElectricPotential(5)),
                ],
                [
                    new WiringMesh.CurrentLoad("pumps", "pump", "block", default),
                    new WiringMesh.CurrentLoad("injectors", "coils", "block", default),
                    new WiringMesh.ResistanceLoad("lamps", "plus", "post", SiUnits.ElectricResistance(2)),
                    new WiringMesh.PowerLoad("fan driver", "plus", "post", SiUnits.Power(90)),
                ]
            ),
            "battery",
            "pumps",
            "injectors"
        );
    }

    private static FuelSystem Of(Engine engine, Fuel fuel, Limits limits, PowerSupply power, Network plan) =>
        new(
            "test",
            fuel,
            engine,
            plan,
            [
                new InjectorStage(
                    "only",
                    InjectorStage.DischargePlace.Ambient,
                    2,
                    Enumerable
                        .Range(1, engine.Chambers)
                        .Select(c => new InjectorStage.Seat(c, "primary rail", Car.Stages[c % 2].Seats[0].Injector))
                ).WithBelief(Car.Stages[1].Belief!),
            ],
            null,
            power,
            limits,
            Source
        );

    /// <summary>Fittings of each basis on every hose, and an elbow ahead of the pump.</summary>
    private static Network WithFittings()
    {
        Fitting[] fittings =
        [
            .. Enum.GetValues<Fitting.LossBasis>()
                .Select(b => new Fitting($"{b}", SiUnits.Length(0.007), SiUnits.Ratio(1 / 3.0), b, Source)),
        ];
        Line pump = Car.Network.Lines.First(l => l.Part is Pump);
        return new(
            [.. Car.Network.Nodes, Network.Node.Junction("elbow", SiUnits.Length(0))],
            [
                new Line("elbow", pump.From, "elbow", fittings[0]),
                .. Car.Network.Lines.Select(l =>
                    l == pump ? new Line(l.Name, "elbow", l.To, l.Part)
                    : l.Part is Hose hose ? new Line(l.Name, l.From, l.To, new FittedHose(hose, fittings))
                    : l
                ),
            ]
        );
    }

    private static Network WithReference(RegulatorReference reference)
    {
        BypassRegulator old = (BypassRegulator)Car.Network.Lines.Single(l => l.Part is BypassRegulator).Part;
        BypassRegulator other = new("other", old.SetPoint, old.SecondReading, old.Mechanics, reference, old.Source);
        return new(
            Car.Network.Nodes,
            Car.Network.Lines.Select(l => l.Part is not BypassRegulator ? l : new Line(l.Name, l.From, l.To, other))
        );
    }
}
