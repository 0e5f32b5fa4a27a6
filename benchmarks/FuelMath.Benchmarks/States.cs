using System.Collections.Immutable;
using System.Text.Json;
using UnitsNet;

namespace FuelMath.Benchmarks;

/// <summary>
/// Writes what the library finds and concludes for the systems of a folder, in full digits and SI units, so that an independent model can
/// be held beside it: for each NAME.json with its NAME-points.json, NAME-states.json.
/// </summary>
internal static class States
{
    private const string PointsEnd = "-points.json";
    private const string StatesEnd = "-states.json";

    internal static void Run(string folder)
    {
        foreach (string points in Directory.GetFiles(folder, "*" + PointsEnd).Order(StringComparer.Ordinal))
        {
            string stem = points[..^PointsEnd.Length];
            using FileStream file = File.Create(stem + StatesEnd);
            using Utf8JsonWriter json = new(file, new JsonWriterOptions { Indented = true });
            FuelSystem system = SystemDocument.ReadFile(stem + ".json");
            SystemAssessment assessment = new(system, OperatingListDocument.ReadFile(points));
            json.WriteStartArray();
            foreach (SystemAssessment.PointAssessment point in assessment.Points)
            {
                Write(json, system, point);
            }

            json.WriteEndArray();
            Console.WriteLine(Path.GetFileName(stem));
        }
    }

    private static void Write(Utf8JsonWriter json, FuelSystem system, SystemAssessment.PointAssessment assessed)
    {
        OperatingPoint point = assessed.Point;
        json.WriteStartObject();
        json.WriteString("point", point.Name);
        json.WriteString("verdict", assessed.Verdict.Kind.ToString());
        Each(json, "findings", assessed.Verdict.Findings, f => Write(json, f));
        try
        {
            SystemState state = system.Solve(point);
            json.WriteNumber("density", system.Fuel.DensityAt(point.Fuel).KilogramsPerCubicMeter);
            json.WriteNumber("viscosity", system.Fuel.ViscosityAt(point.Fuel).PascalSeconds);
            json.WriteNumber("stoichiometricRatio", system.Fuel.StoichiometricRatio.ToMassRatio());
            Write(json, system, state);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            json.WriteString("refused", refusal.Message);
            Refusal data = Refusal.Of(refusal)!;
            json.WriteString("code", data.Code.ToString());
            json.WriteString("node", data.Node);
            json.WriteString("part", data.Part);
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, FuelSystem system, SystemState state)
    {
        json.WriteStartObject("pressures");
        foreach (string node in system.Network.Nodes.Select(n => n.Name).Except(state.Network.CutOffNodeNames))
        {
            json.WriteNumber(node, state.PressureAt(node).AboveAmbient.Pascals);
        }

        json.WriteEndObject();
        json.WriteStartObject("flows");
        foreach (Line line in system.Network.Lines)
        {
            json.WriteNumber(line.Name, state.FlowThrough(line.Name).CubicMetersPerSecond);
        }

        json.WriteEndObject();
        Each(
            json,
            "pumps",
            state.Pumps,
            p =>
            {
                json.WriteString("line", p.Line);
                json.WriteNumber("voltage", p.Voltage.Volts);
                json.WriteNumber("current", p.Current.Amperes);
                json.WriteNumber("rise", p.PressureRise.Pascals);
            }
        );
        Each(json, "stages", state.Stages, s => json.WriteNumber("width", s.PulseWidth.Seconds));
        Each(
            json,
            "injectors",
            state.Injectors,
            i =>
            {
                json.WriteNumber("chamber", i.Seat.Chamber);
                json.WriteNumber("difference", i.DifferentialPressure.Pascals);
                json.WriteNumber("voltage", i.Voltage.Volts);
                json.WriteNumber("deadTime", i.Pulse.DeadTime.Seconds);
                json.WriteNumber("mass", i.Pulse.Mass.Kilograms);
                json.WriteNumber("flow", i.MeanFlow.CubicMetersPerSecond);
            }
        );
        Each(
            json,
            "surgeTanks",
            state.SurgeTanks,
            t =>
            {
                json.WriteNumber("lift", t.LiftFlow.CubicMetersPerSecond);
                json.WriteNumber("returned", t.ReturnFlow.CubicMetersPerSecond);
                json.WriteNumber("drawn", t.DrawnFlow.CubicMetersPerSecond);
                json.WriteNumber("overflow", t.OverflowFlow.CubicMetersPerSecond);
                if (t.DrainsWithoutLift)
                {
                    json.WriteNumber("lasts", t.LastsWithoutLift().Seconds);
                }
                else
                {
                    json.WriteNull("lasts");
                }
            }
        );
        Each(json, "chambers", state.Chambers, c => Write(json, "lambda", c.Lambda));
        Write(json, "lambda", state.Lambda);
        Write(json, "pumpReserve", state.PumpReserve);
    }

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("code", finding.Code.ToString());
        json.WriteString("severity", finding.Severity.ToString());
        json.WriteString("part", finding.Part);
        json.WriteBoolean("notKnown", finding.IsNotKnown);
        Write(json, "value", finding.ValueQuantity);
        Write(json, "limit", finding.LimitQuantity);
    }

    private static void Write(Utf8JsonWriter json, string name, IQuantity? quantity)
    {
        if (quantity is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteNumber(name, quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value));
        }
    }

    private static void Write(Utf8JsonWriter json, string name, Lambda? lambda)
    {
        if (lambda is { } known)
        {
            json.WriteNumber(name, known.ToRatio());
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Each<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
