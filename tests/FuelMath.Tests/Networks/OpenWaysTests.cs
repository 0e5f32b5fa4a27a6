using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Through which one-way parts fuel must flow so that every pressure follows from a given one: small networks, by hand. All
/// pumps must run; of check valves those that lead where no open way does; regulators and injectors never join.
/// </summary>
public sealed class OpenWaysTests
{
    /// <summary>Each line is a kind, a name, where it begins and where it ends; T and U are tanks.</summary>
    [Theory]
    [InlineData("hose h T a|hose i a b", "", true)]
    [InlineData("hose h a T|hose i b a", "", true)]
    [InlineData("check c T a", "c", true)]
    [InlineData("check c a T", "c", true)]
    [InlineData("check c T a|check d T a", "c", true)]
    [InlineData("check c T a|hose h T a", "", true)]
    [InlineData("check c T a|hose h b T|hose i b a", "", true)]
    [InlineData("check c T a|check d a b|check e b c", "c d e", true)]
    [InlineData("check c a T|check d b a|check e c b", "c d e", true)]
    [InlineData("check c T a|hose h a b|check d b c|hose i c d", "c d", true)]
    [InlineData("pump p T a|hose h a U", "p", true)]
    [InlineData("pump p T a|hose h a b", "p", true)]
    [InlineData("pump p T U|hose h T a", "p", true)]
    [InlineData("regulator r T a", "", false)]
    [InlineData("regulator r a T|hose h b a", "", false)]
    [InlineData("regulator r T a|hose h T a", "", true)]
    [InlineData("injector j a T", "", false)]
    [InlineData("injector j a T|check c U a", "c", true)]
    [InlineData("check c T a|regulator r a b", "c", false)]
    public void Needed_AreThoseThatJoinWhatElseIsApart(string lines, string needed, bool suffice)
    {
        Line[] all =
        [
            .. lines.Split('|').Select(l => l.Split(' ')).Select(w => new Line(w[1], w[2], w[3], Part(w[0]))),
        ];
        string[] places = [.. all.SelectMany(l => new[] { l.From, l.To }).Distinct().Order(StringComparer.Ordinal)];
        NetworkPlan plan = new([.. places.Select(p => char.IsUpper(p[0]) ? Fixed(p, 0) : Junction(p))], all);

        OpenWays ways = new(plan);

        Assert.Equal(suffice, ways.Suffice);
        Assert.Equal(
            needed,
            string.Join(' ', ways.Needed.Distinct().Select(e => plan.Links[e].Name).Order(StringComparer.Ordinal))
        );
    }

    /// <summary>
    /// A solution is sound where mass balances, nothing flows back and no pressure is at vacuum, -101 325 Pa, or below; each
    /// alone makes it unsound.
    /// </summary>
    [Theory]
    [InlineData("", true)]
    [InlineData("first node unbalanced", false)]
    [InlineData("second node unbalanced", false)]
    [InlineData("flows back", false)]
    [InlineData("first node at vacuum", false)]
    [InlineData("second node at vacuum", false)]
    [InlineData("just above vacuum", true)]
    public void Sound_IsWhatNeedsNoSecondLook(string wrong, bool expected)
    {
        Network network = Fuel(
            Fixed("supply", 300),
            Fixed("end", 0),
            Junction("a"),
            Junction("b"),
            Linear("first", "supply", "a", 100),
            Linear("second", "a", "b", 100),
            Check("third", "b", "end", 0)
        );
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        Assert.True(Real.All(work.Solve(warm: false)));
        double off = 2 * work.NoFlow().Value;
        switch (wrong)
        {
            case "first node unbalanced":
                work.Flow[0] = new(work.Flow[0].Value + off);
                break;
            case "second node unbalanced":
                work.Flow[2] = new(work.Flow[2].Value + off);
                break;
            case "flows back":
                (work.Flow[0], work.Flow[1], work.Flow[2]) = (new(-1e-5), new(-1e-5), new(-1e-5));
                break;
            case "first node at vacuum":
                work.Pressure[0] = new(-101_325);
                break;
            case "second node at vacuum":
                work.Pressure[1] = new(-101_325);
                break;
            case "just above vacuum":
                (work.Pressure[0], work.Pressure[1]) = (new(-101_324.999), new(-101_324.999));
                break;
        }

        Assert.Equal(expected, Real.All(work.Sound()));
    }

    /// <summary>
    /// Thirty hoses and thirty fittings, some without flow: several at once are linearized as each alone. Vectors take another
    /// logarithm, in the last digits.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(11)]
    [InlineData(30)]
    public void Linearize_SeveralAtOnce_IsEachAlone(int count)
    {
        IEnumerable<int> all = Enumerable.Range(0, count);
        Network network = Fuel([
            Fixed("a", 50),
            Fixed("b", 0),
            Junction("j"),
            .. all.Select(i => Hose($"hose {i}", i % 2 == 0 ? "a" : "j", "b", 0.5 + (0.1 * i), 6, i % 3)),
            .. Enumerable
                .Range(0, 30)
                .Select(i =>
                    OwnLine.Fitting(
                        $"fitting {i}",
                        "a",
                        "j",
                        Length.FromMillimeters(5),
                        Ratio.FromDecimalFractions(1 + i)
                    )
                ),
        ]);
        using NetworkWork<Real> several = network.Plan.Rent<Real>();
        NetworkWork<Real> one = new(network.Plan, new WorkPool<Real>(network.Plan), linkByLink: true);
        foreach (NetworkWork<Real> work in new[] { several, one })
        {
            work.Start(warm: false);
            work.Pressure[0] = new(17e3);
            for (int e = 0; e < work.Flow.Length; e++)
            {
                work.Flow[e] = new((e % 5) - 1 == 0 ? 0 : 1e-6 * (e - 7));
            }

            _ = work.Linearize(Real.Less(new(1), new(0)));
        }

        for (int e = 0; e < one.Flow.Length; e++)
        {
            Close.Within(1e-10, one.Free[e].Value, several.Free[e].Value);
            Close.Within(1e-10, one.FromUp[e].Value, several.FromUp[e].Value);
            Close.Within(1e-10, one.ToDown[e].Value, several.ToDown[e].Value);
            Close.Within(1e-10, one.Error[e].Value, several.Error[e].Value);
        }

        Close.Within(1e-10, one.WorstPlain.Value, several.WorstPlain.Value);
    }

    private static FlowPart Part(string kind) =>
        kind switch
        {
            "hose" => new PlainFitting(Length.FromMillimeters(5), Ratio.FromDecimalFractions(1)),
            "check" => new CheckValve(
                Kilopascals(1),
                Kilopascals(5),
                LitersPerHour(100),
                Density.FromKilogramsPerCubicMeter(740)
            ),
            "pump" => Straight(OutsideRange.Extend, (0, 500), (100, 400)),
            "injector" => new LawPart(new CappedSettings(1e-7, 1e-5)),
            _ => new LawPart(new RegulatorSettings { Setting = 1e5, SquarePerDensity = 1e8 }),
        };
}
