using System.Text;
using FsCheck.Xunit;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Tests.Documents;

public sealed class NetworkDocumentTests
{
    private const string Text = """
        {
          "document": "network",
          "version": "2",
          "conditions": {"density": "998.2 kg/m3", "viscosity": "1.002 mPa s"},
          "nodes": [
            {"kind": "fixed pressure", "name": "tank", "pressure": "0 kPa gauge", "elevation": "10 m"},
            {"kind": "junction", "name": "end", "elevation": "0 m", "draw": "720 L/h"}
          ],
          "lines": [
            {
              "name": "line",
              "from": "tank",
              "to": "end",
              "pipe": {
                "length": "30 m",
                "bore": "20 mm",
                "roughness": "0.01 mm",
                "lossCoefficient": 2.5,
                "friction": "Colebrook, straight passage"
              }
            }
          ]
        }

        """;

    public static TheoryData<string> References => ReferenceNetwork.All;

    /// <summary>The networks that were solved by other means: as documents they are the same, to the last bit.</summary>
    [Theory]
    [MemberData(nameof(References))]
    public void WriteThenRead_ReferenceNetwork_SolvesTheSame(string id)
    {
        Network given = new ReferenceNetwork(id, Pipe.FrictionLaw.ColebrookStraightPassage).Network;
        string text = NetworkDocument.Write(given);
        Network back = NetworkDocument.Read(text);
        Assert.Equal(text, NetworkDocument.Write(back));
        NetworkState expected = given.Solve();
        NetworkState state = back.Solve();
        Assert.All(
            expected.JunctionNames,
            n => Assert.Equal(expected.PressureAt(n).AboveAmbient.InSi(), state.PressureAt(n).AboveAmbient.InSi())
        );
        Assert.All(expected.LineNames, l => Assert.Equal(expected.FlowIn(l).InSi(), state.FlowIn(l).InSi()));
    }

    [Fact]
    public void WriteThenRead_Hump_HasTheSameStates()
    {
        PlainPump pump = Make.Straight(OutsideRange.Refuse, (0, 300), (50, 310), (100, 500), (200, 100));
        Network given = HumpTests.Lifted(pump, 250, 150, 0);
        string text = NetworkDocument.Write(given);
        Network back = NetworkDocument.Read(text);

        Assert.Equal(text, NetworkDocument.Write(back));
        Assert.Equal(
            given.SolveAll().Select(s => (s.State.FlowIn("pump").InSi(), s.IsStable)),
            back.SolveAll().Select(s => (s.State.FlowIn("pump").InSi(), s.IsStable))
        );
    }

    public static TheoryData<PumpSwitch> Switches =>
        [
            PumpSwitch.PressureBelow("rail", Make.Gauge(290), Make.Gauge(400), true),
            PumpSwitch.PressureAbove("manifold", Make.Gauge(100), Make.Gauge(50), false),
            PumpSwitch.FlowAbove("line", Make.LitersPerHour(240), Make.LitersPerHour(230), true),
            PumpSwitch.TotalDrawAbove(Make.LitersPerHour(100), Make.LitersPerHour(90), false),
        ];

    [Theory]
    [MemberData(nameof(Switches))]
    public void WriteThenRead_SwitchedPump_DoesTheSame(PumpSwitch by)
    {
        Network given = PumpSwitchTests.Rail(150, by);
        string text = NetworkDocument.Write(given);
        Network back = NetworkDocument.Read(text);

        Assert.Equal(text, NetworkDocument.Write(back));
        Assert.Contains(
            by.WasRunning ? "\"was\": \"running\"" : "\"was\": \"stopped\"",
            text,
            StringComparison.Ordinal
        );
        Assert.Equal(given.Solve().Remarks.ToArray(), back.Solve().Remarks.ToArray());
    }

    [Fact]
    public void Read_SwitchThatWouldLeaveFirst_IsRefusedWithItsPlace()
    {
        string text = NetworkDocument
            .Write(PumpSwitchTests.Rail(150, PumpSwitch.PressureBelow("rail", Make.Gauge(290), Make.Gauge(400), true)))
            .Replace("\"leaveAbove\": \"400", "\"leaveAbove\": \"200", StringComparison.Ordinal);

        DocumentException error = Assert.Throws<DocumentException>(() => NetworkDocument.Read(text));
        Assert.EndsWith(".switch.leaveAbove", error.Path, StringComparison.Ordinal);
        Assert.Equal(
            "A pump must leave at or above where it joins, 290 kPa gauge; it was 200 kPa gauge.",
            error.Allowed
        );
    }

    [Fact]
    public void WriteThenRead_EveryKindOfPart_GivesTheSameText()
    {
        Length z = SiUnits.Length(0);
        VolumeFlow flow = SiUnits.VolumeFlow(1e-4);
        Pressure loss = SiUnits.Pressure(2e4);
        PlainPump.Point[] points = [new(SiUnits.VolumeFlow(0), SiUnits.Pressure(5e5)), new(flow, loss)];
        OwnRegulator regulator = new(SiUnits.Pressure(3e5), new GaugePressure(1e4), loss, flow);
        PlainPump[] pumps =
        [
            PlainPump.Straight(points, OutsideRange.Refuse),
            PlainPump.Smooth(points, OutsideRange.Extend).AtSpeed(SiUnits.Ratio(0.9)),
            PlainPump.Straight(points, OutsideRange.Refuse).InParallel(2).InSeries(3),
            PlainPump.PowerThrough(SiUnits.Pressure(6e5), new(flow, SiUnits.Pressure(4e5)), new(2 * flow, loss)),
        ];
        OwnLine[] links =
        [
            OwnLine.CheckPipe(
                "check pipe",
                "a",
                "b",
                SiUnits.Length(1),
                SiUnits.Length(0.01),
                SiUnits.Length(1e-6),
                SiUnits.Ratio(1),
                Pipe.FrictionLaw.SwameeJainCubicPassage
            ),
            OwnLine.CurvedPipe(
                "coil",
                "a",
                "b",
                SiUnits.Length(1.5),
                SiUnits.Length(0.01),
                SiUnits.Length(1e-6),
                SiUnits.Ratio(0),
                SiUnits.Length(0.4)
            ),
            OwnLine.Fitting("fitting", "a", "b", SiUnits.Length(0.01), SiUnits.Ratio(0.3)),
            OwnLine.Filter("filter", "a", "b", flow, loss, SiUnits.Pressure(0)),
            .. pumps.Select((p, i) => OwnLine.Pump($"pump {i}", "a", "b", p)),
            OwnLine.BypassRegulator(
                "bypass",
                "b",
                "a",
                regulator.WithSlope(SiUnits.Pressure(1e4), flow).WithReturnInfluence(SiUnits.Ratio(0.04))
            ),
            OwnLine.ReducingRegulator("reducing", "a", "b", regulator),
            OwnLine.CheckValve("check", "a", "b", SiUnits.Pressure(1e3), loss, flow),
            OwnLine.CheckValve("relief", "b", "a", SiUnits.Pressure(6e5), loss, flow),
            OwnLine.Orifice("orifice", "b", "space", flow, loss, InjectorDraw.Backflow.Allowed),
            OwnLine.CappedOrifice("capped", "b", "space", flow, loss, SiUnits.VolumeFlow(5e-5)),
        ];
        Network network = OwnLine.Network(
            SiUnits.Density(740),
            SiUnits.KinematicViscosity(0.7e-6),
            [
                Network.Node.FixedPressure("a", new GaugePressure(0.0), z),
                Network
                    .Node.Junction("b", z, SiUnits.VolumeFlow(-1e-6))
                    .AtPlace(SiUnits.Length(1.5), SiUnits.Length(-0.25)),
                Network.Node.FixedPressure("space", new GaugePressure(-3e4), z),
            ],
            links
        );
        network = network.Under(new(SiUnits.Acceleration(-9), SiUnits.Acceleration(4.5), SiUnits.Acceleration(0)));
        string text = NetworkDocument.Write(network);
        Network back = NetworkDocument.Read(text);
        Assert.Equal(text, NetworkDocument.Write(back));
        Assert.Equal(-9, back.Acceleration.Forward.InSi());
        Assert.Equal(-0.25, back.Nodes[1].Left.InSi());
        Assert.Equal(
            Enum.GetValues<OwnKind>().Except([OwnKind.Pipe]),
            back.Lines.Select(l => OwnKinds.Of(l.Part)).Distinct().Order()
        );
    }

    [Fact]
    public void ReadThenWrite_CanonicalText_GivesTheSameText() =>
        Assert.Equal(Text, NetworkDocument.Write(NetworkDocument.Read(Text)));

    [Fact]
    public void Read_KinematicViscosity_IsWrittenAsDynamic()
    {
        string text = Text.Replace(
            "\"viscosity\": \"1.002 mPa s\"",
            "\"kinematicViscosity\": \"1 mm2/s\"",
            StringComparison.Ordinal
        );
        Network network = NetworkDocument.Read(text);
        Close.Within(1e-14, 998.2e-6, network.Conditions!.Viscosity.InSi());
        string written = NetworkDocument.Write(network);
        Assert.Contains("\"viscosity\": \"0.99", written, StringComparison.Ordinal);
        Assert.Equal(written, NetworkDocument.Write(NetworkDocument.Read(written)));
    }

    [Theory]
    [InlineData(
        "\"to\": \"end\"",
        "\"to\": \"nowhere\"",
        "$.lines",
        "Line 'line' leads to a node 'nowhere', which is not there."
    )]
    [InlineData("\"20 mm\"", "\"0 mm\"", "$.lines[0].pipe.bore", "Must be finite and greater than zero; it was 0 mm.")]
    [InlineData(
        ", \"viscosity\": \"1.002 mPa s\"",
        "",
        "$.conditions",
        "Must have exactly one of \"viscosity\", \"kinematicViscosity\"."
    )]
    [InlineData(
        "\"pipe\": {",
        "\"tube\": {",
        "$.lines[0].tube",
        "Must be one of \"name\", \"from\", \"to\", \"hose\", \"fittings\", \"fitting\", \"filter\", \"strainer\", \"pump\", \"regulator\", "
            + "\"reducingRegulator\", \"reliefValve\", \"jet\", \"lossTable\", \"checkValve\", \"pipe\", \"curvedPipe\", "
            + "\"plainFitting\", \"plainFilter\", \"plainPump\", \"plainBypassRegulator\", \"plainReducingRegulator\", "
            + "\"nozzle\", \"injectorDraw\", \"switch\", \"linePlan\"."
    )]
    [InlineData(
        "\"draw\"",
        "\"drow\"",
        "$.nodes[1].drow",
        "Must be one of \"kind\", \"name\", \"elevation\", \"draw\", \"forward\", \"left\"; perhaps \"draw\" is meant."
    )]
    public void Read_SomethingWrong_SaysWhereAndWhatIsAllowed(string old, string changed, string path, string allowed)
    {
        string wrong = Text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Text, wrong);
        var error = Assert.Throws<DocumentException>(() => NetworkDocument.Read(wrong));
        Assert.Equal(path, error.Path);
        Words.Says(allowed, error);
    }

    /// <summary>Whatever byte is changed, the answer is a network or a refusal with a place.</summary>
    [Property(MaxTest = 1000)]
    public void Read_AnyByteChanged_GivesANetworkOrARefusal(int place, byte value)
    {
        byte[] text = Encoding.UTF8.GetBytes(Text);
        text[(int)((uint)place % (uint)text.Length)] = value;
        Exception? error = Record.Exception(() => NetworkDocument.Read(text));
        Assert.True(error is null or DocumentException, error?.ToString());
    }

    [Fact]
    public void Read_SlopeWithoutItsFlow_IsRefused()
    {
        const string regulator = """
            {
              "name": "r", "from": "tank", "to": "end",
              "plainBypassRegulator": {"setDifferentialPressure": "3 bar", "reference": "0 bar gauge", "fullyOpenLoss": "20 kPa",
                            "fullyOpenFlow": "200 L/h", "density": "740 kg/m3", "slopePressureDifference": "5 kPa"}
            }
            """;
        string text = Text.Replace("\"lines\": [", $"\"lines\": [{regulator},", StringComparison.Ordinal);
        var error = Assert.Throws<DocumentException>(() => NetworkDocument.Read(text));
        Assert.Equal("$.lines[0].plainBypassRegulator", error.Path);
        Assert.Equal("A slope needs both its pressure difference and its flow.", error.Allowed);
    }

    /// <summary>A document of the first version says what to change.</summary>
    [Fact]
    public void Read_VersionOne_SaysWhatToChange()
    {
        const string old = """
            {
              "document": "network", "version": "1", "density": "998.2 kg/m3", "viscosity": "1.002 mPa s",
              "nodes": [], "links": []
            }
            """;

        DocumentException error = Assert.Throws<DocumentException>(() => NetworkDocument.Read(old));

        Assert.Equal("$.version", error.Path);
        Assert.Contains("\"links\" are \"lines\"", error.Allowed, StringComparison.Ordinal);
        Assert.Contains("\"conditions\" hold \"density\" and \"viscosity\"", error.Allowed, StringComparison.Ordinal);
    }

    /// <summary>All that conditions hold, and a network without any.</summary>
    [Fact]
    public void WriteThenRead_Conditions_AreTheSame()
    {
        NetworkConditions at = new NetworkConditions(SiUnits.Density(740), SiUnits.DynamicViscosity(4e-4))
            .WithPumpVoltage(SiUnits.ElectricPotential(13.2))
            .WithManifold(Make.Gauge(-40))
            .WithTank(Make.Gauge(3))
            .WithCommandedFlow("draw", SiUnits.VolumeFlow(5e-6));
        InjectorDraw draw = new(SiUnits.VolumeFlow(1e-5), SiUnits.Pressure(3e5), SiUnits.Density(740));
        Network open = new(
            [Make.Fixed("rail", 300), Make.Fixed("space", 0)],
            [new Line("draw", "rail", "space", draw)]
        );
        string text = NetworkDocument.Write(open.At(at));
        NetworkConditions back = NetworkDocument.Read(text).Conditions!;

        Assert.Equal(text, NetworkDocument.Write(NetworkDocument.Read(text)));
        Assert.Equal(
            (13.2, -4e4, 3e3, 5e-6),
            (back.PumpVoltage!.Value.InSi(), back.Manifold!.Value.Si, back.Tank!.Value.Si, back.Commands["draw"].InSi())
        );
        Assert.Null(NetworkDocument.Read(NetworkDocument.Write(open)).Conditions);
    }
}
