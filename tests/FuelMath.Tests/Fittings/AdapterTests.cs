using FsCheck.Xunit;

namespace FuelMath.Tests.Fittings;

[Properties(Arbitrary = [typeof(FittingArbitraries)])]
public sealed class AdapterTests
{
    private const FittingEnd.EndGender Male = FittingEnd.EndGender.Male;
    private const FittingEnd.EndGender Female = FittingEnd.EndGender.Female;
    private static readonly FittingEnd Port = FittingEnd.ORingBoss(6, Female);
    private static readonly FittingEnd Hose = FittingEnd.Flare37(6, Female);
    private static readonly Adapter Usual = new(
        "boss to flare",
        FittingEnd.ORingBoss(6, Male),
        FittingEnd.Flare37(6, Male)
    );

    [Fact]
    public void Shortest_FlareHoseToBoss_IsOneAdapter()
    {
        AdapterSearch.Route path = Assert.Single(AdapterSearch.Shortest(Port, Hose, [Usual], 10));

        Assert.Same(Usual, Assert.Single(path.Adapters));
        Assert.Equal(2, path.Joints.Length);
        Assert.StartsWith("O-ring boss port -6", path.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Shortest_EndsThatSeal_NeedNone()
    {
        AdapterSearch.Route path = Assert.Single(AdapterSearch.Shortest(Port, Port.Mate, [Usual], 10));

        Assert.Empty(path.Adapters);
        Assert.Equal("O-ring boss port -6 (9/16-18 UNF) seals with O-ring boss stud -6 (9/16-18 UNF)", path.ToString());
    }

    [Fact]
    public void Shortest_NothingThatJoins_IsEmpty() =>
        Assert.Empty(AdapterSearch.Shortest(Port, FittingEnd.Flare37(8, Female), [Usual], 10));

    /// <summary>Two equal pieces give two chains in the order of the list; the limit holds.</summary>
    [Fact]
    public void Shortest_EqualPieces_GiveEachChain()
    {
        Adapter twin = new("the other maker's", Usual.Second, Usual.First);

        Assert.Equal(
            ["boss to flare", "the other maker's"],
            AdapterSearch.Shortest(Port, Hose, [Usual, twin], 10).Select(p => p.Adapters[0].Name)
        );
        Assert.Single(AdapterSearch.Shortest(Port, Hose, [Usual, twin], 1));
    }

    [Fact]
    public void Shortest_BadArguments_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "mostPaths",
            "1, 1000, 0",
            () => AdapterSearch.Shortest(Port, Hose, [Usual], 0)
        );
        Assert.Throws<ArgumentNullException>("available", () => AdapterSearch.Shortest(Port, Hose, [null!], 1));
        Words.Refused<ArgumentException>("name", () => _ = new Adapter("", Port, Hose));
    }

    /// <summary>A union that joins the same either way round is one chain, not two.</summary>
    [Fact]
    public void Shortest_PieceOfTwoEqualEnds_StandsInOneWay()
    {
        Adapter union = new("union", FittingEnd.Flare37(6, Male), FittingEnd.Flare37(6, Male));

        Assert.Single(AdapterSearch.Shortest(Hose, FittingEnd.Flare37(6, Female), [union], 10));
    }

    /// <summary>What the search asks without words is the verdict with words.</summary>
    [Property]
    public void Seals_AnyEnds_IsTheVerdict(AnyEnd one, AnyEnd other)
    {
        foreach (FittingEnd second in new[] { other.End, one.End, one.End.Mate })
        {
            Assert.Equal(
                Joint.Between(one.End, second).Verdict == Joint.Outcome.Seals,
                JointRules.Seals(one.End, second)
            );
        }
    }

    /// <summary>
    /// Ten thousand equal adapters, and as many that differ by their bore, with a chain of 200 pieces through them: a
    /// look at every pair of them would not end in reasonable time.
    /// </summary>
    [Fact]
    public void Shortest_LongLists_AreSearchedAtOnce()
    {
        Adapter[] alike =
        [
            .. Enumerable.Range(0, 10_000).Select(i => new Adapter($"piece {i}", Usual.First, Usual.Second)),
        ];
        Adapter[] ladder =
        [
            .. Enumerable.Range(0, 10_000).Select(i => new Adapter($"rung {i}", Tube(i, Female), Tube(i + 1, Male))),
        ];

        Assert.Equal(
            Enumerable.Range(0, 1000).Select(i => $"piece {i}"),
            AdapterSearch.Shortest(Port, Hose, alike, 1000).Select(p => p.Adapters[0].Name)
        );
        Assert.Empty(AdapterSearch.Shortest(Port, FittingEnd.Flare37(8, Female), alike, 1000));
        Assert.Equal(
            Enumerable.Range(300, 200).Select(i => $"rung {i}"),
            Assert
                .Single(AdapterSearch.Shortest(Tube(300, Male), Tube(500, Female), ladder, 10))
                .Adapters.Select(a => a.Name)
        );
    }

    /// <summary>Fifty ways at each of eight steps, half of them into dead ends that come first: 50^8 if they were walked.</summary>
    [Fact]
    public void Shortest_ManyDeadEnds_DoNotMultiply()
    {
        Adapter[] maze =
        [
            .. Enumerable.Range(0, 400).Select(i => Step(i / 50, 0, i < 50 ? 0 : 10, 10)),
            .. Enumerable.Range(0, 400).Select(i => Step(i / 50, 1, 0, 0)),
        ];

        var found = AdapterSearch.Shortest(Tube(0, Male), Tube(160, Female), maze, 5);

        Assert.Equal(5, found.Length);
        Assert.All(found, p => Assert.All(p.Adapters, a => Assert.Equal("way 1", a.Name)));

        static Adapter Step(int level, int way, int here, int there) =>
            new($"way {way}", Tube((20 * level) + here, Female), Tube((20 * (level + 1)) + there, Male));
    }

    /// <summary>Two per cent from size to size, where one is allowed: the next does not seal. Ten thousand sizes fit around 1 mm.</summary>
    private static FittingEnd Tube(int step, FittingEnd.EndGender gender) =>
        FittingEnd.QuickConnect(UnitsNet.Length.FromMillimeters(Math.Pow(1.02, step - 5000)), gender);

    /// <summary>Any two ends are one generic adapter apart.</summary>
    [Property]
    public void Generic_BetweenAnyEnds_JoinsThem(AnyEnd from, AnyEnd to)
    {
        Adapter adapter = AdapterSearch.Generic(from.End, to.End);

        Assert.Equal(Joint.Outcome.Seals, Joint.Between(from.End, adapter.First).Verdict);
        Assert.Equal(Joint.Outcome.Seals, Joint.Between(adapter.Second, to.End).Verdict);
    }

    /// <summary>Against a search of all chains by brute force: as short, as many, and sealed at every joint.</summary>
    [Property(MaxTest = 60)]
    public void Shortest_AgainstBruteForce_IsAsShortAndComplete(Shelf shelf)
    {
        var found = AdapterSearch.Shortest(shelf.From, shelf.To, shelf.Adapters, 1000);

        int? fewest = null;
        int count = 0;
        for (int pieces = 0; pieces <= 4 && fewest is null; pieces++)
        {
            count = Chains(shelf.From, shelf.To, shelf.Adapters, pieces);
            fewest = count > 0 ? pieces : null;
        }

        if (fewest is { } length)
        {
            Assert.All(found, p => Assert.Equal(length, p.Adapters.Length));
            Assert.Equal(count, found.Length);
            Assert.All(found.SelectMany(p => p.Joints), j => Assert.Equal(Joint.Outcome.Seals, j.Verdict));
        }
        else
        {
            Assert.All(found, p => Assert.True(p.Adapters.Length > 4));
        }
    }

    private static int Chains(FittingEnd end, FittingEnd to, IReadOnlyList<Adapter> adapters, int pieces) =>
        pieces == 0
            ? Joint.Between(end, to).Verdict == Joint.Outcome.Seals
                ? 1
                : 0
            : adapters
                .SelectMany(a => new[] { (In: a.First, Out: a.Second), (In: a.Second, Out: a.First) }.Distinct())
                .Where(s => Joint.Between(end, s.In).Verdict == Joint.Outcome.Seals)
                .Sum(s => Chains(s.Out, to, adapters, pieces - 1));
}
