using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Tests.Systems;

namespace FuelMath.Tests.Formulas;

/// <summary>Every line of LaTeX that workings of the catalog and of whole questions give; written to a file for a typesetter when asked.</summary>
public sealed class LatexLinesTests
{
    /// <summary>Brackets and braces are closed, and nothing but ASCII is left; a typesetter says the rest.</summary>
    [Fact]
    public void EveryLine_IsClosedAndPlain()
    {
        string[] lines = [.. Lines(), .. WholeQuestions()];
        Assert.All(
            lines,
            line =>
            {
                Assert.Equal(Count(line, "{") - Count(line, @"\{"), Count(line, "}") - Count(line, @"\}"));
                Assert.Equal(Count(line, @"\left"), Count(line, @"\right"));
                Assert.All(line, c => Assert.InRange(c, ' ', '~'));
            }
        );
        if (Environment.GetEnvironmentVariable("WRITE_LATEX") is { Length: > 0 } path)
        {
            File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, path), lines);
        }
    }

    private static IEnumerable<string> Lines()
    {
        var comma = (NumberFormatInfo)NumberFormatInfo.InvariantInfo.Clone();
        comma.NumberDecimalSeparator = ",";
        return from formula in FormulaCatalog.All
            from units in Enum.GetValues<FormulaInfo.CallUnits>()
            let arguments = formula.Example.Arguments.Select(
                (x, i) =>
                    units == FormulaInfo.CallUnits.Si
                        ? x
                        : formula.Arguments[i].Quantity.FromSi(x, formula.Arguments[i].Quantity.CustomaryUnit)
            )
            let working = formula.WorkingOf(units, arguments.ToArray())
            from shown in (Working[])[working, working.WithFigures(4)]
            from provider in (IFormatProvider[])[CultureInfo.InvariantCulture, comma]
            from line in shown.ToLatex(provider)
            select line;
    }

    /// <summary>Workings of whole questions: a system's state from tank to tip, and where its pump meets it.</summary>
    private static IEnumerable<string> WholeQuestions()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(6000, 100, Workshop.Hold(0.88)));
        Working[] workings =
        [
            state.ResidualWorkingAt("return"),
            state.DeliveryWorkingOf(0).In("mg"),
            state.PumpWorkingOf(0),
            state.Chambers[0].LambdaWorking(),
        ];
        return workings.SelectMany(w => w.ToLatex(CultureInfo.InvariantCulture));
    }

    private static int Count(string line, string part) => line.Split(part).Length - 1;
}
