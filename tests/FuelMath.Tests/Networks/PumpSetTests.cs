using FsCheck.Xunit;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>Banks of equal pumps: as one part they do what the same pumps do as links of their own.</summary>
public sealed class PumpBankTests
{
    private const double CubicFoot = 0.3048 * 0.3048 * 0.3048;

    /// <summary>
    /// A homework problem in feet: pump 365 - 20 Q2, lift 290 ft, losses 26.3508 Q2. Its own equations solved by hand to
    /// six digits: flow in ft3/s, head of the bank in feet.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 1.27204, 332.638)]
    [InlineData(1, 2, 2.57515, 464.743)]
    [InlineData(2, 1, 1.54670, 353.039)]
    [Trait("Source", "Homework-pump")]
    public void Solve_TextbookBank_MeetsItsSystem(int abreast, int inSeries, double flow, double head)
    {
        // One foot of head counts as one kilopascal: the problem has no other pressure.
        VolumeFlow one = VolumeFlow.FromCubicMetersPerSecond(CubicFoot);
        PlainPump pump = PlainPump.Power(Kilopascals(365), new(one, Kilopascals(345)), Ratio.FromDecimalFractions(2));
        NetworkState state = Fuel(
                Fixed("low", 0),
                Junction("out"),
                Fixed("high", 290),
                OwnLine.Pump("bank", "low", "out", pump.InParallel(abreast).InSeries(inSeries)),
                OwnLine.Filter("line", "out", "high", one, Pressure.Zero, Kilopascals(26.3508))
            )
            .Solve();

        Close.Within(1e-5, flow, state.FlowIn("bank").CubicMetersPerSecond / CubicFoot);
        Close.Within(1e-5, head, state.KilopascalsAt("out"));
    }

    /// <summary>The solver leaves a billionth on both sides.</summary>
    [Property]
    public void Solve_Bank_EqualsItsPumpsAsLinks(byte kind, byte abreast, byte inSeries, byte load)
    {
        PlainPump pump = (kind % 3) switch
        {
            0 => Straight(OutsideRange.Extend, (0, 500), (100, 450), (250, 100)),
            1 => PlainPump.Smooth([Point(0, 500), Point(100, 450), Point(250, 100)], OutsideRange.Extend),
            _ => PlainPump.Power(Kilopascals(500), Point(200, 300), Ratio.FromDecimalFractions(1.7)),
        };
        (int m, int n) = (1 + (abreast % 4), 1 + (inSeries % 3));
        OwnLine line = OwnLine.Filter("line", "out", "tank", LitersPerHour(100), Pressure.Zero, Kilopascals(1 + load));
        List<object> apart = [Fixed("tank", 0), Junction("out"), line];
        for (int i = 0; i < m; i++)
        {
            for (int j = 0; j < n; j++)
            {
                string from = j == 0 ? "tank" : $"{i} {j}";
                string to = j == n - 1 ? "out" : $"{i} {j + 1}";
                apart.Add(OwnLine.Pump($"pump {i} {j}", from, to, pump));
                if (j > 0)
                {
                    apart.Add(Junction(from));
                }
            }
        }

        NetworkState bank = Fuel(
                Fixed("tank", 0),
                Junction("out"),
                line,
                OwnLine.Pump("bank", "tank", "out", pump.InSeries(n).InParallel(m))
            )
            .Solve();
        NetworkState links = Fuel([.. apart]).Solve();

        Close.Within(1e-8, links.LitersPerHourIn("line"), bank.LitersPerHourIn("bank"));
        Close.Within(1e-8, links.KilopascalsAt("out"), bank.KilopascalsAt("out"));
    }

    /// <summary>Twice 100 L/h is where the data of two pumps end.</summary>
    [Fact]
    public void Solve_BankBeyondItsData_IsRefusedWithTheBanksRange() =>
        Words.OutsideTable(
            "'bank', 0, 200",
            () =>
                Fuel(
                        Fixed("tank", 0),
                        Junction("out"),
                        OwnLine.Pump(
                            "bank",
                            "tank",
                            "out",
                            Straight(OutsideRange.Refuse, (0, 500), (100, 300)).InParallel(2)
                        ),
                        Linear("line", "out", "tank", 10)
                    )
                    .Solve()
        );

    /// <summary>One pump of two stands against 400 kPa from its neighbor: its check valve holds.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Solve_WeakPumpAbreast_IsHeldShut()
    {
        NetworkState state = Fuel(
                Fixed("tank", 0),
                Junction("out"),
                OwnLine.Pump("strong", "tank", "out", Straight(OutsideRange.Refuse, (0, 500), (200, 300))),
                OwnLine.Pump("weak", "tank", "out", Straight(OutsideRange.Refuse, (0, 350), (200, 100))),
                Linear("line", "out", "tank", 400)
            )
            .Solve();

        // 500 - 100 u = 400 u.
        Close.Within(1e-8, 100, state.LitersPerHourIn("line"));
        Assert.Equal(Network.LineCondition.Stalled, state.ConditionOf("weak"));
        Assert.Equal(Network.LineCondition.Running, state.ConditionOf("strong"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    public void Bank_OfTooFewOrTooMany_IsRefused(int pumps)
    {
        PlainPump pump = Straight(OutsideRange.Refuse, (0, 500), (100, 300));
        string words = $"Must be from 1 to 16; it was {pumps}.";

        Words.Refused<ArgumentOutOfRangeException>(nameof(pumps), words, () => pump.InParallel(pumps));
        Words.Refused<ArgumentOutOfRangeException>(nameof(pumps), words, () => pump.InSeries(pumps));
    }
}
