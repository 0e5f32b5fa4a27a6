using System.Text.Json;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>One of the solved networks in Data, and what was found for it.</summary>
internal sealed class ReferenceNetwork
{
    private readonly JsonElement root;

    internal ReferenceNetwork(string id, Pipe.FrictionLaw friction)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "Networks", "Data", $"{id}.json");
        root = JsonDocument.Parse(File.ReadAllText(path)).RootElement;
        Density = Number(root.GetProperty("fluid"), "density_kg_m3");
        Assert.Equal(9.80665, Number(root, "gravity_m_s2"));
        Emitters = [.. root.GetProperty("emitters").EnumerateArray().Select((_, i) => $"emitter {i}")];
        Network = Build(friction);
    }

    internal static TheoryData<string> All =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "Networks", "Data"), "network-*.json")
                .Select(p => Path.GetFileNameWithoutExtension(p)!)
                .Order(StringComparer.Ordinal),
        ];

    internal Network Network { get; }

    internal double Density { get; }

    /// <summary>The links that stand for the file's emitters, in its order.</summary>
    internal string[] Emitters { get; }

    /// <summary>The tolerance that the file recommends for a comparison: relative for pressures and for flows.</summary>
    internal (double Pressure, double Flow) Tolerance(string comparison)
    {
        JsonElement of = root.GetProperty("recommended_tolerance").GetProperty(comparison);
        return (Number(of, "p"), Number(of, "q"));
    }

    internal ReferenceSolution Solution(string column)
    {
        JsonElement of = root.GetProperty(column);
        HashSet<string> unknown =
        [
            .. root.GetProperty("indeterminate_nodes").EnumerateArray().Select(n => n.GetString()!),
        ];
        return new(
            of.GetProperty("node_pressure_Pa")
                .EnumerateObject()
                .Where(p => !unknown.Contains(p.Name))
                .ToDictionary(p => p.Name, p => p.Value.GetDouble()),
            of.GetProperty("link_flow_m3_s").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetDouble()),
            of.GetProperty("emitter_flow_m3_s").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetDouble()),
            of.GetProperty("state").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetString()!)
        );
    }

    /// <summary>The node that an emitter sits on.</summary>
    internal string NodeOfEmitter(string emitter) =>
        Text(root.GetProperty("emitters")[Array.IndexOf(Emitters, emitter)], "node");

    private Network Build(Pipe.FrictionLaw friction)
    {
        JsonElement fluid = root.GetProperty("fluid");
        Dictionary<string, double> drawn = root.GetProperty("demands")
            .EnumerateArray()
            .ToDictionary(d => Text(d, "node"), d => Number(d, "flow_m3_s"));
        List<Network.Node> nodes = [];
        List<OwnLine> links = [];
        foreach (JsonElement n in root.GetProperty("nodes").EnumerateArray())
        {
            (string id, Length z) = (Text(n, "id"), Length.FromMeters(Number(n, "elevation_m")));
            nodes.Add(
                Text(n, "kind") == "fixed"
                    ? Network.Node.FixedPressure(id, Gauge(Number(n, "pressure_Pa")), z)
                    : Network.Node.Junction(id, z, Flow(drawn.GetValueOrDefault(id)))
            );
        }

        links.AddRange(root.GetProperty("links").EnumerateArray().Select(l => Link(l, friction)));
        foreach ((int i, JsonElement e) in root.GetProperty("emitters").EnumerateArray().Index())
        {
            Assert.Equal(0.5, Number(e, "exponent"));
            string space = $"space {i}";
            nodes.Add(Network.Node.FixedPressure(space, Gauge(Number(e, "back_pressure_Pa")), Length.Zero));
            bool back = root.GetProperty("options").GetProperty("emitter_backflow").GetBoolean();
            links.Add(
                OwnLine.Orifice(
                    Emitters[i],
                    Text(e, "node"),
                    space,
                    Flow(Number(e, "coefficient")),
                    Pressure.FromPascals(1),
                    back ? InjectorDraw.Backflow.Allowed : InjectorDraw.Backflow.Prevented
                )
            );
        }

        return OwnLine.Network(
            UnitsNet.Density.FromKilogramsPerCubicMeter(Density),
            KinematicViscosity.FromSquareMetersPerSecond(Number(fluid, "kinematic_viscosity_m2_s")),
            nodes,
            links
        );
    }

    private OwnLine Link(JsonElement l, Pipe.FrictionLaw friction)
    {
        (string id, string from, string to) = (Text(l, "id"), Text(l, "from"), Text(l, "to"));
        return Text(l, "type") switch
        {
            "pipe" => OwnLine.Pipe(
                id,
                from,
                to,
                Meters(l, "length_m"),
                Meters(l, "diameter_m"),
                Meters(l, "roughness_m"),
                Ratio.FromDecimalFractions(Number(l, "K")),
                friction
            ),
            "filter" => OwnLine.Filter(
                id,
                from,
                to,
                Flow(1),
                Pressure.FromPascals(Number(l, "a_Pa_s_m3")),
                Pressure.FromPascals(Number(l, "b_Pa_s2_m6"))
            ),
            "pump" => OwnLine.Pump(id, from, to, Pump(l)),
            "regulator_upstream" => OwnLine.BypassRegulator(id, from, to, Regulator(l)),
            "regulator_downstream" => OwnLine.ReducingRegulator(id, from, to, Regulator(l)),
            _ => throw new NotSupportedException(Text(l, "type")),
        };
    }

    private static PlainPump Pump(JsonElement l)
    {
        JsonElement curve = l.GetProperty("curve");
        double[] flow = [.. curve.GetProperty("flow_m3_s").EnumerateArray().Select(v => v.GetDouble())];
        double[] rise = [.. curve.GetProperty("dp_Pa").EnumerateArray().Select(v => v.GetDouble())];
        PlainPump pump =
            Text(curve, "kind") == "power"
                ? PlainPump.Power(
                    Pressure.FromPascals(Number(curve, "h0_Pa")),
                    Point(1e-5, Number(curve, "h0_Pa") - (Number(curve, "b") * Math.Pow(1e-5, Number(curve, "c")))),
                    Ratio.FromDecimalFractions(Number(curve, "c"))
                )
                : PlainPump.Straight(flow.Zip(rise, Point), OutsideRange.Extend);
        return pump.AtSpeed(Ratio.FromDecimalFractions(Number(l, "speed")));
    }

    private OwnRegulator Regulator(JsonElement l)
    {
        double area = Math.PI / 4 * Math.Pow(Number(l, "diameter_m"), 2);
        return new(
            Pressure.FromPascals(Number(l, "setting_Pa")),
            Gauge(Number(l, "reference_Pa")),
            Pressure.FromPascals(Number(l, "K_open") * Density / 2),
            Flow(area)
        );
    }

    private static PlainPump.Point Point(double flow, double rise) => new(Flow(flow), Pressure.FromPascals(rise));

    private static GaugePressure Gauge(double pascals) => new(Pressure.FromPascals(pascals));

    private static VolumeFlow Flow(double cubicMetersPerSecond) =>
        VolumeFlow.FromCubicMetersPerSecond(cubicMetersPerSecond);

    private static Length Meters(JsonElement of, string name) => Length.FromMeters(Number(of, name));

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;
}
