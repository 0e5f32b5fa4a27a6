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
          "version": "1",
          "density": "998.2 kg/m3",
          "viscosity": "1.002 mPa s",
          "nodes": [
            {"kind": "fixed pressure", "name": "tank", "pressure": "0 kPa gauge", "elevation": "10 m"},
            {"kind": "junction", "name": "end", "elevation": "0 m", "draw": "720 L/h"}
          ],
          "links": [
            {
              "kind": "pipe",
              "name": "line",
              "from": "tank",
              "to": "end",
              "length": "30 m",
              "bore": "20 mm",
              "roughness": "0.01 mm",
              "lossCoefficient": 2.5,
              "friction": "Colebrook, straight passage"
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
        Network given = new ReferenceNetwork(id, FrictionLaw.ColebrookStraightPassage).Network;
        string text = NetworkDocument.Write(given);
        Network back = NetworkDocument.Read(text);
        Assert.Equal(text, NetworkDocument.Write(back));
        NetworkState expected = given.Solve();
        NetworkState state = back.Solve();
        Assert.All(
            expected.Junctions,
            n => Assert.Equal(expected.PressureAt(n).AboveAmbient.InSi(), state.PressureAt(n).AboveAmbient.InSi())
        );
        Assert.All(expected.Links, l => Assert.Equal(expected.FlowIn(l).InSi(), state.FlowIn(l).InSi()));
    }

    [Fact]
    public void WriteThenRead_Hump_HasTheSameStates()
    {
        NetworkPump pump = Make.Straight(OutsideRange.Refuse, (0, 300), (50, 310), (100, 500), (200, 100));
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
        Assert.EndsWith("pump.switch.leaveAbove", error.Path, StringComparison.Ordinal);
        Assert.Equal(
            "A pump must leave at or above where it joins, 290 kPa gauge; it was 200 kPa gauge.",
            error.Allowed
        );
    }

    [Fact]
    public void WriteThenRead_EveryKindOfLink_GivesTheSameText()
    {
        Length z = SiUnits.Length(0);
        VolumeFlow flow = SiUnits.VolumeFlow(1e-4);
        Pressure loss = SiUnits.Pressure(2e4);
        NetworkPumpPoint[] points = [new(SiUnits.VolumeFlow(0), SiUnits.Pressure(5e5)), new(flow, loss)];
        NetworkRegulator regulator = new(SiUnits.Pressure(3e5), new GaugePressure(1e4), loss, flow);
        NetworkPump[] pumps =
        [
            NetworkPump.Straight(points, OutsideRange.Refuse),
            NetworkPump.Smooth(points, OutsideRange.Extend).AtSpeed(SiUnits.Ratio(0.9)),
            NetworkPump.Straight(points, OutsideRange.Refuse).InParallel(2).InSeries(3),
            NetworkPump.PowerThrough(SiUnits.Pressure(6e5), new(flow, SiUnits.Pressure(4e5)), new(2 * flow, loss)),
        ];
        NetworkLink[] links =
        [
            NetworkLink.CheckPipe(
                "check pipe",
                "a",
                "b",
                SiUnits.Length(1),
                SiUnits.Length(0.01),
                SiUnits.Length(1e-6),
                SiUnits.Ratio(1),
                FrictionLaw.SwameeJainCubicPassage
            ),
            NetworkLink.CurvedPipe(
                "coil",
                "a",
                "b",
                SiUnits.Length(1.5),
                SiUnits.Length(0.01),
                SiUnits.Length(1e-6),
                SiUnits.Ratio(0),
                SiUnits.Length(0.4)
            ),
            NetworkLink.Fitting("fitting", "a", "b", SiUnits.Length(0.01), SiUnits.Ratio(0.3)),
            NetworkLink.Filter("filter", "a", "b", flow, loss, SiUnits.Pressure(0)),
            .. pumps.Select((p, i) => NetworkLink.Pump($"pump {i}", "a", "b", p)),
            NetworkLink.BypassRegulator(
                "bypass",
                "b",
                "a",
                regulator.WithSlope(SiUnits.Pressure(1e4), flow).WithReturnInfluence(SiUnits.Ratio(0.04))
            ),
            NetworkLink.ReducingRegulator("reducing", "a", "b", regulator),
            NetworkLink.CheckValve("check", "a", "b", SiUnits.Pressure(1e3), loss, flow),
            NetworkLink.ReliefValve("relief", "b", "a", SiUnits.Pressure(6e5), loss, flow),
            NetworkLink.Orifice("orifice", "b", "space", flow, loss, Backflow.Allowed),
            NetworkLink.CappedOrifice("capped", "b", "space", flow, loss, SiUnits.VolumeFlow(5e-5)),
        ];
        Network network = new(
            SiUnits.Density(740),
            SiUnits.KinematicViscosity(0.7e-6),
            [
                NetworkNode.FixedPressure("a", new GaugePressure(0.0), z),
                NetworkNode
                    .Junction("b", z, SiUnits.VolumeFlow(-1e-6))
                    .AtPlace(SiUnits.Length(1.5), SiUnits.Length(-0.25)),
                NetworkNode.FixedPressure("space", new GaugePressure(-3e4), z),
            ],
            links
        );
        network = network.Under(new(SiUnits.Acceleration(-9), SiUnits.Acceleration(4.5), SiUnits.Acceleration(0)));
        string text = NetworkDocument.Write(network);
        Network back = NetworkDocument.Read(text);
        Assert.Equal(text, NetworkDocument.Write(back));
        Assert.Equal(-9, back.Acceleration.Forward.InSi());
        Assert.Equal(-0.25, back.Nodes[1].Left.InSi());
        Assert.Equal(Enum.GetValues<LinkKind>().Length - 1, links.Select(l => l.Kind).Distinct().Count());
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
        Close.Within(1e-14, 998.2e-6, network.Viscosity.InSi());
        string written = NetworkDocument.Write(network);
        Assert.Contains("\"viscosity\": \"0.99", written, StringComparison.Ordinal);
        Assert.Equal(written, NetworkDocument.Write(NetworkDocument.Read(written)));
    }

    [Theory]
    [InlineData(
        "\"to\": \"end\"",
        "\"to\": \"nowhere\"",
        "$.links",
        "Link 'line' leads to a node 'nowhere', which is not there."
    )]
    [InlineData("\"20 mm\"", "\"0 mm\"", "$.links[0].bore", "Must be finite and greater than zero; it was 0 mm.")]
    [InlineData(
        "\"viscosity\": \"1.002 mPa s\",",
        "",
        "$",
        "Must have exactly one of \"viscosity\", \"kinematicViscosity\"."
    )]
    [InlineData(
        "\"kind\": \"pipe\"",
        "\"kind\": \"tube\"",
        "$.links[0].kind",
        "Must be one of \"pipe\", \"check pipe\", \"curved pipe\", \"fitting\", \"filter\", \"pump\", \"bypass regulator\", \"reducing regulator\", \"check valve\", \"relief valve\", \"orifice\", \"capped orifice\"."
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
        Assert.Equal((path, allowed), (error.Path, error.Allowed));
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
              "kind": "bypass regulator", "name": "r", "from": "tank", "to": "end",
              "regulator": {"setDifferentialPressure": "3 bar", "reference": "0 bar gauge", "fullyOpenLoss": "20 kPa",
                            "fullyOpenFlow": "200 L/h", "slopePressureDifference": "5 kPa"}
            }
            """;
        string text = Text.Replace("\"links\": [", $"\"links\": [{regulator},", StringComparison.Ordinal);
        var error = Assert.Throws<DocumentException>(() => NetworkDocument.Read(text));
        Assert.Equal("$.links[0].regulator", error.Path);
        Assert.Equal("A slope needs both its pressure difference and its flow.", error.Allowed);
    }
}
