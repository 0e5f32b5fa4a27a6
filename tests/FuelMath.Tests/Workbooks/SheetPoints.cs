using System.Collections.Immutable;
using FuelMath.Formulas;
using FuelMath.Tests.Formulas;
using FuelMath.Workbooks;

namespace FuelMath.Tests.Workbooks;

/// <summary>Every listed formula at a random point that a checked call takes, as a workbook and as numbers.</summary>
internal sealed class SheetPoints
{
    internal SheetPoints(Random random)
    {
        foreach (FormulaInfo formula in FormulaCatalog.All)
        {
            double[] point;
            do
            {
                double[] fractions = [.. formula.Arguments.Select(_ => random.NextDouble())];
                point = new FormulaCase(formula).Point(fractions);
            } while (formula.Check(FormulaInfo.CallUnits.Si, point) is not null);

            Points[formula.Name] = [.. point];
            Expected[formula.Name] = formula.At<Real>(Array.ConvertAll(point, x => new Real(x))).Value;
        }

        Workbook = FormulaSheets.Workbook(FormulaCatalog.All, FormulaInfo.CallUnits.Si, f => Points[f.Name]);
    }

    internal Dictionary<string, ImmutableArray<double>> Points { get; } = [];

    internal Dictionary<string, double> Expected { get; } = [];

    internal Workbook Workbook { get; }

    /// <summary>Where the sheet of contents shows the result of a formula.</summary>
    internal static string Row(int index) => FormattableString.Invariant($"C{index + 5}");
}
