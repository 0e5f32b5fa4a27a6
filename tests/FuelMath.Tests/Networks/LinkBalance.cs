using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>
/// A link's own law, written a second time from its description: with the friction factor solved from the start, states
/// as cases, and no steep branches. By how much pressures and flow miss it, in Pa.
/// </summary>
internal static class LinkBalance
{
    /// <summary>Passes when each link whose ends are known keeps its law: the solver stops at a billionth and 1 mPa.</summary>
    internal static void Holds(Network network, NetworkState state, string what)
    {
        double density = network.Conditions!.Density.KilogramsPerCubicMeter;
        double viscosity = network.Conditions!.Viscosity.PascalSeconds;
        Dictionary<string, double> weight = network.Nodes.ToDictionary(
            n => n.Name,
            n => density * Hydrostatics.StandardGravity * n.Elevation.Meters
        );
        HashSet<string> cutOff = [.. state.CutOffNodeNames];
        Dictionary<string, double> gauge = network
            .Nodes.Where(n => !cutOff.Contains(n.Name))
            .ToDictionary(n => n.Name, n => state.PressureAt(n.Name).AboveAmbient.Pascals);
        double limit = 1e-3 + (1e-9 * gauge.Max(g => Math.Abs(g.Value) + Math.Abs(weight[g.Key])));
        foreach (Line link in network.Lines.Where(l => !cutOff.Contains(l.From) && !cutOff.Contains(l.To)))
        {
            (double up, double down) = (gauge[link.From], gauge[link.To]);
            double miss = Miss(
                link,
                density,
                viscosity,
                up + weight[link.From],
                down + weight[link.To],
                (up, down),
                state.FlowIn(link.Name).CubicMetersPerSecond
            );
            Assert.True(Math.Abs(miss) <= limit, $"{what}: '{link.Name}' misses its law by {miss} Pa.");
        }
    }

    /// <param name="link">The link.</param>
    /// <param name="density">kg/m3.</param>
    /// <param name="viscosity">Dynamic, Pa s.</param>
    /// <param name="up">Upstream pressure as the law feels it, Pa: with the weight of the column where it counts.</param>
    /// <param name="down">Downstream pressure, likewise.</param>
    /// <param name="gauges">The gauge pressures at both ends, Pa.</param>
    /// <param name="q">Flow, m3/s.</param>
    internal static double Miss(
        Line link,
        double density,
        double viscosity,
        double up,
        double down,
        (double Up, double Down) gauges,
        double q
    ) =>
        link.Law switch
        {
            PipeSettings p => OneWay(p.OneWay, q, up - down, 0, Pipe(p, density, viscosity, q)),
            SquareSettings { IntoSpace: true } s => OneWay(
                s.OneWay,
                q,
                gauges.Up - gauges.Down,
                0,
                Square(s, density, viscosity, q)
            ),
            SquareSettings s => OneWay(s.OneWay, q, up - down, s.Opening, s.Opening + Square(s, density, viscosity, q)),
            CappedSettings c => Capped(c, density, q, gauges.Up - gauges.Down),
            PumpTableSettings t => OneWay(true, q, up - down, -Rise(t, 0), -Rise(t, q)),
            PumpPowerSettings t => OneWay(
                true,
                q,
                up - down,
                -t.Shutoff,
                (t.Factor * Math.Pow(q, t.Exponent)) - t.Shutoff
            ),
            RegulatorSettings { Bypass: true } r => Bypass(r, density, q, up - down, gauges),
            RegulatorSettings r => Reducing(r, density, q, up - down, gauges),
            _ => double.NaN,
        };

    /// <summary>A shut part must be pushed shut; one that flows must lose what it says.</summary>
    private static double OneWay(bool oneWay, double q, double difference, double atNoFlow, double loss) =>
        !oneWay || q > 0 ? difference - loss
        : q < 0 ? double.NaN
        : Math.Max(0, difference - atNoFlow);

    private static double Pipe(PipeSettings p, double density, double viscosity, double q)
    {
        Real velocity = Friction.Velocity(new Real(q), new Real(p.Bore));
        Real friction = Friction.PressureLoss(
            velocity,
            new Real(p.Bore),
            new Real(p.Length),
            new Real(p.Roughness),
            new Real(density),
            new Real(viscosity)
        );
        return friction.Value + MinorLoss.PressureLoss(new Real(p.LossCoefficient), new Real(density), velocity).Value;
    }

    private static double Square(SquareSettings s, double density, double viscosity, double q) =>
        (s.LinearPerViscosity * viscosity * q) + (s.SquarePerDensity * density * q * Math.Abs(q));

    private static double Capped(CappedSettings c, double density, double q, double difference) =>
        q < 0 ? double.NaN
        : q == 0 ? (c.Commanded == 0 ? 0 : Math.Max(0, difference))
        : q < c.Commanded * (1 - 1e-12)
            ? difference - (density / c.MeasuredDensity * q * q / (c.Coefficient * c.Coefficient))
        : Math.Min(0, difference - (density / c.MeasuredDensity * q * q / (c.Coefficient * c.Coefficient)));

    private static double Rise(PumpTableSettings t, double q)
    {
        Piece piece = t.Pieces[0];
        foreach (Piece next in t.Pieces.Skip(1).Where(next => next.X0 <= q))
        {
            piece = next;
        }

        return piece.At(q);
    }

    private static double Bypass(
        RegulatorSettings r,
        double density,
        double q,
        double difference,
        (double Up, double Down) gauges
    )
    {
        double held =
            r.Setting + (r.Reference * (1 + r.Influence)) - (r.Influence * gauges.Down) + (r.Slope * q) - gauges.Up;
        double open = (r.SquarePerDensity * density * q * q) - difference;
        return q > 0 ? Math.Max(held, open) : -Math.Min(0, Math.Max(held, open));
    }

    private static double Reducing(
        RegulatorSettings r,
        double density,
        double q,
        double difference,
        (double Up, double Down) gauges
    )
    {
        double held = r.Setting + r.Reference - (r.Slope * q) - gauges.Down;
        double open = difference - (r.SquarePerDensity * density * q * q);
        return q > 0 ? Math.Min(held, open) : Math.Max(0, Math.Min(held, open));
    }
}
