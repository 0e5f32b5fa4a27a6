using BenchmarkDotNet.Attributes;
using FuelMath.Formulas;

namespace FuelMath.Benchmarks;

/// <summary>
/// Colebrook over a column: a loop of hand-written doubles, the generic formula read as a real number, and the column in
/// vectors. The claim is the ratio: 1.0 for Real, at most 0.4 for vectors of 256 bits and 0.25 for 512.
/// </summary>
[MemoryDiagnoser]
public class FrictionBenchmarks
{
    private const int Rows = 4096;
    private const double C = 0.86858896380650366;

    private readonly double[] reynolds = new double[Rows];
    private readonly double[] roughness = new double[Rows];
    private readonly double[] factor = new double[Rows];

    private readonly FormulaInfo colebrook = FormulaCatalog.Named("Friction.ColebrookFactor");
    private FormulaColumns.Input[] inputs = [];

    [GlobalSetup]
    public void Setup()
    {
        inputs = [FormulaColumns.Input.FromColumn(reynolds), FormulaColumns.Input.FromColumn(roughness)];
        var random = new Random(1);
        for (int i = 0; i < Rows; i++)
        {
            reynolds[i] = 4000 * Math.Pow(1e5, random.NextDouble());
            roughness[i] = 1e-6 * Math.Pow(5e4, random.NextDouble());
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double HandWritten()
    {
        for (int i = 0; i < factor.Length; i++)
        {
            double a = 2.51 / reynolds[i];
            double b = roughness[i] / 3.7;
            double x = -C * Math.Log(b + (6.5 * a));
            double inside = b + (a * x);
            double f = x + (C * Math.Log(inside));
            double r = a / inside;
            double f1 = 1 + (C * r);
            double f2 = -C * r * r;
            double f3 = -2 * f2 * r;
            double square = f1 * f1;
            x -= f * ((6 * square) - (3 * f * f2)) / ((6 * f1 * (square - (f * f2))) + (f * f * f3));
            inside = b + (a * x);
            x -= (x + (C * Math.Log(inside))) * inside / (inside + (C * a));
            factor[i] = 1 / (x * x);
        }

        return factor[^1];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public double OneReal()
    {
        for (int i = 0; i < factor.Length; i++)
        {
            factor[i] = Friction.ColebrookFactor(new Real(reynolds[i]), new Real(roughness[i])).Value;
        }

        return factor[^1];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public double OneLane()
    {
        ColumnRunner.Run<Lane>(colebrook, inputs, factor);
        return factor[^1];
    }

    /// <summary>In the widest vectors of the machine, with all checks.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Columns()
    {
        FormulaColumns.Run(colebrook, inputs, factor);
        return factor[^1];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public double OneDual()
    {
        for (int i = 0; i < factor.Length; i++)
        {
            factor[i] = Friction
                .ColebrookFactor(Dual<Real>.Variable(new Real(reynolds[i])), new Real(roughness[i]))
                .Slope.Value;
        }

        return factor[^1];
    }
}
