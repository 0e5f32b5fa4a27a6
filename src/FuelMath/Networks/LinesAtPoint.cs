using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Sets the parts of a network's lines for the conditions of a solve.</summary>
internal sealed class LinesAtPoint
{
    private readonly ImmutableArray<Line> lines;
    private readonly double?[] tanks;

    internal LinesAtPoint(ImmutableArray<Line> lines, IEnumerable<Network.Node> nodes)
    {
        this.lines = lines;
        var known = nodes.Where(n => n.IsFixed).ToDictionary(n => n.Name, n => n.PressureSi, StringComparer.Ordinal);
        tanks = [.. lines.Select(l => TankOf(l, known))];
    }

    /// <summary>Sets fluid and parts of a workspace.</summary>
    /// <inheritdoc cref="SettingsAt" />
    internal void Put(NetworkWork<Real> work, NetworkConditions conditions)
    {
        work.SetFluid(new Real(conditions.DensitySi), new Real(conditions.ViscositySi));
        foreach ((int link, double[] settings) in SettingsAt(conditions))
        {
            work.Set(link, settings);
        }
    }

    /// <summary>The settings of the parts that change from point to point.</summary>
    /// <exception cref="ArgumentException">
    /// A part needs an input that is not given; the message names the line.
    /// </exception>
    /// <exception cref="OutsideTableException">A part has no data there.</exception>
    internal (int Link, double[] Settings)[] SettingsAt(NetworkConditions conditions)
    {
        CommandsArrive(conditions);
        var found = new List<(int, double[])>();
        for (int i = 0; i < lines.Length; i++)
        {
            FlowPart part = lines[i].Part;
            Check(i, part.Needs, conditions);
            if (part.Reading() is { } reading)
            {
                PointInputs inputs = InputsOf(i, conditions);
                double[] settings = new double[part.Law.SettingCount];
                reading.Judge(inputs);
                reading.Set(inputs);
                reading.Write(inputs, settings);
                found.Add((i, settings));
            }
        }

        return [.. found];
    }

    /// <summary>The inputs of a line's part; NaN where not given, which <see cref="Check"/> has refused.</summary>
    private PointInputs InputsOf(int line, NetworkConditions conditions) =>
        new()
        {
            Manifold = conditions.Manifold?.Si ?? double.NaN,
            Tank = tanks[line] ?? conditions.Tank?.Si ?? double.NaN,
            PumpVolts = conditions.PumpVoltage?.InSi() ?? double.NaN,
            PumpFlowScale = 1,
            DrawCoefficient = double.NaN,
            DrawCommanded = conditions.Commands.TryGetValue(lines[line].Name, out VolumeFlow asked)
                ? asked.InSi()
                : double.NaN,
        };

    /// <summary>Refuses commands to lines that do not use them.</summary>
    private void CommandsArrive(NetworkConditions conditions)
    {
        string? lost = conditions.Commands.Keys.FirstOrDefault(name =>
            !lines.Any(l => l.Name == name && l.Part.Needs.HasFlag(PartNeeds.CommandedFlow))
        );
        if (lost is not null)
        {
            throw new RefusedArgumentException(
                RefusalCode.WrongKind,
                $"Must command lines of injectors without a command of their own; '{lost:part}' is none.",
                nameof(conditions)
            );
        }
    }

    private void Check(int line, PartNeeds needs, NetworkConditions conditions)
    {
        string? missing =
            needs.HasFlag(PartNeeds.PumpVoltage) && conditions.PumpVoltage is null ? "the voltage at its terminals"
            : needs.HasFlag(PartNeeds.ManifoldPressure) && conditions.Manifold is null ? "the pressure in the manifold"
            : needs.HasFlag(PartNeeds.TankPressure) && (tanks[line] ?? conditions.Tank?.Si) is null
                ? "the pressure in its tank"
            : needs.HasFlag(PartNeeds.CommandedFlow) && !conditions.Commands.ContainsKey(lines[line].Name)
                ? "the commanded flow"
            : null;
        if (missing is not null)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                $"Must give {missing:missing}, which the part of line '{lines[line].Name:part}' needs; the conditions do not.",
                nameof(conditions)
            );
        }
    }

    /// <summary>The tank of a regulator is the one it returns to, or else the one it is fed from.</summary>
    private static double? TankOf(Line line, Dictionary<string, double> known) =>
        known.TryGetValue(line.To, out double behind) ? behind
        : known.TryGetValue(line.From, out double ahead) ? ahead
        : null;
}
