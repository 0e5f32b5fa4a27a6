using System.Diagnostics;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Benchmarks;

/// <summary>
/// Columns beside plain loops over doubles, in one process and interleaved: the least time of each over many rounds, by row.
/// Processor time, so that whatever else runs on the machine counts little.
/// </summary>
internal static class ColumnRatios
{
    private const double Rated = 0.006;

    internal static void Run(int rows)
    {
        var log = new Log(rows);
        Console.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"{rows} rows, least of several rounds, ns a row; interleaved")
        );
        Console.WriteLine($"{"", -22}{"loop", 8}{"column", 8}{"ratio", 8}{"bytes", 8}");
        foreach ((string name, Action loop, Action column) in log.Pairs())
        {
            (double plain, double vector) = Least(loop, column, rows);
            long before = GC.GetAllocatedBytesForCurrentThread();
            column();
            long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name, -22}{plain, 8:0.00}{vector, 8:0.00}{vector / plain, 8:0.00}{bytes, 8}"
                )
            );
        }
    }

    private static (double Loop, double Column) Least(Action loop, Action column, int rows)
    {
        int repeats = Math.Max(1, 100_000 / rows);
        (double plain, double vector) = (double.MaxValue, double.MaxValue);
        long end = Stopwatch.GetTimestamp() + (2 * Stopwatch.Frequency);
        for (int round = 0; round < 5 || Stopwatch.GetTimestamp() < end; round++)
        {
            plain = Math.Min(plain, Time(loop, repeats));
            vector = Math.Min(vector, Time(column, repeats));
        }

        return (plain * 1e9 / rows, vector * 1e9 / rows);
    }

    internal static double Time(Action action, int repeats)
    {
        TimeSpan start = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < repeats; i++)
        {
            action();
        }

        return (Environment.CpuUsage.TotalTime - start).TotalSeconds / repeats;
    }

    /// <summary>An invented log, and each column with its plain loop.</summary>
    internal sealed class Log
    {
        private readonly double[] width;
        private readonly double[] period;
        private readonly double[] voltage;
        private readonly double[] pressure;
        private readonly double[] flow;
        private readonly double[] results;
        private readonly Grid deadTime = DeadTime();
        private readonly FormulaInfo mass = FormulaCatalog.Named("Pulse.Mass");
        private readonly FormulaInfo duty = FormulaCatalog.Named("Pulse.DutyCycle");
        private readonly FormulaInfo pulseWidth = FormulaCatalog.Named("PulseTiming.PulseWidth");
        private readonly FormulaInfo carried = FormulaCatalog.Named("Orifice.CarriedMassFlow");
        private readonly FormulaInfo friction = FormulaCatalog.Named("Friction.ColebrookFactor");
        private readonly FormulaInfo delivered;

        internal Log(int rows)
        {
            var random = new Random(7);
            double[] Between(double from, double to) =>
                [.. Enumerable.Range(0, rows).Select(_ => from + ((to - from) * random.NextDouble()))];
            width = Between(0.002, 0.015);
            period = Between(0.016, 0.12);
            voltage = Between(9, 15.5);
            pressure = Between(2e5, 6e5);
            flow = Between(0.004, 0.008);
            results = new double[rows];
            delivered = InjectorFormulas.DeliveredMass(deadTime);
        }

        internal IEnumerable<(string Name, Action Loop, Action Column)> Pairs()
        {
            FormulaColumns.Input[] of(params FormulaColumns.Input[] inputs) => inputs;
            FormulaColumns.Input number(double value) => FormulaColumns.Input.FromNumber(value);
            FormulaColumns.Input column(double[] values) => FormulaColumns.Input.FromColumn(values);

            FormulaColumns.Input[] dutyInputs = of(column(width), column(period));
            yield return ("duty cycle", DutyLoop, () => FormulaColumns.Run(duty, dutyInputs, results));
            FormulaColumns.Input[] massInputs = of(column(flow), column(width), number(0));
            yield return ("pulse mass", MassLoop, () => FormulaColumns.Run(mass, massInputs, results));
            FormulaColumns.Input[] widthInputs = of(column(width), column(flow), column(period));
            yield return ("pulse width", WidthLoop, () => FormulaColumns.Run(pulseWidth, widthInputs, results));
            FormulaColumns.Input[] carriedInputs = of(
                number(Rated),
                number(3e5),
                number(740),
                column(pressure),
                number(740)
            );
            yield return ("carried flow", CarriedLoop, () => FormulaColumns.Run(carried, carriedInputs, results));
            FormulaColumns.Input[] deliveredInputs = of(
                number(Rated),
                number(3e5),
                number(740),
                column(width),
                column(voltage),
                column(pressure),
                number(740)
            );
            yield return (
                "delivered mass",
                DeliveredLoop,
                () => FormulaColumns.Run(delivered, deliveredInputs, results)
            );
            FormulaColumns.Input[] frictionInputs = of(column(pressure), column(width));
            yield return ("friction factor", FrictionLoop, () => FormulaColumns.Run(friction, frictionInputs, results));
        }

        private static Grid DeadTime()
        {
            double[] volts = [8, 9, 9.8, 10.7, 11.5, 12, 12.9, 13.4, 14, 15, 16.5];
            double[] pressures = [1.5e5, 2.2e5, 3e5, 3.5e5, 4.4e5, 5.5e5, 7e5];
            var times = new double[volts.Length, pressures.Length];
            for (int i = 0; i < volts.Length; i++)
            {
                for (int j = 0; j < pressures.Length; j++)
                {
                    times[i, j] = 1e-3 * ((12 / volts[i]) - 0.3 + (pressures[j] / 2e6));
                }
            }

            return new("t", new Grid.Axis("V", volts), new Grid.Axis("Pa", pressures), times, OutsideRange.Refuse);
        }

        private void DutyLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = width[i] / period[i];
            }
        }

        private void MassLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = Math.Max(flow[i] * width[i], 0);
            }
        }

        private void WidthLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = (width[i] / flow[i]) + period[i];
            }
        }

        private void CarriedLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = Rated * Math.Sqrt(pressure[i] / 3e5);
            }
        }

        private void DeliveredLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                double dead = deadTime.At(voltage[i], pressure[i]);
                results[i] = Math.Max(Rated * Math.Sqrt(pressure[i] / 3e5) * Math.Max(width[i] - dead, 0), 0);
            }
        }

        private void FrictionLoop()
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = Friction.ColebrookFactor(new Real(pressure[i]), new Real(width[i])).Value;
            }
        }
    }
}
