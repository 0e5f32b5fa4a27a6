using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Banks of pumps that differ. u counts 100 L/h, pressures are in kPa: 500 - 100 u and 450 - 50 u.</summary>
public sealed class MixedBankTests
{
    private const double Exact = 1e-8;

    private static readonly PlainPump Steep = Straight(OutsideRange.Refuse, (0, 500), (500, 0));
    private static readonly PlainPump Flat = Straight(OutsideRange.Refuse, (0, 450), (900, 0));

    /// <summary>At a rise p they give 5 - p/100 and 9 - p/50; 100 u = p makes u = 14 - 3 u.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_TwoAbreast_AddsFlows()
    {
        PumpSet bank = PumpSet.InParallel("lift", "tank", "out", [Steep, Flat]);
        NetworkState state = Loaded(bank, 0, 100).Solve();

        Close.Within(Exact, 350, bank.FlowIn(state).LitersPerHour);
        Close.Within(Exact, 350, bank.RiseIn(state).Kilopascals);
        Close.Within(Exact, 150, state.LitersPerHourIn("lift 1"));
        Close.Within(Exact, 200, state.LitersPerHourIn("lift 2"));
        Assert.Empty(bank.Nodes);
    }

    /// <summary>950 - 150 u = 100 u.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_TwoInAChain_AddsRises()
    {
        PumpSet bank = PumpSet.InSeries("lift", "tank", "out", Length.Zero, [Steep, Flat]);
        NetworkState state = Loaded(bank, 0, 100).Solve();

        Close.Within(Exact, 380, bank.FlowIn(state).LitersPerHour);
        Close.Within(Exact, 380, bank.RiseIn(state).Kilopascals);
        Close.Within(Exact, 120, state.KilopascalsAt("lift 1-2"));
    }

    /// <summary>460 + 20 u stands above all that the flat one gives: 500 - 100 u = 460 + 20 u.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Solve_WeakPumpAbreast_IsHeldShut()
    {
        PumpSet bank = PumpSet.InParallel("lift", "tank", "out", [Steep, Flat]);
        NetworkState state = Loaded(bank, 460, 20).Solve();

        Close.Within(Exact, 100.0 / 3, bank.FlowIn(state).LitersPerHour);
        Assert.Equal(Network.LineCondition.Stalled, state.ConditionOf("lift 2"));
    }

    /// <summary>
    /// Pumps of 50 m - 0.1 Q² (L/s) lift water by 15 m through 500 m of 100 mm pipe: the head of two abreast, the heads of
    /// two in a chain, by a general water-network engine. It takes g = 32.2 ft/s² and an explicit friction law, which
    /// makes up to 0.3 % here.
    /// </summary>
    [Theory]
    [InlineData(false, 41.440777)]
    [InlineData(true, 38.759293)]
    [Trait("Source", "Rossman-2020")]
    public void Solve_WaterPumps_AgreeWithTheEngine(bool isSeries, double head)
    {
        const double Density = 998.2;
        double meter = Density * Hydrostatics.StandardGravity;
        PlainPump pump = PlainPump.Power(
            Pressure.FromPascals(50 * meter),
            new(VolumeFlow.FromLitersPerSecond(10), Pressure.FromPascals(40 * meter)),
            Ratio.FromDecimalFractions(2)
        );
        PumpSet bank = isSeries
            ? PumpSet.InSeries("lift", "low", "out", Length.FromMeters(10), [pump, pump])
            : PumpSet.InParallel("lift", "low", "out", [pump, pump]);
        NetworkState state = OwnLine
            .Network(
                UnitsNet.Density.FromKilogramsPerCubicMeter(Density),
                KinematicViscosity.FromSquareMetersPerSecond(1.0219e-6),
                [Fixed("low", 0, 10), Junction("out", 10), Fixed("high", 0, 25), .. bank.Nodes],
                [
                    OwnLine.Pipe(
                        "pipe",
                        "out",
                        "high",
                        Length.FromMeters(500),
                        Length.FromMillimeters(100),
                        Length.FromMillimeters(0.05),
                        Ratio.Zero,
                        Pipe.FrictionLaw.ColebrookStraightPassage
                    ),
                    .. bank.Lines.Select(OwnLine.Of),
                ]
            )
            .Solve();

        Close.Within(0.003, head, bank.RiseIn(state).Pascals / meter);
    }

    [Fact]
    public void Bank_OfNone_IsRefused()
    {
        const string Reason = "Must be from 1 to 16; it was 0.";

        Words.Refused<ArgumentOutOfRangeException>("pumps", Reason, () => PumpSet.InParallel("lift", "a", "b", []));
        Words.Refused<ArgumentOutOfRangeException>(
            "pumps",
            Reason,
            () => PumpSet.InSeries("lift", "a", "b", Length.Zero, [])
        );
    }

    private static Network Loaded(PumpSet bank, double lift, double loss) =>
        Fuel([
            Fixed("tank", 0),
            Junction("out"),
            Fixed("high", lift),
            Linear("line", "out", "high", loss),
            .. bank.Nodes,
            .. bank.Lines.Select(OwnLine.Of),
        ]);
}
