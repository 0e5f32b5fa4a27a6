using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>The loss that the working of a part ends in, by hand; it falls the same way as the flow that it is asked at.</summary>
public sealed class PartLossTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.4);

    /// <summary>10 kPa with flow and 40 with its square at 100 L/h, in a fluid twice as viscous and four times as dense.</summary>
    [Theory]
    [InlineData(100, 740, 0.4, 50)]
    [InlineData(-100, 740, 0.4, -50)]
    [InlineData(200, 740, 0.4, 180)]
    [InlineData(100, 740, 0.8, 60)]
    [InlineData(-50, 2960, 0.4, -45)]
    public void Filter_LosesByBoth(double litersPerHour, double density, double viscosity, double kilopascals) =>
        Close.Within(
            1e-12,
            kilopascals,
            Loss(
                new PlainFilter(LitersPerHour(100), Kilopascals(10), Kilopascals(40), Petrol, Thin),
                litersPerHour,
                density,
                viscosity
            )
        );

    /// <summary>One of its two losses may be missing.</summary>
    [Theory]
    [InlineData(10, 0, 20)]
    [InlineData(0, 10, 40)]
    public void Filter_OfOneKind_LosesByThat(double linear, double square, double kilopascals) =>
        Close.Within(
            1e-12,
            kilopascals,
            Loss(
                new PlainFilter(LitersPerHour(100), Kilopascals(linear), Kilopascals(square), Petrol, Thin),
                200,
                740,
                0.4
            )
        );

    /// <summary>A check valve needs its opening pressure besides, and only that where nothing is to flow.</summary>
    [Theory]
    [InlineData(0, 5)]
    [InlineData(100, 15)]
    [InlineData(200, 45)]
    public void CheckValve_LosesBeyondItsOpening(double litersPerHour, double kilopascals) =>
        Close.Within(
            1e-12,
            kilopascals,
            Loss(new CheckValve(Kilopascals(5), Kilopascals(10), LitersPerHour(100), Petrol), litersPerHour, 740, 0.4)
        );

    /// <summary>What opens into a space has no loss that could be worked out: what it flows follows from both pressures.</summary>
    [Fact]
    public void Nozzle_HasNoWorking() =>
        Assert.Null(
            Working(
                new Nozzle(LitersPerHour(100), Kilopascals(50), Petrol, InjectorDraw.Backflow.Allowed),
                100,
                740,
                0.4
            )
        );

    /// <summary>A pipe of Hagen and Poiseuille: 128 mu L q / pi d⁴; the other friction law has no working.</summary>
    [Fact]
    public void Pipe_Laminar_LosesByViscosity()
    {
        Pipe Of(Pipe.FrictionLaw law) =>
            new(Length.FromMeters(2), Length.FromMillimeters(4), Length.Zero, Ratio.Zero, law);
        double expected = 128 * 20e-3 * 2 * (10 / 3.6e6) / (Math.PI * Math.Pow(4e-3, 4)) / 1e3;

        Close.Within(1e-9, expected, Loss(Of(Pipe.FrictionLaw.ColebrookStraightPassage), 10, 740, 20));
        Assert.Null(Working(Of(Pipe.FrictionLaw.SwameeJainCubicPassage), 10, 740, 20));
    }

    /// <summary>A coil loses more than the same pipe straight, the more the tighter it is.</summary>
    [Fact]
    public void CurvedPipe_LosesMoreThanStraight()
    {
        Pipe straight = new(
            Length.FromMeters(2),
            Length.FromMillimeters(4),
            Length.Zero,
            Ratio.Zero,
            Pipe.FrictionLaw.ColebrookStraightPassage
        );
        CurvedPipe Coil(double millimeters) =>
            new(straight.Length, straight.Bore, Length.Zero, Ratio.Zero, Length.FromMillimeters(millimeters));

        double plain = Loss(straight, 100, 740, 20);
        Assert.True(Loss(Coil(70), 100, 740, 20) > 1.01 * Loss(Coil(700), 100, 740, 20));
        Assert.True(Loss(Coil(700), 100, 740, 20) >= plain);
        NetworkState state = new Network(
            [Network.Node.Junction("in", Length.Zero, LitersPerHour(-100)), Fixed("out", 0)],
            [new Line("coil", "in", "out", Coil(70))]
        )
            .At(new NetworkConditions(Petrol, DynamicViscosity.FromMillipascalSeconds(20)))
            .Solve();
        Close.Within(1e-9, state.KilopascalsAt("in"), Loss(Coil(70), 100, 740, 20));
    }

    /// <summary>
    /// A pump between points (0, 500), (60, 440) and (100, 300): straight ones by hand, on pieces, at points, and beyond both
    /// ends; it gains what others lose.
    /// </summary>
    [Theory]
    [InlineData(0, 500)]
    [InlineData(30, 470)]
    [InlineData(60, 440)]
    [InlineData(80, 370)]
    [InlineData(100, 300)]
    [InlineData(110, 265)]
    [InlineData(-10, 510)]
    public void Pump_BetweenPoints_RisesByTheLine(double litersPerHour, double kilopascals) =>
        Close.Within(
            1e-12,
            -kilopascals,
            Loss(Straight(OutsideRange.Extend, (0, 500), (60, 440), (100, 300)), litersPerHour, 740, 0.4)
        );

    /// <summary>A smooth curve through points of a parabola with its own slopes: what the network says at that flow.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    [InlineData(50)]
    [InlineData(75)]
    [InlineData(95)]
    public void SmoothPump_RisesAsInTheNetwork(double litersPerHour)
    {
        PlainPump pump = PlainPump.Smooth(
            [Point(0, 500), Point(40, 470), Point(70, 380), Point(100, 220)],
            OutsideRange.Refuse
        );
        NetworkState state = new Network(
            [Fixed("tank", 0), Network.Node.Junction("rail", Length.Zero, LitersPerHour(litersPerHour))],
            [new Line("pump", "tank", "rail", pump)]
        )
            .At(new NetworkConditions(Petrol, Thin))
            .Solve();

        Close.Within(1e-9, -state.KilopascalsAt("rail"), Loss(pump, litersPerHour, 740, 0.4));
        double[] settings = new double[pump.Law.SettingCount];
        pump.Law.Write(settings);
        Close.Within(1e-12, Loss(pump, litersPerHour, 740, 0.4), Loss(pump, litersPerHour, 740, 0.4, settings));
        // Of two in series at 80 % of the speed, the settings say what the description does not.
        PlainPump other = pump.AtSpeed(Ratio.FromPercent(80)).InSeries(2);
        double[] others = new double[other.Law.SettingCount];
        other.Law.Write(others);
        Close.Within(1e-12, Loss(other, litersPerHour / 2, 740, 0.4), Loss(pump, litersPerHour / 2, 740, 0.4, others));
        Assert.NotEqual(Loss(other, litersPerHour / 2, 740, 0.4), Loss(pump, litersPerHour / 2, 740, 0.4), 1.0);
    }

    private static double Loss(
        FlowPart part,
        double litersPerHour,
        double density,
        double viscosity,
        double[]? settings = null
    ) => Working(part, litersPerHour, density, viscosity, settings)!.Value / 1e3;

    private static double? Working(
        FlowPart part,
        double litersPerHour,
        double density,
        double millipascalSeconds,
        double[]? settings = null
    ) =>
        part
            .Law.LossWorking(
                new LossInputs
                {
                    Flow = Traced.Input(new Symbol("Q", "m3/s", "flow"), litersPerHour / 3.6e6),
                    Density = Traced.Input(new Symbol("rho", "kg/m3", "density"), density),
                    Viscosity = Traced.Input(new Symbol("mu", "Pa s", "viscosity"), millipascalSeconds / 1e3),
                    Settings = settings ?? [],
                }
            )
            ?.Value;
}
