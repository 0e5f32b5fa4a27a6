namespace FuelMath.Workbooks;

/// <summary>Functions of cells that read solved states by the name of an assessment, a point and a part.</summary>
internal static class DocumentFunctions
{
    private static readonly SheetFunctionArgument[] Where =
    [
        SheetFunctionArgument.Text("system", "the name under which the add-in keeps an assessment"),
        SheetFunctionArgument.Text("point", "an operating point of it"),
    ];

    internal static IEnumerable<SheetFunction> All(Func<string, SystemAssessment?> assessments) =>
        [
            Of(
                assessments,
                "RailPressure",
                "The pressure at a node of a fuel system, over ambient",
                ("node", "a node of the fuel path, for example rail"),
                ("gauge pressure, in kPa", "kPa"),
                (state, node) =>
                {
                    try
                    {
                        return state.PressureAt(node).Si() / 1e3;
                    }
                    catch (ArgumentException)
                    {
                        return Unknown("node", node);
                    }
                }
            ),
            Of(
                assessments,
                "LineFlow",
                "The flow through a line of a fuel system, from its first node to its second",
                ("line", "a line of the fuel path"),
                ("volume flow, in L/h", "L/h"),
                (state, line) =>
                {
                    try
                    {
                        return state.FlowThrough(line).Si() * 3.6e6;
                    }
                    catch (ArgumentException)
                    {
                        return Unknown("line", line);
                    }
                }
            ),
            Of(
                assessments,
                "StagePulseWidth",
                "The pulse width of a stage of injectors",
                ("stage", "a stage of injectors"),
                ("pulse width, in ms", "ms"),
                (state, stage) =>
                    state.Stages.FirstOrDefault(s => s.Name == stage) is { } found
                        ? found.PulseWidth.Si() * 1e3
                        : Unknown("stage", stage)
            ),
            Of(
                assessments,
                "StageDutyCycle",
                "The duty cycle of a stage of injectors",
                ("stage", "a stage of injectors"),
                ("duty cycle, in %", "%"),
                (state, stage) =>
                    state.Stages.FirstOrDefault(s => s.Name == stage) is { } found
                        ? found.DutyCycle.Si() * 100
                        : Unknown("stage", stage)
            ),
            Of(
                assessments,
                "MeanLambda",
                "Lambda of all chambers together",
                null,
                ("lambda, a pure number", "1"),
                (state, _) =>
                    state.Lambda is { } lambda
                        ? lambda.ToRatio()
                        : CellError.NotAvailable("There is no fuel or no air, so that there is no lambda.")
            ),
            Of(
                assessments,
                "PointVerdict",
                "What a fuel system comes to at a point, in words",
                null,
                ("the verdict, a text", ""),
                (state, _) => state.Verdict.ToString()
            ),
        ];

    private static SheetFunction Of(
        Func<string, SystemAssessment?> assessments,
        string name,
        string summary,
        (string Name, string Help)? asked,
        (string Text, string Unit) result,
        Func<SystemState, string, object> read
    ) =>
        new(
            name,
            summary,
            asked is { } about ? [.. Where, SheetFunctionArgument.Text(about.Name, about.Help)] : [.. Where],
            result.Text,
            result.Unit,
            "the solved state, as described",
            null,
            (IReadOnlyList<object?> _, IFormatProvider? _, out CellError? error) =>
            {
                error = null;
                return cells => Read(assessments, cells, read);
            }
        );

    private static object Read(
        Func<string, SystemAssessment?> assessments,
        IReadOnlyList<object?> cells,
        Func<SystemState, string, object> read
    )
    {
        if (cells.Any(c => c is null || c is string text && string.IsNullOrWhiteSpace(text)))
        {
            return CellError.NotAvailable("A cell with a name is empty.");
        }

        if (cells.Any(c => c is not string))
        {
            return CellError.Value("Takes names, as texts.");
        }

        if (assessments((string)cells[0]!) is not { } assessment)
        {
            return Unknown("system", (string)cells[0]!);
        }

        if (assessment.Points.FirstOrDefault(p => p.Point.Name == (string)cells[1]!) is not { } point)
        {
            return Unknown("point", (string)cells[1]!);
        }

        SystemAssessment.AssessedState described = point.States[0];
        try
        {
            return described.State is { } state
                ? read(state, cells.Count > 2 ? (string)cells[2]! : "")
                : CellError.Number(described.Refusal!.Message);
        }
        catch (InvalidOperationException cutOff)
        {
            return CellError.NotAvailable(cutOff.Message);
        }
    }

    private static CellError Unknown(string what, string name) =>
        CellError.NotAvailable($"No {what} is called '{name}'.");
}
