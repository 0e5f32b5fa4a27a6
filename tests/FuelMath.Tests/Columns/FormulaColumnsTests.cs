using FuelMath.Formulas;
using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Columns;

/// <summary>Any listed formula over rows: what each row gives, which are bad, and that nothing depends on place or thread.</summary>
public sealed class FormulaColumnsTests
{
    private const int Rows = 53;

    private static readonly FormulaInfo Carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

    public static TheoryData<string> Names => [.. FormulaCatalog.All.Select(f => f.Name)];

    /// <summary>A row is bad exactly where a checked call refuses; elsewhere it has the bits of the formula in a vector.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Run_AnyFormula_IsThatOfACheckedCallInEachRow(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);
        double[][] columns = Columns(formula, new Random(name.Length));
        var results = new double[Rows];

        ColumnReport report = FormulaColumns.Run(formula, Inputs(columns), results);

        int bad = 0;
        int? first = null;
        for (int row = 0; row < Rows; row++)
        {
            double[] point = [.. columns.Select(c => c[row])];
            bool holds = formula.TryCalculate(FormulaInfo.CallUnits.Si, point, out double value, out _);
            Assert.Equal(holds, !double.IsNaN(results[row]));
            if (holds)
            {
                double scale = Math.Max(Math.Abs(value), FormulaCase.Named(name).Terms);
                Close.WithinOf(scale, 1e-11, value, results[row]);
            }
            else
            {
                bad++;
                first ??= row;
            }
        }

        Assert.Equal((Rows, bad, first), (report.Rows, report.BadRows, report.FirstBadRow));
        Assert.True(bad > 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Run_BothWidths_AgreeToRounding(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);
        double[][] columns = Columns(formula, new Random(name.Length));
        var narrow = new double[Rows];
        var wide = new double[Rows];

        ColumnRunner.Run<Lane>(formula, Inputs(columns), narrow);
        ColumnRunner.Run<WideLane>(formula, Inputs(columns), wide);

        // Logarithms and powers of the two widths may differ in the last digits.
        for (int row = 0; row < Rows; row++)
        {
            Assert.Equal(double.IsNaN(narrow[row]), double.IsNaN(wide[row]));
            Assert.False(Math.Abs(narrow[row] - wide[row]) > 1e-13 * Math.Abs(narrow[row]));
        }
    }

    /// <summary>800 cm3/min carried from 3 bar, by hand: times the root of four thirds at 4 bar, and none without pressure.</summary>
    [Fact]
    public void Run_CarriedFlow_GivesTheValueByHand()
    {
        double rated = 800 / 6e7;
        double[] pressures = [4e5, 0, double.NaN, 3e5, -1, 12e5];
        var flows = new double[6];

        ColumnReport report = FormulaColumns.Run(Carried, Flow(rated, pressures), flows);

        Close.Within(1e-14, rated * Math.Sqrt(4 / 3.0), flows[0]);
        Assert.Equal(0, flows[1]);
        Close.Within(1e-14, rated, flows[3]);
        Close.Within(1e-14, 2 * rated, flows[5]);
        Assert.Equal((6, 2, 2), (report.Rows, report.BadRows, report.FirstBadRow));
        Assert.Equal([2, 4], Enumerable.Range(0, 6).Where(i => double.IsNaN(flows[i])));
    }

    /// <summary>Pieces on sixteen threads, and one run: the same bits, whatever the lengths of the pieces.</summary>
    [Fact]
    public void Run_OnSixteenThreads_GivesTheSameBits()
    {
        const int Length = 10_007;
        var random = new Random(5);
        double[] pressures = [.. Enumerable.Range(0, Length).Select(_ => 1e6 * (random.NextDouble() - 0.02))];
        var whole = new double[Length];
        var pieces = new double[Length];
        ColumnReport report = FormulaColumns.Run(Carried, Flow(1e-5, pressures), whole);
        int bad = 0;

        Parallel.For(
            0,
            16,
            i =>
            {
                (int from, int to) = (i * Length / 16, (i + 1) * Length / 16);
                ColumnReport own = FormulaColumns.Run(
                    Carried,
                    Flow(1e-5, pressures.AsMemory(from, to - from)),
                    pieces.AsSpan(from, to - from)
                );
                Interlocked.Add(ref bad, own.BadRows);
            }
        );

        Assert.Equal(whole, pieces);
        Assert.Equal(report.BadRows, bad);
        Assert.Equal(pressures.Count(p => p < 0), bad);
    }

    [Fact]
    public void Run_OverItsOwnInput_ReadsEachRowFirst()
    {
        double[] column = [4e5, 3e5, 12e5, 0, 1e5];
        var apart = new double[5];
        FormulaColumns.Run(Carried, Flow(1e-5, column), apart);

        FormulaColumns.Run(Carried, Flow(1e-5, column), column);

        Assert.Equal(apart, column);
    }

    [Fact]
    public void Run_AllocatesNothing()
    {
        var results = new double[1000];
        FormulaColumns.Input[] inputs = Flow(1e-5, Enumerable.Repeat(3e5, 1000).ToArray());
        FormulaColumns.Run(Carried, inputs, results);

        long before = GC.GetAllocatedBytesForCurrentThread();
        FormulaColumns.Run(Carried, inputs, results);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>A log through an 11 x 7 table, gaps among it: each row as the table by search and the line by hand.</summary>
    [Fact]
    public void DeliveredMass_OverATable_IsTheLineByHand()
    {
        var random = new Random(17);
        double[] volts = [6, 7, 8.5, 9, 10, 11, 12, 12.5, 13, 14, 16];
        double[] pressures = [1e5, 2e5, 2.5e5, 3e5, 4e5, 6e5, 8e5];
        var times = new double[11, 7];
        for (int i = 0; i < times.Length; i++)
        {
            times[i / 7, i % 7] = 0.01 / volts[i / 7] * (1 + (pressures[i % 7] / 4e6));
        }

        var table = new Grid(
            "dead time",
            new Grid.Axis("V", volts),
            new Grid.Axis("Pa", pressures),
            times,
            OutsideRange.Refuse
        );
        const int Length = 1003;
        double[] Drawn(double low, double high) =>
            [.. Enumerable.Range(0, Length).Select(_ => low + ((high - low) * random.NextDouble()))];
        (double[] width, double[] voltage, double[] pressure) = (Drawn(0, 0.01), Drawn(5.9, 16), Drawn(1e5, 8e5));
        var mass = new double[Length];

        ColumnReport report = FormulaColumns.Run(
            InjectorFormulas.DeliveredMass(table),
            [
                FormulaColumns.Input.FromNumber(0.006),
                FormulaColumns.Input.FromNumber(3e5),
                FormulaColumns.Input.FromNumber(740),
                FormulaColumns.Input.FromColumn(width),
                FormulaColumns.Input.FromColumn(voltage),
                FormulaColumns.Input.FromColumn(pressure),
                FormulaColumns.Input.FromNumber(740),
            ],
            mass
        );

        Assert.Equal(voltage.Count(v => v < 6 * (1 - 1e-9)), report.BadRows);
        Assert.True(report.BadRows > 0);
        for (int i = 0; i < Length; i++)
        {
            if (voltage[i] < 6)
            {
                Assert.Equal(double.NaN, mass[i]);
                continue;
            }

            double flow = 0.006 * Math.Sqrt(pressure[i] / 3e5);
            double line = flow * Math.Max(0, width[i] - table.At(voltage[i], pressure[i]));
            Close.WithinOf(flow * 0.01, 1e-13, line, mass[i]);
        }
    }

    [Fact]
    public void DeliveredMass_ATableThatIsNone_IsRefused()
    {
        Grid Of(double volts, double time) =>
            new(
                "t",
                new Grid.Axis("V", [volts, 14]),
                new Grid.Axis("Pa", [1e5, 4e5]),
                new[,]
                {
                    { time, 1e-3 },
                    { 1e-3, 1e-3 },
                },
                OutsideRange.Refuse
            );

        Assert.Throws<ArgumentNullException>(() => InjectorFormulas.DeliveredMass(null!));
        Assert.Throws<ArgumentException>("deadTime", () => InjectorFormulas.DeliveredMass(Of(12, -1e-3)));
        Assert.Throws<ArgumentException>("deadTime", () => InjectorFormulas.DeliveredMass(Of(-12, 1e-3)));
        FormulaInfo formula = InjectorFormulas.DeliveredMass(Of(12, 1e-3));
        Close.Within(
            1e-12,
            formula.Example.Expected,
            formula.Calculate(FormulaInfo.CallUnits.Si, formula.Example.Arguments.AsSpan())
        );
    }

    [Fact]
    public void RunStrict_ABadRow_IsRefusedWithItsNumber()
    {
        var flows = new double[3];
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FormulaColumns.RunStrict(Carried, Flow(1e-5, new[] { 1e5, double.NaN, -1 }), flows)
        );

        Assert.Equal("inputs", refused.ParamName);
        Words.Says("2, 3, 1", refused);
        FormulaColumns.RunStrict(Carried, Flow(1e-5, new[] { 1e5, 2e5, 3e5 }), flows);
        Close.Within(1e-14, 1e-5, flows[2]);
    }

    [Fact]
    public void Run_WhatDoesNotFit_IsRefused()
    {
        var flows = new double[3];
        Assert.Throws<ArgumentNullException>(() => FormulaColumns.Run(null!, [], flows));
        Assert.Throws<ArgumentException>("inputs", () => FormulaColumns.Run(Carried, [], flows));
        Assert.Throws<ArgumentException>("inputs", () => FormulaColumns.Run(Carried, Flow(1e-5, new double[2]), flows));
        double[] memory = new double[4];
        Assert.Throws<ArgumentException>(
            "inputs",
            () => FormulaColumns.Run(Carried, Flow(1e-5, memory.AsMemory(0, 3)), memory.AsSpan(1, 3))
        );
    }

    private static FormulaColumns.Input[] Flow(double rated, ReadOnlyMemory<double> pressures) =>
        [
            FormulaColumns.Input.FromNumber(rated),
            FormulaColumns.Input.FromNumber(3e5),
            FormulaColumns.Input.FromNumber(740),
            FormulaColumns.Input.FromColumn(pressures),
            FormulaColumns.Input.FromNumber(740),
        ];

    private static FormulaColumns.Input[] Inputs(double[][] columns) =>
        [.. columns.Select(c => FormulaColumns.Input.FromColumn(c))];

    /// <summary>Rows over the usual range, with the edges, beyond them, gaps and infinities among them.</summary>
    private static double[][] Columns(FormulaInfo formula, Random random)
    {
        var @case = new FormulaCase(formula);
        var columns = formula.Arguments.Select(_ => new double[Rows]).ToArray();
        for (int row = 0; row < Rows; row++)
        {
            double[] fractions = [.. formula.Arguments.Select(_ => random.NextDouble())];
            double[] point = @case.Point(fractions);
            int odd = random.Next(point.Length);
            FormulaInfo.Argument argument = formula.Arguments[odd];
            point[odd] = (row % 9) switch
            {
                3 => double.NaN,
                4 => argument.Minimum - Math.Max(1, Math.Abs(argument.Minimum)),
                5 => double.PositiveInfinity,
                6 => argument.UsualMinimum,
                7 => argument.UsualMaximum,
                _ => point[odd],
            };
            for (int i = 0; i < point.Length; i++)
            {
                columns[i][row] = point[i];
            }
        }

        return columns;
    }
}
