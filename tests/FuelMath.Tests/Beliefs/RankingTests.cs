using System.Globalization;
using FuelMath.Beliefs;
using Xunit.Abstractions;

namespace FuelMath.Tests.Beliefs;

/// <summary>How often the ranking finds what is really wrong, over synthetic engines with scatter.</summary>
public sealed class RankingTests(ITestOutputHelper output)
{
    private static readonly BeliefCause[] Single =
    [
        BeliefCause.Flow,
        BeliefCause.DeadTime,
        BeliefCause.Pressure,
        BeliefCause.PressureReference,
    ];

    private static readonly BeliefCause[] Larger =
    [
        BeliefCause.Nothing,
        BeliefCause.FlowAndDeadTime,
        BeliefCause.AirOverLoad,
        BeliefCause.AirOverSpeed,
    ];

    /// <summary>
    /// One cause of random size, five points, normal scatter of 1 %, referenced and fixed rails in turn. 300 engines unless
    /// RANKING_SEEDS says otherwise: shares then have a standard deviation of up to 2.9 %, and bounds lie three of them
    /// beside what 3000 engines gave (66 % first, 23 % beside the first, 0.5 % elsewhere).
    /// </summary>
    [Fact]
    public void Causes_SyntheticEngines_PutTheTruthFirstOrBesideIt()
    {
        int seeds = int.Parse(
            Environment.GetEnvironmentVariable("RANKING_SEEDS") ?? "300",
            CultureInfo.InvariantCulture
        );
        (int first, int beside, int larger) = (0, 0, 0);
        for (int seed = 0; seed < seeds; seed++)
        {
            var random = new Random(seed);
            BeliefCause truth = Single[random.Next(Single.Length)];
            RankedCause best = new BeliefDiagnosis(Engine(truth, random)).Causes[0];
            if (best.Cause == truth)
            {
                first++;
            }
            else if (best.CannotBeToldFrom.Any(c => c.Cause == truth))
            {
                beside++;
            }
            else if (Larger.Contains(best.Cause))
            {
                larger++;
            }
        }

        output.WriteLine(
            $"Of {seeds}: {first} first, {beside} beside the first, {larger} behind more parameters or none."
        );
        Assert.InRange(first / (double)seeds, 0.66 - 0.087, 1);
        Assert.InRange((first + beside) / (double)seeds, 0.89 - 0.06, 1);
        Assert.InRange((first + beside + larger) / (double)seeds, 0.995 - 0.013, 1);
    }

    private static MixtureObservation[] Engine(BeliefCause truth, Random random)
    {
        double size = random.NextDouble() - 0.5;
        bool fixedRail = random.Next(2) == 0;
        double Normal() =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return Observed.Of(
            flow: truth == BeliefCause.Flow ? Math.Exp(1.6 * size) : 1,
            deadMilliseconds: truth == BeliefCause.DeadTime ? 1.8 * size : 0,
            pressureBar: truth == BeliefCause.Pressure ? 2 * size : 0,
            boostShare: truth == BeliefCause.PressureReference ? 2.4 * size : 0,
            fixedRail: fixedRail,
            uncertainty: 0.01,
            scatter: _ => 0.01 * Normal()
        );
    }
}
