using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Tests.Assessments;
using FuelMath.Tests.Systems;
using FuelMath.Workbooks;
using UnitsNet;

namespace FuelMath.Tests.Workbooks;

/// <summary>The functions of cells: values from outside, ranges, texts with units, and the kind of each error.</summary>
public sealed class SheetFunctionTests
{
    private static readonly CultureInfo Writer = CultureInfo.InvariantCulture;

    private static readonly Lazy<SystemAssessment> Assessment = new(() =>
        new(
            VerdictCases.Healthy,
            [
                new OperatingPoint(
                    "cruise",
                    Workshop.Rpm(4000),
                    new IntakeAir(Workshop.Kilopascals(90), Workshop.Kilopascals(100), Workshop.Celsius(30)),
                    Workshop.Celsius(25),
                    ElectricPotential.FromVolts(13.8),
                    FuelCommand.HoldLambda(Lambda.FromRatio(0.9))
                ),
            ]
        )
    );

    public static TheoryData<string> OfFormulas =>
        [.. SheetFunctions.All.Where(f => f.Formula is not null).Select(f => f.Name)];

    /// <summary>The expected value is from outside: the example of each formula says from where.</summary>
    [Theory]
    [MemberData(nameof(OfFormulas))]
    public void Formula_AtItsExample_GivesTheValueFromOutside(string name)
    {
        SheetFunction function = Named(name);
        FormulaInfo formula = function.Formula!;
        object?[] cells =
        [
            .. formula.Example.Arguments.Select(
                (x, i) => (object?)formula.Arguments[i].Quantity.FromSi(x, function.Arguments[i].Unit)
            ),
        ];

        double expected = formula.Result.FromSi(formula.Example.Expected, function.ResultUnit);
        Close.Within(formula.Example.RelativeTolerance + 1e-12, expected, Number(function.Call(Writer, cells)));
    }

    /// <summary>By hand, in the units that people type.</summary>
    [Theory]
    [InlineData("FuelFlowAtPressure", 923.7604, new double[] { 800, 300, 740, 400, 740 })] // 800 x root of 4/3
    [InlineData("PulseMass", 9.6, new double[] { 6, 2.5, 0.9 })] // 6 g/s for 1.6 ms
    [InlineData("PulseWidth", 2.5, new double[] { 9.6, 6, 0.9 })]
    [InlineData("DutyCycle", 50, new double[] { 10, 20 })]
    [InlineData("BlendContent", 42.5, new double[] { 85, 10, 0, 10 })] // half and half
    [InlineData("WireDrop", 0.275856, new double[] { 10, 2000, 2.5, 20 })] // 10 A, 4 m of 2.5 mm2: 1.7241e-8 x 4 / 2.5e-6 x 10
    [InlineData("FuelForPower", 30, new double[] { 100000, 300 })] // 100 kW at 300 g/kWh
    [InlineData("HoseLoss", 0.0795775, new double[] { 3.6, 4, 1000, 0, 740, 0.5 })] // 1 mL/s in 4 mm, laminar: 128 mu L Q / (pi d^4)
    public void Function_InCustomaryUnits_GivesTheValueByHand(string name, double expected, double[] cells)
    {
        SheetFunction function = Named(name);
        Close.Within(1e-5, expected, Number(function.Call(Writer, [.. cells.Select(c => (object?)c)])));
    }

    /// <summary>180 L/h in 8 mm: Re 11 777 and 0.9947 m/s; Blasius gives 0.0303 and 1.39 kPa a meter, and is a fit within 3 %.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void HoseLoss_Turbulent_IsThatOfBlasius() =>
        Close.Within(0.03, 1.388, Number(Named("HoseLoss").Call(Writer, 180, 8, 1000, 0, 740, 0.5)));

    [Theory]
    [InlineData(1.0, "bar", "kPa", 100)]
    [InlineData(1.0, "bar", "psi", 14.503774)]
    [InlineData(20.0, "degC", "K", 293.15)]
    [InlineData(550.0, "cc/min", "L/h", 33)]
    [InlineData(3000.0, "rpm", "rad/s", 314.159265)]
    public void ConvertUnit_SameKind_GivesTheDefinition(double number, string from, string to, double expected) =>
        Close.Within(1e-7, expected, Number(Named("ConvertUnit").Call(Writer, number, from, to)));

    [Theory]
    [InlineData("550 cc/min", "L/h", 33)]
    [InlineData("2,5 mm", "m", 0.0025)]
    public void NumberIn_TextOfPeople_GivesTheNumber(string text, string unit, double expected) =>
        Close.Within(1e-12, expected, Number(Named("NumberIn").Call(null, text, unit)));

    /// <summary>Halfway between 12 V and 14 V, and a quarter of the way from 3 bar to 4 bar: by hand.</summary>
    [Fact]
    public void DeadTimeFromTable_BetweenItsValues_GivesTheValueByHand()
    {
        double[,] times =
        {
            { 1.0, 1.2 },
            { 0.8, 0.9 },
        };
        object found = Dead(13, 325, times);

        Close.Within(1e-12, (0.75 * 0.9) + (0.25 * 1.05), Number(found));
        Close.Within(1e-12, (0.75 * 0.9) + (0.25 * 1.05), Number(Dead("13 V", "3.25 bar", times)));
        double[,] one =
        {
            { 1 },
            { 0.8 },
        };
        Close.Within(
            1e-12,
            0.9,
            Number(
                Named("DeadTimeFromTable")
                    .Call(
                        Writer,
                        13,
                        300,
                        new double[,]
                        {
                            { 12 },
                            { 14 },
                        },
                        300,
                        one
                    )
            )
        );
    }

    [Fact]
    public void DeadTimeFromTable_ThatIsNone_GivesTheKindOfError()
    {
        double[,] times =
        {
            { 1.0, 1.2 },
            { 0.8, 0.9 },
        };

        Is(CellErrorKind.NotAvailable, Dead(16, 325, times));
        Is(CellErrorKind.NotAvailable, Dead(13, 500, times));
        Is(CellErrorKind.Number, Dead(-1, 325, times));
        Is(
            CellErrorKind.Value,
            Dead(
                13,
                325,
                new double[,]
                {
                    { 1, 2, 3 },
                }
            )
        );
        Is(
            CellErrorKind.NotAvailable,
            Dead(
                13,
                325,
                new object?[,]
                {
                    { 1.0, null },
                    { 0.8, 0.9 },
                }
            )
        );
        Is(
            CellErrorKind.Value,
            Dead(
                13,
                325,
                new object?[,]
                {
                    { 1.0, "long" },
                    { 0.8, 0.9 },
                }
            )
        );
    }

    [Fact]
    public void Call_Ranges_GoTogetherCellByCell()
    {
        SheetFunction duty = Named("DutyCycle");

        object grid = duty.Call(
            Writer,
            new double[,]
            {
                { 1 },
                { 2 },
            },
            new double[,]
            {
                { 10, 20, 40 },
            }
        );

        object[,] cells = Assert.IsType<object[,]>(grid);
        Assert.Equal((2, 3), (cells.GetLength(0), cells.GetLength(1)));
        Close.Within(1e-12, 10, Number(cells[0, 0]));
        Close.Within(1e-12, 5, Number(cells[1, 2]));

        object[,] mixed = (object[,])
            duty.Call(
                Writer,
                new object?[,]
                {
                    { 1.0, null, "two", -1.0, "1 ms" },
                },
                10
            );
        Close.Within(1e-12, 10, Number(mixed[0, 0]));
        Is(CellErrorKind.NotAvailable, mixed[0, 1]);
        Is(CellErrorKind.Value, mixed[0, 2]);
        Is(CellErrorKind.Number, mixed[0, 3]);
        Close.Within(1e-12, 10, Number(mixed[0, 4]));
        Is(CellErrorKind.Value, duty.Call(Writer, new double[2, 2], new double[3, 2]));
    }

    [Fact]
    public void Call_WrongContents_GivesTheKindOfError()
    {
        SheetFunction duty = Named("DutyCycle");

        Is(CellErrorKind.Value, duty.Call(Writer, 1));
        Is(CellErrorKind.Value, duty.Call(Writer, 1, "20"));
        Is(CellErrorKind.Value, duty.Call(Writer, 1, "20 bar"));
        Is(CellErrorKind.Value, duty.Call(Writer, 1, true));
        Is(CellErrorKind.Number, duty.Call(Writer, 1, double.NaN));
        Is(CellErrorKind.Number, duty.Call(Writer, 1, 0));
        Is(CellErrorKind.NotAvailable, duty.Call(Writer, null, 20));
        Is(CellErrorKind.NotAvailable, duty.Call(Writer, " ", 20));
        var foreign = new Version(1, 2);
        Assert.Same(foreign, duty.Call(Writer, 1, foreign));
        Is(CellErrorKind.Value, Named("ConvertUnit").Call(Writer, 1, "bar", "mm"));
        Is(CellErrorKind.Value, Named("ConvertUnit").Call(Writer, 1, "kPa gauge", "kPa absolute"));
        Is(CellErrorKind.NotAvailable, Named("ConvertUnit").Call(Writer, null, "bar", "kPa"));
        Is(CellErrorKind.Number, Named("ConvertUnit").Call(Writer, double.PositiveInfinity, "bar", "kPa"));
        Is(CellErrorKind.Value, Named("NumberIn").Call(Writer, "3 bar", "L/h"));
        Is(CellErrorKind.Value, Named("NumberIn").Call(Writer, "3 bar", "wide"));
        Is(CellErrorKind.NotAvailable, Named("NumberIn").Call(Writer, null, "bar"));
        Assert.Equal("#NUM!", duty.Call(Writer, 1, 0).ToString());
        Assert.Equal("#N/A", duty.Call(Writer, null, 20).ToString());
        Assert.Equal("#VALUE!", duty.Call(Writer, true, 20).ToString());
    }

    [Fact]
    public void OfAssessments_KnownNames_ReadTheSolvedState()
    {
        SystemState state = Assessment.Value.Points[0].States[0].State!;
        double Read(string name, params object?[] cells) => Number(Of(name).Call(Writer, cells));

        Close.Within(
            1e-12,
            state.PressureAt("rail start").AboveAmbient.Kilopascals,
            Read("RailPressure", "rig", "cruise", "rail start")
        );
        Close.Within(
            1e-12,
            state.Stages[0].PulseWidth.Milliseconds,
            Read("StagePulseWidth", "rig", "cruise", "primary")
        );
        Close.Within(1e-12, state.Stages[0].DutyCycle.Percent, Read("StageDutyCycle", "rig", "cruise", "primary"));
        string line = VerdictCases.Healthy.Network.Lines[0].Name;
        Close.Within(1e-12, state.FlowThrough(line).LitersPerHour, Read("LineFlow", "rig", "cruise", line));
        Close.Within(1e-6, 0.9, Read("MeanLambda", "rig", "cruise"));
        Assert.Equal(state.Verdict.ToString(), Of("PointVerdict").Call(Writer, "rig", "cruise"));
    }

    [Fact]
    public void OfAssessments_UnknownNames_AreNotAvailable()
    {
        Is(CellErrorKind.NotAvailable, Of("RailPressure").Call(Writer, "car", "cruise", "rail start"));
        Is(CellErrorKind.NotAvailable, Of("RailPressure").Call(Writer, "rig", "idle", "rail start"));
        Is(CellErrorKind.NotAvailable, Of("RailPressure").Call(Writer, "rig", "cruise", "attic"));
        Is(CellErrorKind.NotAvailable, Of("LineFlow").Call(Writer, "rig", "cruise", "attic"));
        Is(CellErrorKind.NotAvailable, Of("StagePulseWidth").Call(Writer, "rig", "cruise", "tertiary"));
        Is(CellErrorKind.NotAvailable, Of("StageDutyCycle").Call(Writer, "rig", "cruise", "tertiary"));
        Is(CellErrorKind.NotAvailable, Of("MeanLambda").Call(Writer, "rig", null));
        Is(CellErrorKind.Value, Of("MeanLambda").Call(Writer, "rig", 3.0));
        Assert.Throws<ArgumentNullException>(() => SheetFunctions.OfAssessments(null!));
    }

    [Fact]
    public void Descriptions_OfAll_AreWholeAndTheirNamesOwn()
    {
        SheetFunction[] all = [.. SheetFunctions.All, .. SheetFunctions.OfAssessments(_ => null)];

        Assert.True(all.Length >= 25);
        Assert.Equal(all.Length, all.Select(f => f.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(all, f => Assert.All(f.Name, c => Assert.True(char.IsAsciiLetter(c))));
        Assert.All(all, f => Assert.NotEmpty(f.Summary));
        Assert.All(all, f => Assert.NotEmpty(f.Source));
        Assert.All(all, f => Assert.All(f.Arguments, a => Assert.True(a.Help.Length > 5)));

        // What hosts take for names of cells would hide a function.
        Assert.All(all, f => Assert.True(f.Name.Length > 4));
    }

    private static SheetFunction Named(string name) => SheetFunctions.All.Single(f => f.Name == name);

    private static SheetFunction Of(string name) =>
        SheetFunctions.OfAssessments(n => n == "rig" ? Assessment.Value : null).Single(f => f.Name == name);

    private static object Dead(object volts, object pressure, object times) =>
        Named("DeadTimeFromTable")
            .Call(
                Writer,
                volts,
                pressure,
                new double[,]
                {
                    { 12 },
                    { 14 },
                },
                new double[,]
                {
                    { 300, 400 },
                },
                times
            );

    private static double Number(object result) =>
        result as double? ?? throw new InvalidOperationException((result as CellError)?.Message ?? result.ToString());

    private static void Is(CellErrorKind kind, object result) =>
        Assert.Equal(kind, Assert.IsType<CellError>(result).Kind);
}
