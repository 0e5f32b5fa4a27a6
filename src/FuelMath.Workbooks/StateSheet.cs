using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>
/// The sheet of one solved state: from the given conditions to rail pressure, pulse width, duty cycle and lambda, live
/// where the law is explicit.
/// </summary>
internal sealed class StateSheet
{
    private readonly FuelSystem system;
    private readonly SystemState state;
    private readonly StateRows rows;
    private readonly SpreadsheetText manifold;
    private readonly SpreadsheetText ambient;
    private readonly SpreadsheetText speed;
    private readonly SpreadsheetText charge;
    private readonly SpreadsheetText density;

    internal StateSheet(FuelSystem system, SystemState state, SystemAssessment.StateBasis basis, string name)
    {
        (this.system, this.state) = (system, state);
        OperatingPoint point = state.Point;
        Sheet = new(name, 64, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13);
        rows = new(Sheet);
        Sheet.Add(CellLook.Title, $"{system.Name}: {point.Name}{AssessmentSheets.Words(basis)}");
        Sheet.Add(CellLook.Note, state.Verdict.ToString());
        Sheet.Add(
            CellLook.Note,
            "Change the shaded numbers; what is live follows. What is solved (gray) was found for the whole system at this point"
                + " and stays: pump, lines, flows and tables are not calculated anew."
        );
        Sheet.Add(CellLook.Note, FormulaSheets.Caution);
        int told = Sheet.Row;
        Sheet.Skip();
        rows.Head("Operating point");
        speed = rows.Given("engine speed", point.Speed.Si(), SheetUnit.Speed, "");
        manifold = rows.Given("manifold pressure", point.Air.Manifold.Si(), SheetUnit.Absolute, "");
        ambient = rows.Given("ambient pressure", point.Air.Ambient.Si(), SheetUnit.Absolute, "");
        charge = rows.Given("charge temperature", point.Air.Charge.Si(), SheetUnit.Celsius, "");
        density = rows.Solved(
            "fuel density",
            system.Fuel.DensityAt(point.Fuel).Si(),
            SheetUnit.Density,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{system.Fuel.Name} at {SheetUnit.Celsius.Show(point.Fuel.Si()):0.##} degC"
            )
        );
        var rail = new RailRows(rows, system, state, manifold, ambient);
        var mixture = new MixtureRows(rows, system, state, speed, manifold, charge);
        Injectors = new InjectorRows(rows, system, state, rail, mixture, manifold - ambient, density);
        Lambda = mixture.Write(Injectors);
        Sheet.Put(
            'A',
            told,
            Cell.Live(
                $"IF({rows.AsSolved},\"The shaded numbers are those that the state was solved for.\",\"CHANGED: what is solved still belongs to the numbers as they were.\")",
                CellLook.Result
            )
        );
        RailPressure = rail.Least(Injectors.Pulsing);
    }

    internal Sheet Sheet { get; }

    internal InjectorRows Injectors { get; }

    /// <summary>The cell of the lowest pressure at an injector's node.</summary>
    internal string RailPressure { get; }

    /// <summary>The cell of the mean lambda; null where there is none.</summary>
    internal string? Lambda { get; }
}
