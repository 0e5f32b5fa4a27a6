using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Workbooks;

public sealed class WorkbookTests
{
    private static readonly FormulaInfo Carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

    public static TheoryData<FormulaInfo.FormulaTopic> Topics() => [.. Enum.GetValues<FormulaInfo.FormulaTopic>()];

    /// <summary>The numbers beside are from outside: the example of each formula says from where.</summary>
    [Theory]
    [MemberData(nameof(Topics))]
    public void Topic_InCustomaryUnits_HoldsEveryFormulaAtItsExample(FormulaInfo.FormulaTopic topic)
    {
        Workbook book = Workbook.FromTopic(topic, FormulaInfo.CallUnits.Customary);

        SheetEngine engine = WorkbookCells.Calculate(book);
        FormulaInfo[] formulas = [.. FormulaCatalog.About(topic)];
        Assert.True(formulas.Length <= 1 || book.SheetNames.Length == formulas.Length + 1);
        for (int i = 0; formulas.Length > 1 && i < formulas.Length; i++)
        {
            FormulaInfo.CheckedExample example = formulas[i].Example;
            FormulaQuantity result = formulas[i].Result;
            double wanted = result.FromSi(example.Expected, result.CustomaryUnit);
            // Converting there and back rounds four times; where it is hot, it counts from absolute zero.
            double tolerance = example.RelativeTolerance + 1e-13;
            Close.WithinOf(
                Math.Max(Math.Abs(wanted), result.CustomaryUnit == "degC" ? 300 : 0),
                tolerance,
                wanted,
                engine.Number("Contents", SheetPoints.Row(i))
            );
            Assert.Equal(
                formulas[i].Name,
                engine["Contents", string.Create(CultureInfo.InvariantCulture, $"A{i + 5}")]
            );
        }
    }

    /// <summary>800 cm3/min carried from 3 bar to 4 bar: times the root of four thirds, by hand.</summary>
    [Fact]
    public void Formula_WithNumbers_IsLive()
    {
        var cells = WorkbookCells.Read(
            Workbook.FromFormula(Carried, FormulaInfo.CallUnits.Customary, 800, 300, 740, 400, 740)
        );
        (string Sheet, string Cell) result = Result(cells);

        Close.Within(1e-13, 800 * Math.Sqrt(4.0 / 3), new SheetEngine(cells).Number(result.Sheet, result.Cell));
        cells[(result.Sheet, "C9")] = "1200";
        Close.Within(1e-13, 1600, new SheetEngine(cells).Number(result.Sheet, result.Cell));
    }

    /// <summary>Nothing typed into an input may give a number that a checked call refuses.</summary>
    [Theory]
    [InlineData("C9", "-1")]
    [InlineData("C9", "1E+12")]
    [InlineData("C7", "0")]
    [InlineData("C8", "heavy")]
    [InlineData("C8", "")]
    public void Input_OutsideItsRange_GivesNoNumber(string cell, string content)
    {
        var cells = WorkbookCells.Read(Workbook.FromFormula(Carried, FormulaInfo.CallUnits.Customary));
        (string Sheet, string Cell) result = Result(cells);
        Assert.IsType<double>(new SheetEngine(cells)[result.Sheet, result.Cell]);

        cells[(result.Sheet, cell)] = content;

        Assert.Equal(new SheetError("#N/A"), new SheetEngine(cells)[result.Sheet, result.Cell]);
    }

    /// <summary>Whatever a checked call says of a broken bound, the sheet says too.</summary>
    [Fact]
    public void Bound_Broken_GivesNoNumber()
    {
        FormulaInfo[] bounded = [.. FormulaCatalog.All.Where(f => f.Bounds.Length > 0)];
        Assert.NotEmpty(bounded);
        int refused = 0;
        var random = new Random(11);
        foreach (FormulaInfo formula in bounded)
        {
            for (int i = 0; i < 8; i++)
            {
                double[] point =
                [
                    .. formula.Arguments.Select(a => a.Minimum + ((a.Maximum - a.Minimum) * random.NextDouble())),
                ];
                bool holds =
                    formula.Check(FormulaInfo.CallUnits.Si, point)
                    is not { Problem: not FormulaRefusal.FormulaProblem.NoResult };
                refused += holds ? 0 : 1;
                var cells = WorkbookCells.Read(
                    FormulaSheets.Workbook([formula], FormulaInfo.CallUnits.Si, _ => [.. point])
                );
                (string Sheet, string Cell) result = Result(cells);
                object shown = new SheetEngine(cells)[result.Sheet, result.Cell];
                Assert.Equal(holds, !new SheetError("#N/A").Equals(shown));
            }
        }

        Assert.True(refused > 5);
    }

    [Fact]
    public void Formulas_RefusedOrUnknown_ThrowWithTheirNames()
    {
        var refused = Assert.Throws<FormulaRefusedException>(() =>
            Workbook.FromFormula(Carried, FormulaInfo.CallUnits.Customary, -800, 300, 740, 400, 740)
        );
        Assert.Equal("referenceVolumeFlow", refused.Refusal.Argument!.Name);
        Assert.Throws<FormulaRefusedException>(() => Workbook.FromFormula(Carried, FormulaInfo.CallUnits.Si, 1));
        Assert.Throws<ArgumentNullException>(() => Workbook.FromFormula(null!, FormulaInfo.CallUnits.Si));
        Assert.Throws<RefusedArgumentException>(() => Workbook.FromFormula(Carried, (FormulaInfo.CallUnits)9));
        Assert.Throws<RefusedArgumentException>(() =>
            Workbook.FromTopic((FormulaInfo.FormulaTopic)99, FormulaInfo.CallUnits.Si)
        );
        Assert.Throws<RefusedArgumentException>(() => Workbook.FromFormulas([], FormulaInfo.CallUnits.Si));
        Assert.Throws<ArgumentNullException>(() => Workbook.FromFormulas([null!], FormulaInfo.CallUnits.Si));
        Assert.Throws<RefusedArgumentException>(() =>
            Workbook.FromFormula(Carried, FormulaInfo.CallUnits.Si).WriteFile("sheet.csv")
        );
    }

    /// <summary>The edges of every input, as the sheet shows them in customary units, are inside or out as a checked call says.</summary>
    [Fact]
    public void Edges_OfEveryInput_AreJudgedAsInACheckedCall()
    {
        int inside = 0;
        foreach (FormulaInfo formula in FormulaCatalog.All.Where(f => f.Bounds.Length == 0))
        {
            var cells = WorkbookCells.Read(Workbook.FromFormula(formula, FormulaInfo.CallUnits.Customary));
            double[] point =
            [
                .. formula.Example.Arguments.Select(
                    (x, i) => formula.Arguments[i].Quantity.FromSi(x, formula.Arguments[i].Quantity.CustomaryUnit)
                ),
            ];
            for (int i = 0; i < point.Length; i++)
            {
                string row = string.Create(CultureInfo.InvariantCulture, $"{6 + i}");
                string sheet = cells.Keys.First().Sheet;
                foreach (string edge in (string[])["G", "H"])
                {
                    double typed = double.Parse(cells[(sheet, edge + row)], CultureInfo.InvariantCulture);
                    double[] there = [.. point];
                    there[i] = typed;
                    bool isOut =
                        formula.Check(FormulaInfo.CallUnits.Customary, there) is
                        { Problem: FormulaRefusal.FormulaProblem.OutsideRange };
                    var typedInto = new Dictionary<(string Sheet, string Cell), string>(cells)
                    {
                        [(sheet, "C" + row)] = cells[(sheet, edge + row)],
                    };
                    Assert.Equal(isOut ? "outside" : "ok", new SheetEngine(typedInto)[sheet, "I" + row]);
                    inside += isOut ? 0 : 1;
                }
            }
        }

        Assert.True(inside > 500);
    }

    /// <summary>Numbers for each of several formulas, by hand: 800 x root of 4/3, and half the period.</summary>
    [Fact]
    public void FromFormulas_WithNumbers_FillsEach()
    {
        Workbook book = Workbook.FromFormulas(
            [Carried, FormulaCatalog.Named("Pulse.DutyCycle")],
            FormulaInfo.CallUnits.Customary,
            [
                [800, 300, 740, 400, 740],
                [10, 20],
            ]
        );
        SheetEngine engine = WorkbookCells.Calculate(book);

        Close.Within(1e-13, 800 * Math.Sqrt(4.0 / 3), engine.Number("Contents", "C5"));
        Close.Within(1e-13, 50, engine.Number("Contents", "C6"));
        Assert.Throws<RefusedArgumentException>(() =>
            Workbook.FromFormulas([Carried], FormulaInfo.CallUnits.Customary, [])
        );
        Assert.Throws<RefusedArgumentException>(() =>
            Workbook.FromFormulas(
                [Carried, Carried],
                FormulaInfo.CallUnits.Customary,
                [
                    [1],
                    [1],
                ]
            )
        );
        Assert.Throws<FormulaRefusedException>(() =>
            Workbook.FromFormulas(
                [Carried],
                FormulaInfo.CallUnits.Customary,
                [
                    [-800, 300, 740, 400, 740],
                ]
            )
        );
    }

    [Fact]
    public void SheetNames_LongOrTwice_AreShortAndDifferent()
    {
        string longName = new('x', 40);

        string[] names = [.. SheetNames.Of([longName, longName, "a/b", "A-B", "ok"])];

        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(names, n => Assert.InRange(n.Length, 1, 31));
        Assert.Equal([new string('x', 31), new string('x', 29) + " 2", "a-b", "A-B 2", "ok"], names);
    }

    private static (string Sheet, string Cell) Result(Dictionary<(string Sheet, string Cell), string> cells) =>
        cells.Single(c => c.Key.Cell.StartsWith('C') && c.Value.EndsWith(",NA())", StringComparison.Ordinal)).Key;
}
