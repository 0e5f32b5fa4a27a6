namespace FuelMath.ShopTests;

/// <summary>A system with one thing changed.</summary>
internal static class Altered
{
    /// <summary>The node between a pump or a regulator and the restriction after it, by the name of its line.</summary>
    internal const string Before = " (before the restriction)";

    /// <summary>The bore of the loss coefficients of restrictions, m.</summary>
    private const double Bore = 8e-3;

    private static readonly DataSource Assumed = new("Definition", "a fault that a shop test looks for");

    internal static string LeakName => "leak to the tank";

    internal static OperatingPoint WithSupply(OperatingPoint point, double volts) =>
        point.WithSupply(SiUnits.ElectricPotential(volts));

    /// <summary>
    /// The conditions with the engine at rest: no speed, ambient pressure in the manifold, injectors closed.
    /// </summary>
    internal static OperatingPoint Standing(OperatingPoint point) =>
        point.WithCommand(FuelCommand.Cut).At(SiUnits.RotationalSpeed(0), point.Air.Ambient);

    /// <summary>Every pump delivers a fraction of its flow at each pressure.</summary>
    internal static FuelSystem WithPumpShare(FuelSystem system, double share)
    {
        var wear = new PumpWear(SiUnits.Ratio(share), default, SiUnits.Pressure(1e5));
        return WithPumps(system, pump => pump.Worn(pump.Name, wear));
    }

    /// <summary>Pumps in some lines draw a multiple of their current at each pressure.</summary>
    internal static FuelSystem WithPumpCurrent(FuelSystem system, double multiple, Func<Line, bool> which)
    {
        return WithLines(system, l => l.Part is Pump pump && which(l) ? l.With(Drawing(pump)) : l);

        Pump Drawing(Pump pump)
        {
            var drawing = new Pump(
                pump.Name,
                pump.Curves.Select(c => WithCurrent(c, multiple)),
                pump.Fluid,
                pump.Source
            );
            return pump.Drive == PumpDrive.Direct ? drawing : drawing.WithDrive(pump.Name, pump.Drive);
        }
    }

    /// <summary>Every bypass regulator set to a multiple of its differential pressure.</summary>
    internal static FuelSystem WithSetPoint(FuelSystem system, double multiple) =>
        WithLines(system, l => l.Part is BypassRegulator regulator ? l.With(Set(regulator, multiple)) : l);

    /// <summary>A restriction after every line of a kind, of a loss coefficient at 8 mm.</summary>
    internal static FuelSystem WithRestrictionAfter(FuelSystem system, Func<Line, bool> which, double coefficient)
    {
        var nodes = new List<Network.Node>(system.Network.Nodes);
        var lines = new List<Line>();
        foreach (Line line in system.Network.Lines)
        {
            if (!which(line))
            {
                lines.Add(line);
                continue;
            }

            string between = line.Name + Before;
            Network.Node end = system.Network.Nodes.First(n => n.Name == line.To);
            nodes.Add(Network.Node.Junction(between, end.Elevation).AtPlace(end.Forward, end.Left));
            lines.Add(Ending(line, between));
            lines.Add(new Line(line.Name + " restriction", between, line.To, Restriction(Bore, coefficient)));
        }

        return system.WithNetwork(new(nodes, lines));
    }

    /// <summary>A hole from the outlet of the first pump that feeds a rail back to its tank, of an area in m².</summary>
    internal static FuelSystem WithLeak(FuelSystem system, double area)
    {
        Line pump = system.Network.Lines.First(system.Layout.HasRailPump);
        string outlet = pump.To;
        string tank =
            system.Network.Nodes.FirstOrDefault(n => n.IsFixed && n.Name == pump.From)?.Name
            ?? system.Network.Nodes.First(n => n.IsFixed).Name;
        return system.WithNetwork(
            new(
                system.Network.Nodes,
                [
                    .. system.Network.Lines,
                    new Line(LeakName, outlet, tank, Restriction(Math.Sqrt(area * 4 / Math.PI), 1)),
                ]
            )
        );
    }

    /// <summary>More resistance in a circuit of pumps, in ohm; less where it is negative.</summary>
    internal static FuelSystem WithPumpResistance(FuelSystem system, int feed, double more)
    {
        var power = (PowerSupply.TwoCircuits)system.Power;
        Circuit now = power.CircuitOf(feed);
        return system.WithPower(
            power.With(feed, new Circuit(now.Name, [], [], SiUnits.ElectricResistance(now.Resistance.InSi() + more)))
        );
    }

    /// <summary>More resistance in a branch of the mesh, in ohm; less where it is negative.</summary>
    internal static FuelSystem WithBranchResistance(FuelSystem system, string branch, double more)
    {
        var power = (PowerSupply.Meshed)system.Power;
        WiringMesh.Branch now = power.Mesh.Branches.First(b => b.Name == branch);
        return system.WithPower(
            power.With(
                power.Mesh.WithBranch(
                    WiringMesh.Branch.FromResistance(
                        now.Name,
                        now.From,
                        now.To,
                        SiUnits.ElectricResistance(now.Resistance.InSi() + more)
                    )
                )
            )
        );
    }

    /// <summary>
    /// The least multiple of its set point at which a regulator still regulates at the flows of its readings.
    /// </summary>
    internal static double LeastSetPoint(FuelSystem system) =>
        system
            .Network.Lines.Select(l => l.Part)
            .OfType<BypassRegulator>()
            .Max(r =>
                Math.Max(
                    Lost(r, r.SetPoint) / r.SetPoint.DifferentialPressure.InSi(),
                    Lost(r, r.SecondReading) / r.SetPoint.DifferentialPressure.InSi()
                )
            ) * 1.001;

    private static double Lost(BypassRegulator regulator, BypassRegulator.BenchReading reading) =>
        regulator.FullyOpenLoss(reading.BypassedFlow, regulator.Mechanics.FullyOpen.Density).InSi();

    private static BypassRegulator Set(BypassRegulator regulator, double multiple) =>
        regulator.WithSetPoint(
            regulator.Name,
            new(
                SiUnits.Pressure(multiple * regulator.SetPoint.DifferentialPressure.InSi()),
                regulator.SetPoint.BypassedFlow
            )
        );

    private static PumpCurve WithCurrent(PumpCurve curve, double multiple) =>
        new(
            curve.Voltage,
            curve.Points.Select(p => new PumpCurve.Point(
                p.PressureRise,
                p.Flow,
                SiUnits.ElectricCurrent(multiple * p.Current.InSi())
            )),
            curve.Source
        );

    private static Fitting Restriction(double bore, double coefficient) =>
        new("restriction", SiUnits.Length(bore), SiUnits.Ratio(coefficient), Fitting.LossBasis.Estimate, Assumed);

    /// <summary>A pump or a regulator that ends at another node.</summary>
    private static Line Ending(Line line, string to) => line.Ending(to);

    private static FuelSystem WithPumps(FuelSystem system, Func<Pump, Pump> change) =>
        WithLines(system, l => l.Part is Pump pump ? l.With(change(pump)) : l);

    private static FuelSystem WithLines(FuelSystem system, Func<Line, Line> change) =>
        system.WithNetwork(new(system.Network.Nodes, system.Network.Lines.Select(change)));
}
