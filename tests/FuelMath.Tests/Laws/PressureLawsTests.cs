using FuelMath.Formulas;

namespace FuelMath.Tests.Laws;

/// <summary>
/// Each law, on each part. An exception is data with its reason, and the test then asks that the law does fail, so
/// that an exception which is no longer one comes to light.
/// </summary>
public sealed class PressureLawsTests
{
    /// <summary>Shares of the greatest input at which the laws are asked: fine enough to meet every regime.</summary>
    private static readonly double[] Shares = [.. Enumerable.Range(1, 400).Select(i => i / 400.0)];

    private const string PumpGives =
        "a pump gives pressure: it starts at its greatest rise, and the rise falls with flow";
    private const string OneWay = "it is made for one direction and refuses to be asked for the other";

    private static readonly Dictionary<string, Action<Characteristic>> Laws = new()
    {
        ["nothing in, nothing out"] = part => Assert.Equal(0, part.Answer(0)),
        ["turned round, the sign changes"] = part =>
            Each(part, x => Close.Within(1e-15, -part.Answer(x), part.Answer(-x))),
        ["more in, more out"] = part =>
        {
            for (int i = 1; i < Shares.Length; i++)
            {
                double less = part.Answer(Shares[i - 1] * part.Greatest);
                double more = part.Answer(Shares[i] * part.Greatest);
                Assert.True(more > less, $"{more} is not greater than {less} at {Shares[i]} of the greatest.");
            }
        },
        ["the part is its formula"] = part =>
            Each(part, x => Close.Within(1e-13, part.Formula(Dual<Real>.Of(x)).Value.Value, part.Answer(x))),
        ["the slope is the formula's"] = part => Each(part, x => SlopeAgrees(part, x)),
        // A unit round trip moves an input by 2e-12; no part magnifies that by more than ten.
        ["other units, same answer"] = part =>
            Each(part, x => Close.Within(2e-11, part.Answer(x), part.AnswerInOtherUnits(x))),
        ["no energy is created"] = part => Each(part, x => Assert.True(part.PowerLost(x) >= 0)),
        ["no energy is created the other way"] = part => Each(part, x => Assert.True(part.PowerLost(-x) >= 0)),
    };

    private static readonly Dictionary<(string Law, string Part), string> Exceptions = new()
    {
        [("nothing in, nothing out", "pump")] = PumpGives,
        [("more in, more out", "pump")] = PumpGives,
        [("turned round, the sign changes", "pump")] = OneWay,
        [("turned round, the sign changes", "injector, held open")] = OneWay,
        [("turned round, the sign changes", "regulator, fully open")] = OneWay,
        [("turned round, the sign changes", "wiring")] = OneWay,
        [("nothing in, nothing out", "relief valve")] = "its spring holds it shut up to the opening difference",
        [("turned round, the sign changes", "relief valve")] = OneWay,
        [("no energy is created the other way", "relief valve")] = OneWay,
        [("no energy is created the other way", "pump")] = OneWay,
        [("no energy is created the other way", "injector, held open")] = OneWay,
        [("no energy is created the other way", "regulator, fully open")] = OneWay,
        [("no energy is created the other way", "wiring")] = OneWay,
    };

    public static TheoryData<string, string> Matrix()
    {
        var matrix = new TheoryData<string, string>();
        foreach (string law in Laws.Keys)
        {
            foreach (Characteristic part in Characteristics.All)
            {
                matrix.Add(law, part.Name);
            }
        }

        return matrix;
    }

    [Theory]
    [MemberData(nameof(Matrix))]
    public void Law_OnAPart_HoldsOrIsAKnownException(string law, string part)
    {
        Characteristic characteristic = Characteristics.All.Single(p => p.Name == part);

        if (Exceptions.TryGetValue((law, part), out string? reason))
        {
            Exception? failure = Record.Exception(() => Laws[law](characteristic));
            Assert.True(failure is not null, $"The law holds, against: {reason}.");
        }
        else
        {
            Laws[law](characteristic);
        }
    }

    /// <summary>Every exception names a law and a part that exist.</summary>
    [Fact]
    public void Exceptions_AreInTheMatrix() =>
        Assert.All(
            Exceptions.Keys,
            e =>
            {
                Assert.Contains(e.Law, Laws.Keys);
                Assert.Contains(e.Part, Characteristics.All.Select(p => p.Name));
            }
        );

    /// <summary>
    /// A curve bends one way over a short step, so its slope lies between those of the two chords. Rounding moves a
    /// chord of a hundred-thousandth by 1e-11 of the mean slope or so.
    /// </summary>
    private static void SlopeAgrees(Characteristic part, double x)
    {
        // The last point has no neighbor above; the point just below it does.
        x *= 1 - 2e-5;
        double step = 1e-5 * x;
        double here = part.Answer(x);
        double below = (here - part.Answer(x - step)) / step;
        double above = (part.Answer(x + step) - here) / step;
        double slack = 1e-8 * (Math.Abs(here / x) + Math.Abs(below));

        double slope = part.Formula(Dual<Real>.Variable(new Real(x))).Slope.Value;

        Assert.InRange(slope, Math.Min(below, above) - slack, Math.Max(below, above) + slack);
    }

    private static void Each(Characteristic part, Action<double> ask)
    {
        foreach (double share in Shares)
        {
            ask(share * part.Greatest);
        }
    }
}
