using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What each part is, apart from its law: what lets fuel through freely, what traps it, and where that may leak.</summary>
public sealed class PartNatureTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.4);

    private static readonly Pipe Plain = new(
        Length.FromMeters(1),
        Length.FromMillimeters(6),
        Length.Zero,
        Ratio.Zero,
        Pipe.FrictionLaw.ColebrookStraightPassage
    );

    private static readonly PlainPump Pump = Straight(OutsideRange.Refuse, (0, 500), (100, 0));

    private static readonly Dictionary<string, FlowPart> Parts = new()
    {
        ["pipe"] = Plain,
        ["pipe with a check valve"] = Plain.WithCheckValve(),
        ["curved pipe"] = new CurvedPipe(
            Length.FromMeters(1),
            Length.FromMillimeters(6),
            Length.Zero,
            Ratio.Zero,
            Length.FromMillimeters(200)
        ),
        ["fitting"] = new PlainFitting(Length.FromMillimeters(6), Ratio.FromDecimalFractions(2)),
        ["filter"] = new PlainFilter(LitersPerHour(100), Kilopascals(10), Kilopascals(5), Petrol, Thin),
        ["check valve"] = new CheckValve(Kilopascals(5), Kilopascals(10), LitersPerHour(100), Petrol),
        ["nozzle"] = new Nozzle(LitersPerHour(100), Kilopascals(300), Petrol, InjectorDraw.Backflow.Prevented),
        ["injector"] = new InjectorDraw(LitersPerHour(100), Kilopascals(300), Petrol),
        ["pump"] = Pump,
        ["stopped pump"] = new StoppedPump(Pump),
        ["bypass regulator"] = Regulator(PlainRegulator.Bypass),
        ["reducing regulator"] = Regulator(PlainRegulator.Reducing),
    };

    /// <summary>A passage only loses pressure; what has a spring, a seat or a pump in it is none.</summary>
    [Theory]
    [InlineData("pipe", true)]
    [InlineData("pipe with a check valve", false)]
    [InlineData("curved pipe", true)]
    [InlineData("fitting", true)]
    [InlineData("filter", true)]
    [InlineData("check valve", false)]
    [InlineData("nozzle", false)]
    [InlineData("injector", false)]
    [InlineData("pump", false)]
    [InlineData("stopped pump", false)]
    [InlineData("bypass regulator", false)]
    [InlineData("reducing regulator", false)]
    public void IsPassage_IsWhatOnlyLoses(string part, bool expected) => Assert.Equal(expected, Parts[part].IsPassage);

    /// <summary>When pumps stop, pressure stands behind check valves, seats that shut and shut injectors; nowhere else.</summary>
    [Theory]
    [InlineData("pipe", false)]
    [InlineData("pipe with a check valve", true)]
    [InlineData("curved pipe", false)]
    [InlineData("fitting", false)]
    [InlineData("filter", false)]
    [InlineData("check valve", true)]
    [InlineData("nozzle", false)]
    [InlineData("injector", true)]
    [InlineData("pump", true)]
    [InlineData("stopped pump", true)]
    [InlineData("bypass regulator", true)]
    [InlineData("reducing regulator", false)]
    public void ShutsIn_IsWhatTrapsPressure(string part, bool expected) => Assert.Equal(expected, Parts[part].ShutsIn);

    /// <summary>Trapped pressure may leave through a valve that is worn, a seat, or a diaphragm.</summary>
    [Theory]
    [InlineData("pipe", (int)LeakPlaces.None)]
    [InlineData("filter", (int)LeakPlaces.None)]
    [InlineData("pipe with a check valve", (int)LeakPlaces.CheckValve)]
    [InlineData("check valve", (int)LeakPlaces.CheckValve)]
    [InlineData("pump", (int)LeakPlaces.CheckValve)]
    [InlineData("stopped pump", (int)LeakPlaces.CheckValve)]
    [InlineData("bypass regulator", (int)(LeakPlaces.BypassSeat | LeakPlaces.Diaphragm))]
    [InlineData("reducing regulator", (int)LeakPlaces.Diaphragm)]
    public void LeakPlaces_AreWhereItMayLeak(string part, int expected) =>
        Assert.Equal((LeakPlaces)expected, Parts[part].LeakPlaces);

    [Fact]
    public void IsPump_IsRunningOrStopped() =>
        Assert.Equal(["pump", "stopped pump"], Parts.Where(p => p.Value.IsPump).Select(p => p.Key));

    /// <summary>Parts by numbers alone stand in networks; a fuel system has the described ones in their place.</summary>
    [Theory]
    [InlineData("pump", "Pump")]
    [InlineData("injector", "InjectorStage")]
    [InlineData("bypass regulator", "BypassRegulator")]
    [InlineData("reducing regulator", "ReducingRegulator")]
    public void KindInSystem_NamesTheDescribedPart(string part, string expected) =>
        Assert.Equal(expected, Assert.Single(Parts[part].KindInSystem));

    /// <summary>What stands still lets nothing through, in either direction.</summary>
    [Fact]
    public void StoppedPump_LetsNothingBack()
    {
        Assert.True(new StoppedPump(Pump).Law.IsOneWay);
        Network network = new(
            [Fixed("a", 0), Fixed("b", 300)],
            [new Line("pump", "a", "b", new StoppedPump(Pump)), new Line("hose", "a", "b", Plain)]
        );
        NetworkState state = network.At(new NetworkConditions(Petrol, Thin)).Solve();

        Assert.Equal(0, state.LitersPerHourIn("pump"));
        Assert.Equal(Network.LineCondition.Stopped, state.ConditionOf("pump"));
    }

    [Fact]
    public void Text_OfParts_SaysWhichTheyAre()
    {
        Assert.Equal("bypass, 300 kPa", Parts["bypass regulator"].ToString());
        Assert.Equal("reducing, 300 kPa", Parts["reducing regulator"].ToString());
        Assert.Equal("no node", default(Network.NodeHandle).ToString());
        Network network = Fuel(Fixed("a", 10), Fixed("b", 0), Linear("line", "a", "b", 10));
        Assert.Equal("b", network.FindNode("b").ToString());
        Assert.EndsWith(", stable", Assert.Single(network.SolveAll()).ToString(), StringComparison.Ordinal);
    }

    /// <summary>A switch says what it watches, also where that has no name.</summary>
    [Fact]
    public void Text_OfASwitch_SaysWhatItWatches()
    {
        PumpSwitch rail = PumpSwitch.PressureBelow("rail", Gauge(300), Gauge(400), wasRunning: true);
        PumpSwitch draw = PumpSwitch.TotalDrawAbove(LitersPerHour(100), LitersPerHour(50), wasRunning: true);

        Assert.Equal("the pressure at 'rail': was running", rail.ToString());
        Assert.Equal("the pressure at 'rail': was not running", rail.After(wasRunning: false).ToString());
        Assert.Equal("the total draw: was running", draw.ToString());
        Assert.Equal(
            "the pressure in the manifold: was not running",
            PumpSwitch.ManifoldAbove(Gauge(50), Gauge(20), wasRunning: false).ToString()
        );
    }

    private static PlainRegulator Regulator(
        Func<Pressure, GaugePressure, Pressure, VolumeFlow, Density, PlainRegulator> make
    ) => make(Kilopascals(300), Gauge(0), Kilopascals(10), LitersPerHour(100), Petrol);
}
