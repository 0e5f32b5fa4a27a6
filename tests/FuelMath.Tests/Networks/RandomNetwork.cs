using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Draws physical networks of our range at random: the same seed gives the same network.</summary>
/// <remarks>
/// Bores 3 to 20 mm, lengths 0.05 to 6 m, kinematic viscosity 0.3 to 3 mm2/s, heights within a meter. A tank, a manifold,
/// one to three pumps alone, in parallel or in series, a filter, a tree of hoses with loops in it, and on that bypass and
/// reducing regulators, check valves, openings and injectors from shut to held open.
/// </remarks>
internal sealed class RandomNetwork
{
    private readonly Random random;
    private readonly double scale;
    private readonly List<Network.Node> nodes = [];
    private readonly List<OwnLine> links = [];

    internal RandomNetwork(int seed)
        : this(seed, 1) { }

    /// <summary>The exactly similar network: lengths and viscosity times the scale, flows times its square.</summary>
    internal RandomNetwork(int seed, double scale)
    {
        this.scale = scale;
        random = new Random(seed);
        Density = Between(680, 800);
        Viscosity = scale * LogBetween(0.3, 3);
        Fixed("tank", Between(-5, 20));
        Fixed("manifold", Between(-70, 200));
        string rail = random.Next(6) == 0 ? Supply() : PumpTrain();
        List<string> wet = [rail];
        int hoses = random.Next(1, random.Next(4) == 0 ? 40 : 10);
        for (int i = 0; i < hoses; i++)
        {
            Grow(wet, i);
        }

        int regulators = random.Next(3);
        for (int i = 0; i < regulators; i++)
        {
            Bypass(Any(wet), i);
        }

        int openings = random.Next(1, 9);
        for (int i = 0; i < openings; i++)
        {
            Open(Any(wet), i);
        }
    }

    internal double Density { get; }

    /// <summary>Kinematic, mm2/s.</summary>
    internal double Viscosity { get; }

    internal IReadOnlyList<Network.Node> Nodes => nodes;

    internal IReadOnlyList<OwnLine> Links => links;

    internal Network Network => Made(nodes, links);

    /// <summary>The same fluid with other nodes and links.</summary>
    internal Network Made(IEnumerable<Network.Node> ofNodes, IEnumerable<OwnLine> ofLinks) =>
        OwnLine.Network(
            UnitsNet.Density.FromKilogramsPerCubicMeter(Density),
            KinematicViscosity.FromCentistokes(Viscosity),
            ofNodes,
            ofLinks
        );

    /// <summary>Whether a refusal proves that there is no state: a draw that can't be met, or a pump without a supply.</summary>
    internal static bool IsProof(NoSolutionException refusal) =>
        refusal.Reason.StartsWith("Draws need", StringComparison.Ordinal)
        || refusal.Reason.StartsWith("Too little can flow to where", StringComparison.Ordinal);

    private string Supply()
    {
        Fixed("supply", Between(50, 600));
        Junction("rail");
        Hose("from supply", "supply", "rail", false);
        return "rail";
    }

    private string PumpTrain()
    {
        string inlet = "tank";
        if (random.Next(4) == 0)
        {
            Junction("lifted");
            Pump("lift pump", "tank", "lifted", Between(20, 200));
            inlet = "lifted";
        }

        Junction("pump out");
        Pump("pump", inlet, "pump out", Between(150, 1000));
        if (random.Next(3) == 0)
        {
            Pump("second pump", inlet, "pump out", Between(150, 1000));
        }

        Junction("filtered");
        links.Add(
            OwnLine.Filter(
                "filter",
                "pump out",
                "filtered",
                LitersPerHour(200),
                Kilopascals(LogBetween(1, 200)),
                Kilopascals(LogBetween(1, 100))
            )
        );
        return "filtered";
    }

    private void Pump(string name, string from, string to, double shutoff)
    {
        double flow = LogBetween(40, 800);
        PlainPump pump =
            random.Next(3) == 0
                ? PlainPump.Power(
                    Kilopascals(shutoff),
                    Point(flow, shutoff * Between(0.2, 0.8)),
                    Ratio.FromDecimalFractions(Between(1, 3))
                )
                : Table(flow, shutoff);
        links.Add(OwnLine.Pump(name, from, to, pump.AtSpeed(Ratio.FromDecimalFractions(Between(0.5, 1.2)))));
    }

    private PlainPump Table(double flow, double shutoff)
    {
        int points = random.Next(2, 8);
        double[] steps = [.. Enumerable.Range(0, points).Select(_ => Between(0.2, 1))];
        double[] falls = [.. Enumerable.Range(0, points).Select(_ => Between(0.2, 1))];
        PlainPump.Point[] curve =
        [
            .. Enumerable
                .Range(0, points)
                .Select(i =>
                    Point(flow * steps.Take(i).Sum() / steps.Sum(), shutoff * (1 - (falls.Take(i).Sum() / falls.Sum())))
                ),
        ];
        return random.Next(2) == 0
            ? PlainPump.Straight(curve, OutsideRange.Extend)
            : PlainPump.Smooth(curve, OutsideRange.Extend);
    }

    private void Grow(List<string> wet, int i)
    {
        string from = Any(wet);
        if (wet.Count > 2 && random.Next(4) == 0)
        {
            string other = Any(wet);
            if (other != from)
            {
                Hose($"loop {i}", from, other, random.Next(8) == 0);
            }

            return;
        }

        string name = $"node {i}";
        Junction(name);
        wet.Add(name);
        switch (random.Next(14))
        {
            case 0:
                links.Add(
                    OwnLine.CheckValve(
                        $"check {i}",
                        from,
                        name,
                        Kilopascals(random.Next(2) * Between(1, 20)),
                        Kilopascals(LogBetween(1, 30)),
                        LitersPerHour(200)
                    )
                );
                break;
            case 1:
                links.Add(OwnLine.ReducingRegulator($"reducing {i}", from, name, Regulator()));
                break;
            case 2:
                links.Add(
                    OwnLine.Fitting(
                        $"fitting {i}",
                        from,
                        name,
                        scale * Length.FromMillimeters(Between(4, 14)),
                        Ratio.FromDecimalFractions(LogBetween(0.1, 20))
                    )
                );
                break;
            default:
                Hose($"hose {i}", from, name, random.Next(8) == 0);
                break;
        }
    }

    private void Bypass(string from, int i)
    {
        Junction($"return {i}");
        OwnRegulator regulator = Regulator();
        links.Add(
            OwnLine.BypassRegulator(
                $"bypass {i}",
                from,
                $"return {i}",
                random.Next(3) == 0
                    ? regulator.WithReturnInfluence(Ratio.FromDecimalFractions(Between(0, 0.03)))
                    : regulator
            )
        );
        Hose($"return hose {i}", $"return {i}", "tank", false);
    }

    private OwnRegulator Regulator()
    {
        var plain = new OwnRegulator(
            Kilopascals(Between(50, 500)),
            new(Kilopascals(random.Next(2) * Between(-70, 200))),
            Kilopascals(LogBetween(2, 100)),
            LitersPerHour(200)
        );
        return random.Next(2) == 0 ? plain : plain.WithSlope(Kilopascals(LogBetween(1, 50)), LitersPerHour(200));
    }

    private void Open(string from, int i)
    {
        VolumeFlow flow = LitersPerHour(LogBetween(2, 120));
        Pressure at = Kilopascals(300);
        links.Add(
            random.Next(3) switch
            {
                0 => OwnLine.Orifice($"jet {i}", from, "manifold", flow, at, (InjectorDraw.Backflow)random.Next(2)),
                1 => OwnLine.CappedOrifice($"injector {i}", from, "manifold", flow, at, LitersPerHour(0)),
                _ => OwnLine.CappedOrifice(
                    $"injector {i}",
                    from,
                    "manifold",
                    flow,
                    at,
                    LitersPerHour(LogBetween(0.1, 150))
                ),
            }
        );
    }

    private void Hose(string name, string from, string to, bool oneWay)
    {
        Length length = scale * Length.FromMeters(LogBetween(0.05, 6));
        Length bore = scale * Length.FromMillimeters(LogBetween(3, 20));
        Length roughness = scale * Length.FromMicrometers(random.Next(2) * LogBetween(0.5, 50));
        Ratio k = Ratio.FromDecimalFractions(random.Next(2) * Between(0, 10));
        links.Add(
            oneWay
                ? OwnLine.CheckPipe(
                    name,
                    from,
                    to,
                    length,
                    bore,
                    roughness,
                    k,
                    Pipe.FrictionLaw.ColebrookStraightPassage
                )
                : OwnLine.Pipe(name, from, to, length, bore, roughness, k, Pipe.FrictionLaw.ColebrookStraightPassage)
        );
    }

    private void Fixed(string name, double kilopascals) =>
        nodes.Add(Network.Node.FixedPressure(name, new(Kilopascals(kilopascals)), Height()));

    private void Junction(string name)
    {
        bool draws = random.Next(25) == 0;
        nodes.Add(Network.Node.Junction(name, Height(), LitersPerHour(draws ? LogBetween(0.1, 30) : 0)));
    }

    private Length Height() => Length.FromMeters(random.Next(2) * Between(-0.5, 0.5));

    private string Any(List<string> wet) => wet[random.Next(wet.Count)];

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private double LogBetween(double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    private PlainPump.Point Point(double litersPerHour, double kilopascals) =>
        new(LitersPerHour(litersPerHour), Kilopascals(kilopascals));

    private static Pressure Kilopascals(double value) => Pressure.FromKilopascals(value);

    private VolumeFlow LitersPerHour(double value) => VolumeFlow.FromLitersPerHour(scale * scale * value);
}
