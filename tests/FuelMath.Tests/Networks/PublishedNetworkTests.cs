using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Problems of textbooks and of a water-network engine, in their own sizes.</summary>
public sealed class PublishedNetworkTests
{
    private const double Foot = 0.3048;
    private static readonly double CubicFoot = Math.Pow(Foot, 3);

    /// <summary>
    /// Examples 6.16 and 6.17: three pipes and a loss of 20.3 m, water of 1.02 mm2/s. The book prints 10.2, 62.5, 25.9, 11.4
    /// and 99.8 m3/h after a few steps by hand: half a percent.
    /// </summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_ThreePipesInSeriesAndParallel_GivesTheBooksFlows()
    {
        double loss = 998 * 9.81 * 20.3;
        OwnLine[] InSeries = [Pipe("1", "a", "b"), Pipe("2", "b", "c"), Pipe("3", "c", "d")];
        OwnLine[] inParallel = [Pipe("1", "a", "d"), Pipe("2", "a", "d"), Pipe("3", "a", "d")];

        NetworkState series = Water(1.02, [Fixed("a", loss), Junction("b"), Junction("c"), Fixed("d", 0)], InSeries)
            .Solve();
        NetworkState parallel = Water(1.02, [Fixed("a", loss), Fixed("d", 0)], inParallel).Solve();

        double[] flows = [.. "123".Select(n => parallel.FlowIn(n.ToString()).CubicMetersPerHour)];
        Close.Within(0.005, 10.2, series.FlowIn("2").CubicMetersPerHour);
        Close.Within(0.005, 62.5, flows[0]);
        Close.Within(0.005, 25.9, flows[1]);
        Close.Within(0.005, 11.4, flows[2]);
        Close.Within(0.005, 99.8, flows.Sum());

        static OwnLine Pipe(string name, string from, string to) =>
            name switch
            {
                "1" => PublishedNetworkTests.Pipe(name, from, to, 100, 80, 0.24),
                "2" => PublishedNetworkTests.Pipe(name, from, to, 150, 60, 0.12),
                _ => PublishedNetworkTests.Pipe(name, from, to, 80, 40, 0.20),
            };
    }

    /// <summary>
    /// A homework problem in feet: pump 365 - 20 Q2, lift 290, 90 ft of 10 in with f = 0.022 and 4900 ft of 8 in with
    /// f = 0.028, g = 32.2 ft/s2. Its own equations solved by hand to six digits.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 1.27204, 332.638)]
    [InlineData(1, 2, 2.57515, 464.743)]
    [InlineData(2, 1, 1.54670, 353.039)]
    [Trait("Source", "Homework-pump")]
    public void Solve_TextbookPump_MeetsItsSystem(int abreast, int inSeries, double flow, double head)
    {
        double Feet(double of) => 998 * 32.2 * Foot * Foot * of;
        PlainPump pump = PlainPump.Power(
            Pressure.FromPascals(Feet(365)),
            new(VolumeFlow.FromCubicMetersPerSecond(CubicFoot), Pressure.FromPascals(Feet(345))),
            Ratio.FromDecimalFractions(2)
        );
        List<Network.Node> nodes = [Fixed("low", 0), Junction("out"), Junction("middle"), Fixed("high", Feet(290))];
        List<OwnLine> links =
        [
            OwnLine.Fitting(
                "10 in",
                "out",
                "middle",
                Length.FromInches(10),
                Ratio.FromDecimalFractions(0.022 * 90 * 12 / 10)
            ),
            OwnLine.Fitting(
                "8 in",
                "middle",
                "high",
                Length.FromInches(8),
                Ratio.FromDecimalFractions(0.028 * 4900 * 12 / 8)
            ),
        ];
        for (int i = 0; i < abreast; i++)
        {
            links.Add(OwnLine.Pump($"pump {i}", "low", inSeries == 2 ? "between" : "out", pump));
        }

        if (inSeries == 2)
        {
            nodes.Add(Junction("between"));
            links.Add(OwnLine.Pump("second", "between", "out", pump));
        }

        NetworkState state = Water(1, nodes, links).Solve();

        Close.Within(1e-5, flow, state.FlowIn("8 in").CubicMetersPerSecond / CubicFoot);
        Close.Within(1e-5, head, state.PressureAt("out").AboveAmbient.Pascals / Feet(1));
    }

    /// <summary>
    /// Pump 50 - 0.1 Q2 (m, L/s) from a level of 10 m to one of 25 m through 500 m of 100 mm pipe, roughness 0.05 mm. The
    /// engine's g is 32.2 ft/s2 and its constants have four digits: a thousandth.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 13.975254)]
    [InlineData(2, 1, 18.5032)]
    [InlineData(1, 2, 17.4987)]
    [Trait("Source", "Rossman-2020")]
    public void Solve_PumpsAloneAbreastAndInSeries_EqualTheEngine(int abreast, int inSeries, double flow) =>
        Close.Within(
            1e-3,
            flow,
            Lift(abreast, inSeries, FuelMath.Pipe.FrictionLaw.SwameeJainCubicPassage, 32.2 * Foot)
        );

    /// <summary>The same with Colebrook and White and g = 9.80665, by a root finder to six digits.</summary>
    [Fact]
    [Trait("Source", "SciPy")]
    public void Solve_OnePump_EqualsTheRootFinder() =>
        Close.Within(1e-5, 13.9908, Lift(1, 1, FuelMath.Pipe.FrictionLaw.ColebrookStraightPassage, 9.80665));

    /// <summary>3 m of 8.738 mm hose under heads of 2 m (turbulent) and 12 mm (Re 2218, in the passage), by the engine.</summary>
    [Theory]
    [InlineData(2, 7.929540)]
    [InlineData(0.012, 0.547866)]
    [Trait("Source", "Rossman-2020")]
    public void Solve_FuelHose_EqualsTheEngine(double head, double litersPerMinute)
    {
        Network network = Water(
            0.6,
            [Fixed("a", 998 * 32.2 * Foot * head), Fixed("b", 0)],
            [
                OwnLine.Pipe(
                    "hose",
                    "a",
                    "b",
                    Length.FromMeters(3),
                    Length.FromMillimeters(8.738),
                    Length.FromMillimeters(0.0015),
                    Ratio.Zero,
                    FuelMath.Pipe.FrictionLaw.SwameeJainCubicPassage
                ),
            ]
        );

        Close.Within(1e-3, litersPerMinute, network.Solve().FlowIn("hose").LitersPerMinute);
    }

    /// <summary>Liters per second through the pipe.</summary>
    private static double Lift(int abreast, int inSeries, Pipe.FrictionLaw friction, double g)
    {
        double Meters(double of) => 998 * g * of;
        PlainPump pump = PlainPump.PowerThrough(
            Pressure.FromPascals(Meters(50)),
            new(VolumeFlow.FromLitersPerSecond(10), Pressure.FromPascals(Meters(40))),
            new(VolumeFlow.FromLitersPerSecond(20), Pressure.FromPascals(Meters(10)))
        );
        List<Network.Node> nodes = [Fixed("low", Meters(10)), Junction("out"), Fixed("high", Meters(25))];
        List<OwnLine> links =
        [
            OwnLine.Pipe(
                "pipe",
                "out",
                "high",
                Length.FromMeters(500),
                Length.FromMillimeters(100),
                Length.FromMillimeters(0.05),
                Ratio.Zero,
                friction
            ),
        ];
        for (int i = 0; i < abreast; i++)
        {
            links.Add(OwnLine.Pump($"pump {i}", "low", inSeries == 2 ? "between" : "out", pump));
        }

        if (inSeries == 2)
        {
            nodes.Add(Junction("between"));
            links.Add(OwnLine.Pump("second", "between", "out", pump));
        }

        return Water(1.0219, nodes, links).Solve().FlowIn("pipe").LitersPerSecond;
    }

    private static OwnLine Pipe(string name, string from, string to, double meters, double bore, double roughness) =>
        OwnLine.Pipe(
            name,
            from,
            to,
            Length.FromMeters(meters),
            Length.FromMillimeters(bore),
            Length.FromMillimeters(roughness),
            Ratio.Zero,
            FuelMath.Pipe.FrictionLaw.ColebrookStraightPassage
        );

    private static Network Water(double centistokes, IEnumerable<Network.Node> nodes, IEnumerable<OwnLine> links) =>
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(998),
            KinematicViscosity.FromCentistokes(centistokes),
            nodes,
            links
        );

    private static Network.Node Fixed(string name, double pascals) =>
        Network.Node.FixedPressure(name, new GaugePressure(Pressure.FromPascals(pascals)), Length.Zero);

    private static Network.Node Junction(string name) => Network.Node.Junction(name, Length.Zero);
}
