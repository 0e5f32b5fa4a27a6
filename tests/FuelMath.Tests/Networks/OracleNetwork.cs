using System.Text.Json;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>One of the networks of Oracle/solved-networks.json, and what a general pipe-network engine found for it.</summary>
internal sealed class OracleNetwork
{
    private readonly JsonElement root;
    private readonly Pipe.FrictionLaw friction;

    internal OracleNetwork(string name, Pipe.FrictionLaw friction)
        : this(
            Solved
                .Root.GetProperty("networks")
                .EnumerateArray()
                .Concat(Solved.Root.GetProperty("unsettled").EnumerateArray())
                .Single(n => Text(n, "name") == name),
            friction
        ) { }

    /// <summary>A network that is described like those of the file.</summary>
    internal OracleNetwork(JsonElement root, Pipe.FrictionLaw friction)
    {
        (this.root, this.friction) = (root, friction);
        Network = Build();
    }

    internal static IEnumerable<string> Names =>
        Solved.Root.GetProperty("networks").EnumerateArray().Select(n => Text(n, "name"));

    /// <summary>Networks that the engine went round in circles on, so that they have no answer of it.</summary>
    internal static IEnumerable<string> UnsettledNames =>
        Solved.Root.GetProperty("unsettled").EnumerateArray().Select(n => Text(n, "name"));

    internal Network Network { get; }

    /// <summary>What the engine found for each junction, kPa gauge.</summary>
    internal IReadOnlyDictionary<string, double> Pressure => Numbers("pressure_kPa");

    /// <summary>What the engine found for each link, L/h.</summary>
    internal IReadOnlyDictionary<string, double> Flow => Numbers("flow_L_h");

    /// <summary>What each pump, regulator, one-way part and capped orifice does.</summary>
    internal IReadOnlyDictionary<string, string> State =>
        root.GetProperty("engine")
            .GetProperty("state")
            .EnumerateObject()
            .ToDictionary(p => p.Name, p => p.Value.GetString()!);

    /// <summary>Nodes between shut parts, whose pressure a steady state does not know.</summary>
    internal IReadOnlyList<string> Undetermined =>
        [.. root.GetProperty("engine").GetProperty("undetermined").EnumerateArray().Select(n => n.GetString()!)];

    /// <summary>
    /// Whether the engine's own leaks show: a part is shut, a pump is at rest, a regulator holds its set point, an injector
    /// its commanded flow.
    /// </summary>
    internal bool Leaks =>
        Undetermined.Count > 0 || State.Values.Any(s => s is "shut" or "stalled" or "seated" or "regulating");

    /// <summary>The greatest pressure in it, kPa: the scale of pressures.</summary>
    internal double PressureScale =>
        root.GetProperty("nodes")
            .EnumerateArray()
            .Select(n => Or(n, "pressure_kPa", 0))
            .Concat(Pressure.Values)
            .Max(Math.Abs);

    /// <summary>The greatest flow in it, L/h: the scale of flows.</summary>
    internal double FlowScale => Flow.Values.Max(Math.Abs);

    /// <summary>Its pipes in which anything flows: Reynolds number at the engine's flow, roughness over bore.</summary>
    internal IEnumerable<(double Reynolds, double RelativeRoughness)> Pipes =>
        from l in root.GetProperty("links").EnumerateArray()
        where Text(l, "type") is "pipe" or "check_pipe"
        let bore = Number(l, "bore_mm") / 1e3
        let flow = Math.Abs(Flow[Text(l, "name")]) / 3.6e6
        where flow > 1e-6 * FlowScale / 3.6e6
        let viscosity = Number(root, "viscosity_mm2_s") / 1e6
        select (4 * flow / (Math.PI * bore * viscosity), Number(l, "roughness_um") / 1e6 / bore);

    private Network Build()
    {
        List<Network.Node> nodes = [];
        List<OwnLine> links = [];
        foreach (JsonElement n in root.GetProperty("nodes").EnumerateArray())
        {
            (string name, Length height) = (Text(n, "name"), Length.FromMeters(Or(n, "height_m", 0)));
            nodes.Add(
                n.TryGetProperty("pressure_kPa", out JsonElement given)
                    ? Network.Node.FixedPressure(name, Gauge(given.GetDouble()), height)
                    : Network.Node.Junction(name, height, Flows(Or(n, "draw_L_h", 0)))
            );
        }

        foreach (JsonElement l in root.GetProperty("links").EnumerateArray())
        {
            if (!l.TryGetProperty("to", out _))
            {
                nodes.Add(Network.Node.FixedPressure(Space(l), Gauge(Or(l, "space_kPa", 0)), Length.Zero));
            }

            links.Add(Link(l));
        }

        return OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(Number(root, "density_kg_m3")),
            KinematicViscosity.FromCentistokes(Number(root, "viscosity_mm2_s")),
            nodes,
            links
        );
    }

    private OwnLine Link(JsonElement l)
    {
        (string name, string from) = (Text(l, "name"), Text(l, "from"));
        string to = l.TryGetProperty("to", out JsonElement end) ? end.GetString()! : Space(l);
        return Text(l, "type") switch
        {
            "pipe" => OwnLine.Pipe(name, from, to, Long(l), Bore(l), Rough(l), K(l), friction),
            "check_pipe" => OwnLine.CheckPipe(name, from, to, Long(l), Bore(l), Rough(l), K(l), friction),
            "fitting" => OwnLine.Fitting(name, from, to, Bore(l), K(l)),
            "filter" => OwnLine.Filter(
                name,
                from,
                to,
                Flows(l, "flow_L_h"),
                Difference(l, "linear_kPa"),
                Difference(l, "quadratic_kPa")
            ),
            "check_valve" => OwnLine.CheckValve(
                name,
                from,
                to,
                UnitsNet.Pressure.Zero,
                Difference(l, "loss_kPa"),
                Flows(l, "flow_L_h")
            ),
            "pump" => OwnLine.Pump(name, from, to, Pump(l)),
            "bypass_regulator" => OwnLine.BypassRegulator(name, from, to, Regulator(l)),
            "reducing_regulator" => OwnLine.ReducingRegulator(name, from, to, Regulator(l)),
            "orifice" => OwnLine.Orifice(
                name,
                from,
                to,
                Flows(l, "flow_L_h"),
                Difference(l, "loss_kPa"),
                l.GetProperty("backflow").GetBoolean() ? InjectorDraw.Backflow.Allowed : InjectorDraw.Backflow.Prevented
            ),
            "capped_orifice" => OwnLine.CappedOrifice(
                name,
                from,
                to,
                Flows(l, "flow_L_h"),
                Difference(l, "loss_kPa"),
                Flows(l, "commanded_L_h")
            ),
            _ => throw new NotSupportedException(Text(l, "type")),
        };
    }

    /// <summary>Three points make a power law, more a table: as the engine takes them.</summary>
    private static PlainPump Pump(JsonElement l)
    {
        PlainPump.Point[] points =
        [
            .. l.GetProperty("points")
                .EnumerateArray()
                .Select(p => new PlainPump.Point(
                    Flows(p[0].GetDouble()),
                    UnitsNet.Pressure.FromKilopascals(p[1].GetDouble())
                )),
        ];
        PlainPump pump =
            points.Length == 3
                ? PlainPump.PowerThrough(points[0].PressureRise, points[1], points[2])
                : PlainPump.Straight(points, OutsideRange.Refuse);
        return pump.AtSpeed(Ratio.FromDecimalFractions(Or(l, "speed", 1)));
    }

    private static OwnRegulator Regulator(JsonElement l)
    {
        var regulator = new OwnRegulator(
            Difference(l, "set_kPa"),
            Gauge(Number(l, "reference_kPa")),
            Difference(l, "open_loss_kPa"),
            Flows(l, "open_flow_L_h")
        );
        return l.TryGetProperty("slope_kPa", out _)
            ? regulator.WithSlope(Difference(l, "slope_kPa"), Flows(l, "slope_flow_L_h"))
            : regulator;
    }

    private Dictionary<string, double> Numbers(string column) =>
        root.GetProperty("engine")
            .GetProperty(column)
            .EnumerateObject()
            .ToDictionary(p => p.Name, p => p.Value.GetDouble());

    private static string Space(JsonElement l) => $"space of {Text(l, "name")}";

    private static Length Long(JsonElement l) => Length.FromMeters(Number(l, "length_m"));

    private static Length Bore(JsonElement l) => Length.FromMillimeters(Number(l, "bore_mm"));

    private static Length Rough(JsonElement l) => Length.FromMicrometers(Number(l, "roughness_um"));

    private static Ratio K(JsonElement l) => Ratio.FromDecimalFractions(Number(l, "K"));

    private static Pressure Difference(JsonElement of, string name) =>
        UnitsNet.Pressure.FromKilopascals(Number(of, name));

    private static GaugePressure Gauge(double kilopascals) => new(UnitsNet.Pressure.FromKilopascals(kilopascals));

    private static VolumeFlow Flows(JsonElement of, string name) => Flows(Number(of, name));

    private static VolumeFlow Flows(double litersPerHour) => VolumeFlow.FromLitersPerHour(litersPerHour);

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static double Or(JsonElement of, string name, double otherwise) =>
        of.TryGetProperty(name, out JsonElement given) ? given.GetDouble() : otherwise;

    private static string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;

    private static class Solved
    {
        internal static readonly JsonElement Root = JsonDocument
            .Parse(
                File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Networks", "Oracle", "solved-networks.json"))
            )
            .RootElement;
    }
}
