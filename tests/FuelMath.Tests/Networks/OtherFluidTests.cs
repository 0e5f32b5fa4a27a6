using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// A network solved with another fluid is the network built in that fluid: losses of viscosity times the ratio of
/// viscosities, those of inertia times the ratio of densities, flows through an opening by the root of it.
/// </summary>
[Trait("Source", "Definition")]
public sealed class OtherFluidTests
{
    private const double Exact = 1e-8;
    private const double Own = 740;
    private const double Other = 1000;
    private static readonly DynamicViscosity OwnViscosity = DynamicViscosity.FromMillipascalSeconds(0.4);
    private static readonly DynamicViscosity OtherViscosity = DynamicViscosity.FromMillipascalSeconds(1.0);

    public static TheoryData<OwnKind> Kinds => [.. Enum.GetValues<OwnKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryKind_InAnotherFluid_IsThatBuiltInIt(OwnKind kind)
    {
        Network own = Built(kind, Own, OwnViscosity);
        double built = Flow(Built(kind, Other, OtherViscosity).Solve());
        Network.Buffer buffer = new(own);
        buffer.SetFluid(Density.FromKilogramsPerCubicMeter(Other), OtherViscosity);
        own.Solve(buffer);
        NetworkBatch batch = new NetworkBatch(own, 2).WithFluid(
            [Density.FromKilogramsPerCubicMeter(Own), Density.FromKilogramsPerCubicMeter(Other)],
            [OwnViscosity, OtherViscosity]
        );

        Close.Within(Exact, built, Flow(buffer.ToState()));
        Close.Within(Exact, built, Flow(batch.StateAt(1)));
        Close.Within(Exact, Flow(own.Solve()), Flow(batch.StateAt(0)));
        Assert.True(Math.Abs(Flow(own.Solve()) - built) > 0.01 * built, "the fluid makes no difference");
        buffer.Reset();
        own.Solve(buffer);
        Close.Within(Exact, Flow(own.Solve()), Flow(buffer.ToState()));
    }

    /// <summary>36 L/h at 740 kg/m3 are 36 sqrt(0.74) = 30.97 at 1000.</summary>
    [Fact]
    public void Orifice_InAnotherFluid_FollowsTheRootOfDensity()
    {
        Network network = Fuel(
            Fixed("rail", 300),
            Fixed("space", 0),
            OwnLine.Orifice(
                "jet",
                "rail",
                "space",
                LitersPerHour(36),
                Kilopascals(300),
                InjectorDraw.Backflow.Prevented
            )
        );
        Network.Buffer buffer = new(network);
        buffer.SetFluid(Density.FromKilogramsPerCubicMeter(1000), OwnViscosity);
        network.Solve(buffer);

        Close.Within(1e-9, 36 * Math.Sqrt(0.74), buffer.FlowIn("jet").LitersPerHour);
    }

    /// <summary>Injectors set for each point count in the network's own fluid, whichever is set first.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Injectors_SetInAnotherFluid_FollowTheRootOfDensity(bool fluidFirst)
    {
        NetworkBatch batch = new(
            Fuel(Fixed("rail", 300), Fixed("space", 0), Injector("injectors", "rail", "space", 10, 5)),
            1
        );
        NetworkBatch Fluid(NetworkBatch b) => b.WithFluid([Density.FromKilogramsPerCubicMeter(1000)], [OwnViscosity]);
        NetworkBatch Injectors(NetworkBatch b) =>
            b.WithInjectors("injectors", [LitersPerHour(36)], Kilopascals(300), [LitersPerHour(100)]);

        NetworkState state = (fluidFirst ? Injectors(Fluid(batch)) : Fluid(Injectors(batch))).StateAt(0);

        Close.Within(1e-9, 36 * Math.Sqrt(0.74), state.LitersPerHourIn("injectors"));
    }

    private static double Flow(NetworkState state) => state.LitersPerHourIn("load");

    /// <summary>A load that every fluid knows, and a link of the kind whose given numbers are carried over by hand.</summary>
    private static Network Built(OwnKind kind, double density, DynamicViscosity viscosity) =>
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(density),
            viscosity,
            [Fixed("supply", 400), Fixed("sink", 20), Junction("mid")],
            [
                OwnLine.Fitting("load", "supply", "mid", Length.FromMillimeters(4), Ratio.FromDecimalFractions(3)),
                Link(kind, density / Own, viscosity / OwnViscosity),
            ]
        );

    private static OwnLine Link(OwnKind kind, double rho, double mu) =>
        kind switch
        {
            OwnKind.Pipe => Hose("link", "mid", "sink", 5, 5),
            OwnKind.CheckPipe => OwnLine.CheckPipe(
                "link",
                "mid",
                "sink",
                Length.FromMeters(5),
                Length.FromMillimeters(5),
                Length.Zero,
                Ratio.Zero,
                Pipe.FrictionLaw.SwameeJainCubicPassage
            ),
            OwnKind.CurvedPipe => OwnLine.CurvedPipe(
                "link",
                "mid",
                "sink",
                Length.FromMeters(50),
                Length.FromMillimeters(5),
                Length.Zero,
                Ratio.Zero,
                Length.FromMillimeters(1400)
            ),
            OwnKind.Fitting => OwnLine.Fitting(
                "link",
                "mid",
                "sink",
                Length.FromMillimeters(4),
                Ratio.FromDecimalFractions(5)
            ),
            OwnKind.Filter => OwnLine.Filter(
                "link",
                "mid",
                "sink",
                LitersPerHour(100),
                Kilopascals(100 * mu),
                Kilopascals(30 * rho)
            ),
            OwnKind.Pump => OwnLine.Pump("link", "mid", "sink", Straight(OutsideRange.Extend, (0, 300), (900, 100))),
            OwnKind.BypassRegulator => OwnLine.BypassRegulator("link", "mid", "sink", Regulator(5, rho)),
            OwnKind.ReducingRegulator => OwnLine.ReducingRegulator("link", "mid", "sink", Regulator(395, rho)),
            OwnKind.CheckValve => Valve(OwnLine.CheckValve, rho),
            OwnKind.Nozzle => OwnLine.Orifice(
                "link",
                "mid",
                "sink",
                LitersPerHour(100 / Math.Sqrt(rho)),
                Kilopascals(300),
                InjectorDraw.Backflow.Allowed
            ),
            OwnKind.InjectorDraw => Injector("link", "mid", "sink", 100 / Math.Sqrt(rho), 500),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private static OwnRegulator Regulator(double set, double rho) =>
        new(Kilopascals(set), Gauge(0), Kilopascals(50 * rho), LitersPerHour(100));

    private static OwnLine Valve(
        Func<string, string, string, Pressure, Pressure, VolumeFlow, OwnLine> make,
        double rho
    ) => make("link", "mid", "sink", Kilopascals(30), Kilopascals(50 * rho), LitersPerHour(100));
}
