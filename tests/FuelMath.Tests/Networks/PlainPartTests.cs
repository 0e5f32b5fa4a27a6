using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Parts by their numbers alone; the expected flows are solved by hand from their laws.</summary>
public sealed class PlainPartTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.4);

    /// <summary>A quarter of the loss at half the flow, and as much more as the fluid is denser.</summary>
    [Theory]
    [InlineData(740, 200)]
    [InlineData(740 * 4, 100)]
    public void Nozzle_InAnotherFluid_GoesWithTheRootOfDensity(double density, double litersPerHour)
    {
        NetworkState state = Across(
            new Nozzle(LitersPerHour(100), Kilopascals(50), Petrol, InjectorDraw.Backflow.Prevented),
            200,
            density,
            0.4
        );

        Close.Within(1e-7, litersPerHour, state.LitersPerHourIn("part"));
    }

    [Theory]
    [InlineData(InjectorDraw.Backflow.Allowed, -100)]
    [InlineData(InjectorDraw.Backflow.Prevented, 0)]
    public void Nozzle_OfAHigherSpace_FlowsBackWhereItMay(InjectorDraw.Backflow backflow, double litersPerHour)
    {
        NetworkState state = Across(new Nozzle(LitersPerHour(100), Kilopascals(50), Petrol, backflow), -50, 740, 0.4);

        Close.Within(1e-7, litersPerHour, state.LitersPerHourIn("part"));
    }

    /// <summary>10 kPa with flow and 40 with its square at 100 L/h: at 180 kPa 2 x 10 + 4 x 40.</summary>
    [Theory]
    [InlineData(740, 0.4, 180, 200)]
    [InlineData(740, 0.8, 200, 200)]
    [InlineData(1480, 0.4, 340, 200)]
    public void PlainFilter_InAnotherFluid_GoesWithViscosityAndDensity(
        double density,
        double viscosity,
        double kilopascals,
        double litersPerHour
    )
    {
        PlainFilter filter = new(LitersPerHour(100), Kilopascals(10), Kilopascals(40), Petrol, Thin);

        Close.Within(1e-7, litersPerHour, Across(filter, kilopascals, density, viscosity).LitersPerHourIn("part"));
    }

    /// <summary>K = 4 of 6 mm: v = sqrt(2 dp / K rho).</summary>
    [Fact]
    public void PlainFitting_LosesByItsCoefficient()
    {
        PlainFitting fitting = new(Length.FromMillimeters(6), Ratio.FromDecimalFractions(4));
        double expected = Math.Sqrt(2 * 37_000 / (4 * 740.0)) * Math.PI / 4 * 36e-6 * 3.6e6;

        Close.Within(1e-7, expected, Across(fitting, 37, 740, 0.4).LitersPerHourIn("part"));
    }

    /// <summary>Laminar, by Hagen and Poiseuille: 128 mu L q / pi d^4.</summary>
    [Fact]
    public void Pipe_Laminar_LosesAsHagenAndPoiseuilleSay()
    {
        Pipe pipe = new(
            Length.FromMeters(2),
            Length.FromMillimeters(4),
            Length.Zero,
            Ratio.Zero,
            Pipe.FrictionLaw.ColebrookStraightPassage
        );
        double expected = 2000 * Math.PI * Math.Pow(4e-3, 4) / (128 * 20e-3 * 2) * 3.6e6;

        Close.Within(1e-7, expected, Across(pipe, 2, 740, 20).LitersPerHourIn("part"));
        Close.Within(1e-7, -expected, Across(pipe, -2, 740, 20).LitersPerHourIn("part"));
        Assert.Equal(Network.LineCondition.Shut, Across(pipe.WithCheckValve(), -2, 740, 20).ConditionOf("part"));
        Close.Within(1e-12, Math.PI / 4 * 16e-6 * 2, pipe.VolumeSi!.Value);
    }

    [Theory]
    [InlineData(20, 0)]
    [InlineData(29.9, 0)]
    [InlineData(130, 200)]
    public void CheckValve_OpensAtItsDifference(double kilopascals, double litersPerHour)
    {
        CheckValve valve = new(Kilopascals(30), Kilopascals(25), LitersPerHour(100), Petrol);

        Close.Within(1e-7, litersPerHour, Across(valve, kilopascals, 740, 0.4).LitersPerHourIn("part"));
    }

    /// <summary>The bypass regulator holds 300 over 20 and rises by 10 at 100 L/h; the reducing one falls by as much.</summary>
    [Fact]
    public void PlainRegulator_HoldsItsSide()
    {
        GaugePressure reference = Gauge(20);
        PlainRegulator bypass = PlainRegulator
            .Bypass(Kilopascals(300), reference, Kilopascals(9), LitersPerHour(200), Petrol)
            .WithSlope(Kilopascals(10), LitersPerHour(100));
        PlainRegulator reducing = PlainRegulator
            .Reducing(Kilopascals(300), reference, Kilopascals(9), LitersPerHour(200), Petrol)
            .WithSlope(Kilopascals(10), LitersPerHour(100));
        Network feeding = new([Fixed("tank", 0), Drawn("rail", -100)], [new Line("regulator", "rail", "tank", bypass)]);
        Network fed = new(
            [Fixed("supply", 500), Drawn("rail", 100)],
            [new Line("regulator", "supply", "rail", reducing)]
        );
        NetworkConditions at = new(Petrol, Thin);

        Close.Within(1e-6, 330, feeding.Solve(at).KilopascalsAt("rail"));
        Close.Within(1e-6, 310, fed.Solve(at).KilopascalsAt("rail"));
        Assert.Throws<InvalidOperationException>(() => reducing.WithReturnInfluence(Ratio.FromPercent(5)));
    }

    [Theory]
    [InlineData(40, 40)]
    [InlineData(0, 0)]
    [InlineData(900, 200)]
    public void InjectorDraw_FollowsItsCommandAsFarAsThePressureSuffices(double commanded, double litersPerHour)
    {
        InjectorDraw draw = new(LitersPerHour(100), Kilopascals(50), Petrol);
        NetworkConditions at = new(Petrol, Thin);
        Network told = Only(draw, 200);
        Network own = Only(draw.WithCommandedFlow(LitersPerHour(commanded)), 200);
        NetworkConditions asked = at.WithCommandedFlow("part", LitersPerHour(commanded));

        Close.Within(1e-7, litersPerHour, told.Solve(asked).LitersPerHourIn("part"));
        Close.Within(1e-7, litersPerHour, told.At(asked).Solve().LitersPerHourIn("part"));
        Close.Within(1e-7, litersPerHour, own.Solve(at).LitersPerHourIn("part"));
        Words.Refused<ArgumentException>("conditions", "'part'", () => told.Solve(at));
        Words.Refused<ArgumentException>("conditions", "'part'", () => own.Solve(asked));
    }

    private static Network Only(FlowPart part, double kilopascals) =>
        new(
            [Fixed("up", kilopascals), Fixed("down", 0)],
            [
                new Line("part", "up", "down", part),
                new Line(
                    "beside",
                    "up",
                    "down",
                    new PlainFitting(Length.FromMillimeters(1), Ratio.FromDecimalFractions(2))
                ),
            ]
        );

    private static NetworkState Across(FlowPart part, double kilopascals, double density, double viscosity) =>
        Only(part, kilopascals)
            .Solve(
                new NetworkConditions(
                    Density.FromKilogramsPerCubicMeter(density),
                    DynamicViscosity.FromMillipascalSeconds(viscosity)
                )
            );
}
