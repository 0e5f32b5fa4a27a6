using FuelMath.Formulas;
using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Columns;

/// <summary>Rows of a run in every place of a block: against the plain number, and good or bad as a checked call says.</summary>
public sealed class ColumnRowsTests
{
    private static readonly string[] PlainNames =
    [
        "Orifice.CarriedMassFlow",
        "Pulse.Mass",
        "Pulse.EffectiveWidth",
        "Pulse.DutyCycle",
        "PulseTiming.PulseWidth",
    ];

    private static readonly FormulaInfo Loss = FormulaCatalog.Named("Friction.PressureLoss");

    /// <summary>No rows, fewer than a vector, one more, several, and some blocks with a rest of their own.</summary>
    public static TheoryData<int> Lengths() => [0, 1, 3, 4, 5, 7, 8, 9, 16, 29, 127, 128, 129, 300];

    /// <summary>Formulas without a logarithm or a power have the bits of a plain number.</summary>
    public static TheoryData<string> Plain() => [.. PlainNames];

    [Theory]
    [MemberData(nameof(Lengths))]
    public void Run_AnyLength_HasTheBitsOfAPlainNumber(int rows)
    {
        foreach (string name in PlainNames)
        {
            (FormulaInfo formula, double[][] columns) = Usual(name, rows);
            var results = new double[rows];

            ColumnReport report = FormulaColumns.Run(formula, Inputs(columns), results);

            Assert.Equal(Enumerable.Range(0, rows).Select(row => At(formula, columns, row)), results);
            Assert.Equal((rows, 0, null), (report.Rows, report.BadRows, report.FirstBadRow));
        }
    }

    /// <summary>Each width by itself: vectors of four or two, and of eight.</summary>
    [Theory]
    [MemberData(nameof(Plain))]
    public void Run_EitherWidth_HasTheBitsOfAPlainNumber(string name)
    {
        (FormulaInfo formula, double[][] columns) = Usual(name, 41);
        var (narrow, wide) = (new double[41], new double[41]);

        ColumnRunner.Run<Lane>(formula, Inputs(columns), narrow);
        ColumnRunner.Run<WideLane>(formula, Inputs(columns), wide);

        Assert.Equal(Enumerable.Range(0, 41).Select(row => At(formula, columns, row)), narrow);
        Assert.Equal(narrow, wide);
    }

    [Theory]
    [InlineData("Friction.ColebrookFactor")]
    [InlineData("Friction.PressureLoss")]
    public void Run_Friction_IsThePlainNumberToEightUnits(string name)
    {
        (FormulaInfo formula, double[][] columns) = Usual(name, 2000);
        var results = new double[2000];

        FormulaColumns.Run(formula, Inputs(columns), results);

        for (int row = 0; row < results.Length; row++)
        {
            double plain = At(formula, columns, row);
            long apart = BitConverter.DoubleToInt64Bits(plain) - BitConverter.DoubleToInt64Bits(results[row]);
            Assert.InRange(plain == results[row] ? 0 : Math.Abs(apart), 0, 8);
        }
    }

    /// <summary>A roughness above a twentieth of the bore: the rows in which a checked call refuses are bad, and no others.</summary>
    [Fact]
    public void Run_ABoundBetweenArguments_IsHeldRowByRow()
    {
        var random = new Random(11);
        double[] bore = [.. Enumerable.Range(0, 1000).Select(_ => 0.002 + (0.02 * random.NextDouble()))];
        double[] roughness = [.. bore.Select(b => 0.1 * b * random.NextDouble())];
        roughness[17] = 0.05 * bore[17] * (1 + 5e-10);
        roughness[18] = 0.05 * bore[18] * (1 + 5e-9);
        var results = new double[1000];

        ColumnReport report = FormulaColumns.Run(Loss, Pipe(bore, roughness), results);

        int[] bad = [.. Enumerable.Range(0, 1000).Where(i => roughness[i] > 0.05 * (1 + 1e-9) * bore[i])];
        Assert.InRange(bad.Length, 400, 600);
        Assert.False(double.IsNaN(results[17]));
        Assert.Contains(18, bad);
        Assert.Equal(bad, Enumerable.Range(0, 1000).Where(i => double.IsNaN(results[i])));
        Assert.Equal((bad.Length, bad[0]), (report.BadRows, report.FirstBadRow));
    }

    [Fact]
    public void Run_ANumberForAllRowsOutOfRange_MakesAllRowsBad()
    {
        var results = new double[300];
        double[] bore = [.. Enumerable.Repeat(0.008, 300)];
        FormulaColumns.Input[] inputs = Pipe(bore, new double[300]);
        inputs[4] = FormulaColumns.Input.FromNumber(double.NaN);

        ColumnReport report = FormulaColumns.Run(Loss, inputs, results);

        Assert.Equal((300, 300, 0), (report.Rows, report.BadRows, report.FirstBadRow));
        Assert.All(results, r => Assert.Equal(double.NaN, r));
    }

    /// <summary>Gaps, infinities and numbers out of range strewn over a long log: every one is counted, none besides.</summary>
    [Fact]
    public void Run_GapsInALongLog_AreCountedExactly()
    {
        const int Rows = 200_003;
        var random = new Random(3);
        double[] bore = [.. Enumerable.Repeat(0.008, Rows)];
        double[] roughness = new double[Rows];
        int bad = 0;
        int? first = null;
        for (int i = 0; i < Rows; i++)
        {
            if (random.Next(50) == 0)
            {
                double[] odd = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, 1e7];
                bore[i] = odd[random.Next(odd.Length)];
                bad++;
                first ??= i;
            }
        }

        var results = new double[Rows];
        ColumnReport report = FormulaColumns.Run(Loss, Pipe(bore, roughness), results);

        Assert.Equal((Rows, bad, first), (report.Rows, report.BadRows, report.FirstBadRow));
        Assert.Equal(bad, results.Count(double.IsNaN));
    }

    /// <summary>A finite number in range whose result is not finite is a bad row, alone among its neighbors.</summary>
    [Fact]
    public void Run_AResultThatIsNotFinite_IsABadRow()
    {
        FormulaInfo formula = FormulaCatalog.Named("Pulse.EffectiveWidth");
        FormulaInfo overflow = FormulaInfo.Of(
            default(Inverse),
            "Own.Inverse",
            "The inverse",
            FormulaInfo.FormulaTopic.Injectors,
            [formula.Arguments[0]],
            [],
            [],
            formula.Result,
            formula.Sources,
            new([1], 1, 1e-15, new DataSource("Definition", "by hand"))
        );
        double[] column = [.. Enumerable.Range(0, 21).Select(i => (double)(i % 20))];
        var results = new double[21];

        ColumnReport report = FormulaColumns.Run(overflow, [FormulaColumns.Input.FromColumn(column)], results);

        Assert.Equal((21, 2, 0), (report.Rows, report.BadRows, report.FirstBadRow));
        Assert.Equal([0, 20], Enumerable.Range(0, 21).Where(i => double.IsNaN(results[i])));
        Assert.Equal(0.5, results[2]);
    }

    private readonly struct Inverse : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => 1 / a[0];
    }

    private static double At(FormulaInfo formula, double[][] columns, int row) =>
        formula.At<Real>([.. columns.Select(c => new Real(c[row]))]).Value;

    private static FormulaColumns.Input[] Inputs(double[][] columns) =>
        [.. columns.Select(c => FormulaColumns.Input.FromColumn(c))];

    private static FormulaColumns.Input[] Pipe(double[] bore, double[] roughness) =>
        [
            FormulaColumns.Input.FromNumber(2),
            FormulaColumns.Input.FromColumn(bore),
            FormulaColumns.Input.FromNumber(1.5),
            FormulaColumns.Input.FromColumn(roughness),
            FormulaColumns.Input.FromNumber(740),
            FormulaColumns.Input.FromNumber(5e-4),
        ];

    private static (FormulaInfo Formula, double[][] Columns) Usual(string name, int rows)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);
        var @case = new FormulaCase(formula);
        var random = new Random(rows);
        double[][] columns = [.. formula.Arguments.Select(_ => new double[rows])];
        for (int row = 0; row < rows; row++)
        {
            double[] point = @case.Point([.. formula.Arguments.Select(_ => random.NextDouble())]);
            for (int i = 0; i < point.Length; i++)
            {
                columns[i][row] = point[i];
            }
        }

        return (formula, columns);
    }
}
