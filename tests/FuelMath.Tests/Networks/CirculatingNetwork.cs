using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Draws networks with pumps that circulate, relief and check valves and regulators in all senses, many regions of which
/// nothing flows into, and solves them by a model of its own: the same seed gives the same network.
/// </summary>
/// <remarks>
/// <para>
/// The model knows flows by pressures, not losses by flows: every part lets through what the pressures at its ends say,
/// none backwards where it is one way, by formulas solved by hand. It has no slope, no matrix and no shut part that leaks.
/// Junctions are looked at one after the other; each is put at the least pressure at which what flows in flows out, found by
/// halving, until none moves.
/// </para>
/// <para>
/// It begins far below every given pressure, where nothing but circles flows, and these come to rest before anything may
/// fill the network. From there every pressure only rises, and ends at the least at which nothing moves: what the network
/// fills by itself. Where the end moves with the beginning, nothing fills it. Pressures are kPa at elevation zero, flows
/// 100 L/h. Source: the laws as docs/guide/networks.md writes them down, solved for the flow.
/// </para>
/// </remarks>
internal sealed class CirculatingNetwork
{
    private const double PerMeter = 740 * 9.80665 / 1000;
    private const int MostSweeps = 20_000;
    private readonly Random random;
    private readonly List<Network.Node> nodes = [];
    private readonly List<OwnLine> links = [];
    private readonly List<double> heads = [];
    private readonly List<Way> ways = [];
    private readonly int given;

    internal CirculatingNetwork(int seed)
    {
        random = new Random(seed);
        AddFixed("tank", Between(-20, 60));
        AddFixed("manifold", Between(-60, 200));
        if (random.Next(2) == 0)
        {
            AddFixed("supply", Between(50, 500));
        }

        given = nodes.Count;
        int junctions = random.Next(2, 7);
        for (int i = 0; i < junctions; i++)
        {
            AddNode(z => Network.Node.Junction($"node {nodes.Count}", z));
            Join(Wet(nodes.Count - 1), nodes.Count - 1);
        }

        int more = random.Next(1, 6);
        for (int i = 0; i < more; i++)
        {
            int from = Wet(nodes.Count);
            int to = Wet(nodes.Count);
            if (from != to && (from >= given || to >= given))
            {
                Join(from, to);
            }
        }

        int openings = random.Next(1, 4);
        for (int i = 0; i < openings; i++)
        {
            Open(random.Next(given, nodes.Count));
        }
    }

    internal Network Network => Fuel([.. nodes, .. links]);

    internal IEnumerable<string> Junctions => nodes.Skip(given).Select(n => n.Name);

    /// <summary>Gauge pressures of the junctions, kPa; not a number where nothing fills them. Null where it crept.</summary>
    internal double[]? Pressures()
    {
        double[]? low = From(-4000);
        double[]? lower = From(-5000);
        return low is null || lower is null
            ? null
            :
            [
                .. Enumerable
                    .Range(given, nodes.Count - given)
                    .Select(i => Math.Abs(low[i] - lower[i]) > 0.1 ? double.NaN : low[i] - heads[i]),
            ];
    }

    private double[]? From(double level)
    {
        double[] pressure = [.. nodes.Select((n, i) => n.IsFixed ? (n.PressureSi / 1000) + heads[i] : level)];
        return Settle(pressure, inside: true) && Settle(pressure, inside: false) ? pressure : null;
    }

    /// <summary>Looks at the junctions in turn until what the rest still moves is less than a micropascal's thousandfold.</summary>
    private bool Settle(double[] pressure, bool inside)
    {
        double before = double.PositiveInfinity;
        for (int sweep = 0; sweep < MostSweeps; sweep++)
        {
            double moved = 0;
            for (int i = given; i < pressure.Length; i++)
            {
                double was = pressure[i];
                pressure[i] = Balanced(pressure, i, inside);
                moved = Math.Max(moved, Math.Abs(pressure[i] - was));
            }

            // What is left of a geometric row.
            double rate = Math.Min(moved / before, 0.9999);
            if (moved == 0 || (sweep > 20 && moved / (1 - rate) < 1e-6))
            {
                return true;
            }

            before = moved;
        }

        return false;
    }

    private double Balanced(double[] pressure, int node, bool inside)
    {
        double now = pressure[node];
        double Gain(double at)
        {
            pressure[node] = at;
            double sum = 0;
            foreach (Way w in ways)
            {
                if (inside && (w.From < given || w.To < given))
                {
                    continue;
                }

                if (w.To == node)
                {
                    sum += w.Flow(pressure[w.From], at);
                }
                else if (w.From == node)
                {
                    sum -= w.Flow(at, pressure[w.To]);
                }
            }

            pressure[node] = now;
            return sum;
        }

        (double low, double high) = (now, now);
        double start = Gain(now);
        for (double step = 1e-7; start > 0 ? Gain(high) > 0 : start < 0 && Gain(low) < 0; step *= 4)
        {
            (low, high) = start > 0 ? (high, high + step) : (low - step, low);
            if (step > 1e6)
            {
                return now;
            }
        }

        while (high - low > 1e-14 * (1 + Math.Abs(high)))
        {
            double middle = (low + high) / 2;
            (low, high) = Gain(middle) > 0 ? (middle, high) : (low, middle);
        }

        return start > 0 ? low : high;
    }

    private void Join(int a, int b)
    {
        bool turned = random.Next(2) == 0;
        (int from, int to) = turned ? (b, a) : (a, b);
        switch (random.Next(8))
        {
            case 0 or 1:
                Pump(from, to);
                if (random.Next(2) == 0)
                {
                    Check(to, from, Between(50, 500));
                }

                break;
            case 2 or 3:
                Check(from, to, random.Next(2) * Between(1, 30));
                break;
            case 4:
                Reducing(from, to);
                break;
            case 5:
                Bypass(from, to);
                break;
            default:
                Filter(from, to);
                break;
        }
    }

    private void Pump(int from, int to)
    {
        double shutoff = Between(80, 700);
        double slope = Between(50, 150);
        Add(
            OwnLine.Pump(
                $"pump {links.Count}",
                nodes[from].Name,
                nodes[to].Name,
                Straight(OutsideRange.Extend, (0, shutoff), (100, shutoff - slope))
            ),
            from,
            to,
            (up, down) => Math.Max(0, (shutoff + up - down) / slope)
        );
    }

    private void Check(int from, int to, double opening)
    {
        double square = Between(1, 30);
        Add(
            OwnLine.CheckValve(
                $"valve {links.Count}",
                nodes[from].Name,
                nodes[to].Name,
                Kilopascals(opening),
                Kilopascals(square),
                LitersPerHour(100)
            ),
            from,
            to,
            (up, down) => Math.Sqrt(Math.Max(0, up - down - opening) / square)
        );
    }

    private void Filter(int from, int to)
    {
        (double linear, double square) = (Between(2, 40), Between(1, 20));
        Add(
            OwnLine.Filter(
                $"filter {links.Count}",
                nodes[from].Name,
                nodes[to].Name,
                LitersPerHour(100),
                Kilopascals(linear),
                Kilopascals(square)
            ),
            from,
            to,
            (up, down) =>
                Math.Sign(up - down)
                * 2
                * Math.Abs(up - down)
                / (linear + Math.Sqrt((linear * linear) + (4 * square * Math.Abs(up - down))))
        );
    }

    private void Reducing(int from, int to)
    {
        (OwnRegulator regulator, double set, double slope, double open) = Regulator();
        double head = heads[to];
        Add(
            OwnLine.ReducingRegulator($"reducing {links.Count}", nodes[from].Name, nodes[to].Name, regulator),
            from,
            to,
            (up, down) => Math.Min(Math.Max(0, (set + head - down) / slope), Math.Sqrt(Math.Max(0, up - down) / open))
        );
    }

    private void Bypass(int from, int to)
    {
        (OwnRegulator regulator, double set, double slope, double open) = Regulator();
        double head = heads[from];
        Add(
            OwnLine.BypassRegulator($"bypass {links.Count}", nodes[from].Name, nodes[to].Name, regulator),
            from,
            to,
            (up, down) => Math.Min(Math.Max(0, (up - set - head) / slope), Math.Sqrt(Math.Max(0, up - down) / open))
        );
    }

    private void Open(int from)
    {
        double coefficient = Between(0.2, 1) / Math.Sqrt(300);
        double commanded = random.Next(2) * Between(0, 0.8);
        double head = heads[from];
        int space = nodes.FindIndex(n => n.Name == "manifold");
        double back = heads[space];
        Add(
            Injector(
                $"injector {links.Count}",
                nodes[from].Name,
                "manifold",
                100 * coefficient * Math.Sqrt(300),
                100 * commanded
            ),
            from,
            space,
            (up, down) => Math.Min(commanded, coefficient * Math.Sqrt(Math.Max(0, up - head - (down - back))))
        );
    }

    private (OwnRegulator Regulator, double Set, double Slope, double Open) Regulator()
    {
        (double set, double slope, double open) = (Between(50, 400), Between(2, 30), Between(2, 50));
        OwnRegulator made = new(Kilopascals(set), Gauge(0), Kilopascals(open), LitersPerHour(100));
        return (made.WithSlope(Kilopascals(slope), LitersPerHour(100)), set, slope, open);
    }

    private void Add(OwnLine link, int from, int to, Func<double, double, double> flow)
    {
        links.Add(link);
        ways.Add(new(from, to, flow));
    }

    private void AddFixed(string name, double kilopascals) =>
        AddNode(z => Network.Node.FixedPressure(name, Gauge(kilopascals), z));

    private void AddNode(Func<Length, Network.Node> make)
    {
        double meters = random.Next(2) * Between(-0.5, 0.5);
        heads.Add(PerMeter * meters);
        nodes.Add(make(Length.FromMeters(meters)));
    }

    /// <summary>A node with fuel in it: any but the manifold, of those before one.</summary>
    private int Wet(int before)
    {
        int i = random.Next(before - 1);
        return i == 0 ? 0 : i + 1;
    }

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private readonly record struct Way(int From, int To, Func<double, double, double> Flow);
}
