using System.Collections.Immutable;

namespace FuelMath.Workbooks;

/// <summary>A workbook of an assessment: verdict, a sheet for each state, and findings.</summary>
internal static class AssessmentSheets
{
    internal static Workbook Workbook(SystemAssessment assessment)
    {
        (SystemAssessment.PointAssessment Point, SystemAssessment.AssessedState State)[] states =
        [
            .. assessment.Points.SelectMany(p => p.States.Select(s => (p, s))),
        ];
        ImmutableArray<string> names = SheetNames.Of([
            "Assessment",
            .. states.Select(s => $"{s.Point.Point.Name}{Words(s.State.Basis)}"),
            "Findings",
        ]);
        StateSheet?[] sheets =
        [
            .. states.Select(
                (s, i) =>
                    s.State.State is { } state && HasRails(state)
                        ? new StateSheet(Of(assessment, s.State.Basis), state, s.State.Basis, names[i + 1])
                        : null
            ),
        ];
        return new([
            Whole(assessment, states, sheets, names[0]),
            .. sheets.OfType<StateSheet>().Select(s => s.Sheet),
            Findings(assessment, names[^1]),
        ]);
    }

    /// <summary>Whether the pressure at each injector is known: with every way to a rail shut nothing follows from cells.</summary>
    private static bool HasRails(SystemState state) =>
        state.Injectors.All(i => state.Network.TryPressureAt(i.Seat.Node, out _));

    internal static string Words(SystemAssessment.StateBasis basis) =>
        basis switch
        {
            SystemAssessment.StateBasis.AsDescribedUncorrected => " (no sensor)",
            SystemAssessment.StateBasis.AsMeasured => " (measured)",
            SystemAssessment.StateBasis.AsMeasuredUncorrected => " (measured, no sensor)",
            _ => "",
        };

    private static FuelSystem Of(SystemAssessment assessment, SystemAssessment.StateBasis basis) =>
        basis is SystemAssessment.StateBasis.AsMeasured or SystemAssessment.StateBasis.AsMeasuredUncorrected
            ? assessment.Measured!
            : assessment.System;

    private static Sheet Whole(
        SystemAssessment assessment,
        (SystemAssessment.PointAssessment Point, SystemAssessment.AssessedState State)[] states,
        StateSheet?[] sheets,
        string name
    )
    {
        var sheet = new Sheet(name, 32, 22, 18, 16, 16, 16, 12, 70);
        sheet.Add(CellLook.Title, assessment.System.Name);
        sheet.Add(CellLook.Note, assessment.Verdict.ToString());
        sheet.Add(
            CellLook.Note,
            "The numbers are those of the sheets of the points, which are live: change a shaded number there. The verdicts are not: they hold for the states as solved."
        );
        sheet.Add(CellLook.Note, FormulaSheets.Caution);
        sheet.Skip();
        sheet.Add(
            CellLook.Head,
            "Point",
            "Injectors",
            "Stage",
            "Rail pressure, bar gauge",
            "Pulse width, ms",
            "Duty cycle, %",
            "Lambda",
            "Verdict as solved"
        );
        for (int i = 0; i < states.Length; i++)
        {
            (SystemAssessment.PointAssessment point, SystemAssessment.AssessedState state) = states[i];
            if (sheets[i] is { } own)
            {
                Stages(sheet, point, state, own);
            }
            else
            {
                sheet.Add(
                    CellLook.Words,
                    point.Point.Name,
                    Basis(state.Basis),
                    "",
                    "",
                    "",
                    "",
                    "",
                    state.Verdict.ToString()
                );
            }
        }

        return sheet;
    }

    private static void Stages(
        Sheet sheet,
        SystemAssessment.PointAssessment point,
        SystemAssessment.AssessedState state,
        StateSheet own
    )
    {
        bool isFirst = true;
        foreach (SystemState.StageResult stage in state.State!.Stages)
        {
            int row = sheet.Add(
                CellLook.Words,
                isFirst ? point.Point.Name : "",
                isFirst ? Basis(state.Basis) : "",
                stage.Name,
                "",
                "",
                "",
                "",
                isFirst ? state.Verdict.ToString() : ""
            );
            if (isFirst)
            {
                Link('D', row, own.RailPressure);
                Link('G', row, own.Lambda);
            }

            Link('E', row, own.Injectors.Of(stage.Name)?.Width);
            Link('F', row, own.Injectors.Of(stage.Name)?.DutyCycle);
            isFirst = false;
        }

        void Link(char column, int row, string? reference)
        {
            if (reference is not null)
            {
                sheet.Put(column, row, Cell.Live(own.Sheet.From(reference), CellLook.LiveResult));
            }
        }
    }

    private static Sheet Findings(SystemAssessment assessment, string name)
    {
        var sheet = new Sheet(name, 12, 24, 50, 26, 26, 34, 60, 30);
        sheet.Add(CellLook.Title, "Findings");
        sheet.Add(CellLook.Note, FormulaSheets.Caution);
        sheet.Skip();
        sheet.Add(
            CellLook.Head,
            "Severity",
            "Part",
            "What",
            "Value",
            "Limit",
            "Where",
            "What to do",
            "Source of the limit"
        );
        foreach (SystemAssessment.GroupedFinding finding in assessment.Findings)
        {
            foreach (SystemAssessment.Occurrence occurrence in finding.Occurrences)
            {
                sheet.Add(
                    CellLook.Words,
                    occurrence.Finding.IsNotKnown ? "not known" : occurrence.Finding.Severity.ToString(),
                    occurrence.Finding.Part,
                    occurrence.Finding.What,
                    occurrence.Finding.Value,
                    occurrence.Finding.Limit,
                    $"{occurrence.Place}{(occurrence.Basis is { } basis ? Words(basis) : "")}",
                    occurrence.Finding.Action,
                    occurrence.Finding.LimitSource.ToString()
                );
            }
        }

        return sheet;
    }

    private static string Basis(SystemAssessment.StateBasis basis) =>
        basis switch
        {
            SystemAssessment.StateBasis.AsDescribedUncorrected => "as described, no sensor",
            SystemAssessment.StateBasis.AsMeasured => "as measured",
            SystemAssessment.StateBasis.AsMeasuredUncorrected => "as measured, no sensor",
            _ => "as described",
        };
}
