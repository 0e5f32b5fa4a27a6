namespace FuelMath.Tests.Systems;

/// <summary>
/// Pumps whose curves end where a rig wants to work: the refusal says that, with the pump and its numbers, and is never one of
/// rounds that do not settle.
/// </summary>
public sealed class PumpEndTests
{
    private static readonly int Seeds = int.TryParse(
        Environment.GetEnvironmentVariable("PUMP_END_SEEDS"),
        System.Globalization.CultureInfo.InvariantCulture,
        out int asked
    )
        ? asked
        : 400;

    /// <summary>Found among 20 000 seeds: the rounds went to and fro between a voltage with data and one without.</summary>
    [Theory]
    [InlineData(4111)]
    [InlineData(4286)]
    [InlineData(6656)]
    [InlineData(9237)]
    [InlineData(1732)]
    [InlineData(6275)]
    [InlineData(10995)]
    [InlineData(12787)]
    public void Solve_RoundsLeaveTheCurve_SaysWhereItEnds(int seed)
    {
        (FuelSystem system, OperatingPoint point) = new PumpEndRig(seed).Make();

        var refusal = Assert.Throws<OutsideTableException>(() => system.Solve(point));

        Assert.False(refusal.Value >= refusal.Minimum && refusal.Value <= refusal.Maximum);
        Assert.Contains("ump", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_RandomPumpEnds_IsAStateOrSaysWhatIsOutside()
    {
        List<string> unsettled = [];
        int states = 0;
        int outside = 0;
        for (int seed = 0; seed < Seeds; seed++)
        {
            (FuelSystem System, OperatingPoint Point) rig;
            try
            {
                rig = new PumpEndRig(seed).Make();
            }
            catch (ArgumentException)
            {
                // More voltage that gives less flow: no pump.
                continue;
            }

            try
            {
                Assert.NotEmpty(rig.System.Solve(rig.Point).Verdict.ToString());
                states++;
            }
            catch (OutsideTableException)
            {
                outside++;
            }
            catch (NoSolutionException refusal)
            {
                if (Refusal.Of(refusal)!.Code == RefusalCode.NotConverged)
                {
                    unsettled.Add($"{seed}: {refusal.Message}");
                }
            }
        }

        Assert.Empty(unsettled);
        Assert.True(states > Seeds / 10 && outside > Seeds / 10, $"{states} states, {outside} outside of {Seeds}");
    }
}
