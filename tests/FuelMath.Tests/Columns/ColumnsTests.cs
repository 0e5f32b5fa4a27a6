using FuelMath.Formulas;
using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Columns;

public sealed class ColumnsTests
{
    /// <summary>No rows, fewer than a vector, one more, several: so that each has a rest of its own.</summary>
    public static TheoryData<int> Lengths() => [0, 1, 3, 4, 5, 7, 8, 9, 16, 29];

    [Theory]
    [MemberData(nameof(Lengths))]
    public void CarriedMassFlow_AnyLength_HasTheBitsOfReal(int rows) =>
        FormulaArbitraries.ForAll(
            2 * rows,
            u =>
            {
                double[] dp = [.. u[..rows].Select(f => 1e6 * f)];
                double[] rho = [.. u[rows..].Select(f => 600 + (400 * f))];
                double[] flow = new double[rows];

                OrificeColumns.CarriedMassFlow(0.006, 3e5, 690, dp, rho, flow);

                Assert.Equal(Enumerable.Range(0, rows).Select(i => Carried(dp[i], rho[i])), flow);
            }
        );

    [Theory]
    [MemberData(nameof(Lengths))]
    public void Mass_AnyLength_HasTheBitsOfReal(int rows) =>
        FormulaArbitraries.ForAll(
            3 * rows,
            u =>
            {
                double[] flow = [.. u[..rows]];
                double[] width = [.. u[rows..(2 * rows)].Select(f => 0.02 * f)];
                double[] dead = [.. u[(2 * rows)..].Select(f => 3e-3 * f)];
                double[] mass = new double[rows];

                PulseColumns.Mass(flow, width, dead, mass);

                Assert.Equal(Enumerable.Range(0, rows).Select(i => PulseMass(flow[i], width[i], dead[i])), mass);
            }
        );

    [Theory]
    [MemberData(nameof(Lengths))]
    public void ColebrookFactor_AnyLength_IsRealToEightUnits(int rows) =>
        FormulaArbitraries.ForAll(
            2 * rows,
            u =>
            {
                double[] re = [.. u[..rows].Select(f => 4000 * Math.Pow(1e7, f))];
                double[] rough = [.. u[rows..].Select(f => 0.05 * f)];
                double[] factor = new double[rows];

                FrictionColumns.ColebrookFactor(re, rough, factor);

                for (int i = 0; i < rows; i++)
                {
                    double real = Friction.ColebrookFactor(new Real(re[i]), new Real(rough[i])).Value;
                    Assert.InRange(Apart(real, factor[i]), 0, 8);
                }
            }
        );

    [Theory]
    [MemberData(nameof(Lengths))]
    public void PressureLoss_AnyLength_IsRealToEightUnits(int rows) =>
        FormulaArbitraries.ForAll(
            3 * rows,
            u =>
            {
                double[] velocity = [.. u[..rows].Select(f => 16 * (f - 0.5))];
                double[] rho = [.. u[rows..(2 * rows)].Select(f => 600 + (400 * f))];
                double[] mu = [.. u[(2 * rows)..].Select(f => 2e-4 * Math.Pow(500, f))];
                double[] loss = new double[rows];

                FrictionColumns.PressureLoss(0.008, 2.5, 1e-5, velocity, rho, mu, loss);

                for (int i = 0; i < rows; i++)
                {
                    double real = Friction
                        .PressureLoss(
                            new Real(velocity[i]),
                            new Real(0.008),
                            new Real(2.5),
                            new Real(1e-5),
                            new Real(rho[i]),
                            new Real(mu[i])
                        )
                        .Value;
                    Assert.InRange(Apart(real, loss[i]), 0, 8);
                }
            }
        );

    /// <summary>Both widths give the same bits, so that a column has one answer on every machine.</summary>
    [Fact]
    public void RunIn_EitherWidth_HasTheSameBits() =>
        FormulaArbitraries.ForAll(
            58,
            u =>
            {
                double[] re = [.. u[..29].Select(f => 4000 * Math.Pow(1e7, f))];
                double[] rough = [.. u[29..].Select(f => 0.05 * f)];
                (double[] narrow, double[] wide) = (new double[29], new double[29]);

                var row = default(FrictionColumns.ColebrookRow);
                ColumnRunner.RunIn<FrictionColumns.ColebrookRow, Lane>(row, re, rough, rough, narrow);
                ColumnRunner.RunIn<FrictionColumns.ColebrookRow, WideLane>(row, re, rough, rough, wide);

                Assert.Equal(narrow, wide);
            }
        );

    /// <summary>A row gives what it gives alone.</summary>
    [Fact]
    public void ColebrookFactor_AnyPlace_HasTheBitsOfTheRowAlone() =>
        FormulaArbitraries.ForAll(
            26,
            u =>
            {
                double[] re = [.. u[..13].Select(f => 4000 * Math.Pow(1e7, f))];
                double[] rough = [.. u[13..].Select(f => 0.05 * f)];
                double[] factor = new double[13];
                double[] alone = new double[1];

                FrictionColumns.ColebrookFactor(re, rough, factor);

                for (int i = 0; i < 13; i++)
                {
                    FrictionColumns.ColebrookFactor(re.AsSpan(i, 1), rough.AsSpan(i, 1), alone);
                    Assert.Equal(alone[0], factor[i]);
                }
            }
        );

    [Fact]
    public void Columns_ResultsInPlaceOfAnInput_AreTheSame()
    {
        double[] dp = [.. Enumerable.Range(1, 21).Select(i => i * 1e4)];
        double[] rho = [.. Enumerable.Repeat(740.0, 21)];
        double[] apart = new double[21];

        OrificeColumns.CarriedMassFlow(0.006, 3e5, 690, dp, rho, apart);
        OrificeColumns.CarriedMassFlow(0.006, 3e5, 690, dp, rho, dp);

        Assert.Equal(apart, dp);
    }

    [Fact]
    public void Columns_HalfOverlap_Refuses()
    {
        double[] memory = [.. Enumerable.Repeat(700.0, 20)];
        double[] before = [.. memory];

        ArgumentException refusal = Assert.Throws<ArgumentException>(() =>
            OrificeColumns.CarriedMassFlow(
                0.006,
                3e5,
                690,
                memory.AsSpan(0, 10),
                memory.AsSpan(10, 10),
                memory.AsSpan(1, 10)
            )
        );

        Assert.StartsWith(
            "Must be the same memory as massFlow or lie apart from it; it overlaps in part.",
            refusal.Message,
            StringComparison.Ordinal
        );
        Assert.Equal("differentialPressure", refusal.ParamName);
        Assert.Equal(before, memory);
    }

    [Fact]
    public void Columns_UnequalLengths_Refuses()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() =>
            PulseColumns.Mass(new double[3], new double[3], new double[2], new double[3])
        );

        Assert.StartsWith("Must have as many rows as mass, 3; it has 2.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("deadTime", refusal.ParamName);
    }

    /// <summary>In the first vector, in a later one, in the rest: always the row, and never a result written.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(18)]
    public void Columns_NumberOutsideItsRange_RefusesNamingTheRow(int row)
    {
        foreach (double bad in new[] { double.NaN, double.PositiveInfinity, -1 })
        {
            double[] dp = [.. Enumerable.Repeat(3e5, 19)];
            dp[row] = bad;
            double[] rho = [.. Enumerable.Repeat(740.0, 19)];
            double[] flow = new double[19];

            ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() =>
                OrificeColumns.CarriedMassFlow(0.006, 3e5, 690, dp, rho, flow)
            );

            Assert.StartsWith(
                FormattableString.Invariant($"Must be from 0 Pa to 1e+09 Pa; in row {row} it was {bad} Pa."),
                refusal.Message,
                StringComparison.Ordinal
            );
            Assert.Equal("differentialPressure", refusal.ParamName);
            Assert.All(flow, f => Assert.Equal(0, f));
        }
    }

    [Fact]
    public void Columns_ConstantOutsideItsRange_Refuses()
    {
        double[] one = [1];

        Refuses("bore", "Must be from 1e-06 m to 1000000 m; it was 0 m.", () => Loss(0, 1, 0));
        Refuses("roughness", "Must be from 0 m to 0.0005 m; it was 0.001 m.", () => Loss(0.01, 1, 0.001));
        Refuses("length", "Must be from 0 m to 1000000 m; it was NaN m.", () => Loss(0.01, double.NaN, 0));
        Refuses(
            "reynolds",
            "Must be from 4000 to 1e+11; in row 0 it was 1.",
            () => FrictionColumns.ColebrookFactor(one, one, new double[1])
        );

        static void Loss(double bore, double length, double roughness) =>
            FrictionColumns.PressureLoss(bore, length, roughness, [1], [740], [5e-4], new double[1]);
    }

    private static void Refuses(string parameter, string message, Action action)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(action);
        Assert.StartsWith(message, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(parameter, refusal.ParamName);
    }

    private static double Carried(double dp, double rho) =>
        Orifice.CarriedMassFlow(new Real(0.006), new Real(3e5), new Real(690), new Real(dp), new Real(rho)).Value;

    private static double PulseMass(double flow, double width, double dead) =>
        Pulse.Mass(new Real(flow), Pulse.EffectiveWidth(new Real(width), new Real(dead)), new Real(0)).Value;

    private static long Apart(double a, double b) =>
        a == b ? 0 : Math.Abs(BitConverter.DoubleToInt64Bits(a) - BitConverter.DoubleToInt64Bits(b));
}
