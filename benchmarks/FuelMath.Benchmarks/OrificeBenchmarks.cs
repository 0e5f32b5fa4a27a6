using BenchmarkDotNet.Attributes;
using FuelMath.Formulas;

namespace FuelMath.Benchmarks;

/// <summary>A rated flow carried to each row's pressure and density, and one mass of a pulse from it.</summary>
[MemoryDiagnoser]
public class OrificeBenchmarks
{
    private const int Rows = 4096;

    private readonly double[] pressure = new double[Rows];
    private readonly double[] density = new double[Rows];
    private readonly double[] flow = new double[Rows];

    private readonly FormulaInfo carried = FormulaCatalog.Named("Orifice.CarriedMassFlow");
    private FormulaColumns.Input[] inputs = [];

    [GlobalSetup]
    public void Setup()
    {
        inputs =
        [
            FormulaColumns.Input.FromNumber(0.006),
            FormulaColumns.Input.FromNumber(3e5),
            FormulaColumns.Input.FromNumber(690),
            FormulaColumns.Input.FromColumn(pressure),
            FormulaColumns.Input.FromColumn(density),
        ];
        var random = new Random(1);
        for (int i = 0; i < Rows; i++)
        {
            pressure[i] = 2e5 + (4e5 * random.NextDouble());
            density[i] = 700 + (100 * random.NextDouble());
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double HandWritten()
    {
        for (int i = 0; i < flow.Length; i++)
        {
            flow[i] = 0.006 * Math.Sqrt(pressure[i] / 3e5 * (density[i] / 690));
        }

        return flow[^1];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public double OneReal()
    {
        for (int i = 0; i < flow.Length; i++)
        {
            flow[i] = Carried(i).Value;
        }

        return flow[^1];
    }

    /// <summary>In the widest vectors of the machine, with all checks.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Columns()
    {
        FormulaColumns.Run(carried, inputs, flow);
        return flow[^1];
    }

    /// <summary>Static flow, effective width and mass of one pulse.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double OnePulse()
    {
        for (int i = 0; i < flow.Length; i++)
        {
            Real width = Pulse.EffectiveWidth(new Real(0.004), new Real(0.0009));
            flow[i] = Pulse.Mass(Carried(i), width, new Real(0)).Value;
        }

        return flow[^1];
    }

    private Real Carried(int i) =>
        Orifice.CarriedMassFlow(
            new Real(0.006),
            new Real(3e5),
            new Real(690),
            new Real(pressure[i]),
            new Real(density[i])
        );
}
