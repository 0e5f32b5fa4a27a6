using System.Globalization;

namespace FuelMath;

/// <summary>The table of the lambda of each chamber.</summary>
internal static class ChamberTable
{
    /// <summary>The table; it has a row for each state with a mixture.</summary>
    internal static SheetTable Of(SystemAssessment assessment)
    {
        int chambers = assessment.System.Engine.Chambers;
        bool premix = assessment.System.Fuel.OilFraction.InSi() > 0;
        bool trapped = assessment.System.Engine.TrappingEfficiency.InSi() < 1;
        return SheetTable.Of(
            "chambers",
            "Lambda of each chamber",
            Note(assessment.System, premix),
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("injectors"),
                SheetTable.Column.Numbers("asked", "lambda", 3),
                .. Enumerable
                    .Range(1, chambers)
                    .Select(c => SheetTable.Column.Numbers(c.ToString(CultureInfo.InvariantCulture), "lambda", 3)),
                SheetTable.Column.Numbers("mean", "lambda", 3),
                .. trapped ? [SheetTable.Column.Numbers("trapped", "lambda", 3)] : NoColumn,
                SheetTable.Column.Numbers("leanest", "% above", 1),
                .. premix ? [SheetTable.Column.Numbers("leanest if no oil burns", "% above", 1)] : NoColumn,
            ],
            assessment.Points.SelectMany(p =>
                p.States.Select(s => Row(assessment.System, s, premix, trapped)).OfType<object?[]>()
            )
        );
    }

    private static SheetTable.Column[] NoColumn => [];

    private static string Note(FuelSystem system, bool premix)
    {
        string oil = premix ? " If all oil of the premix burns; the truth lies between that and none." : "";
        string trapped =
            system.Engine.TrappingEfficiency.InSi() < 1
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $" Delivered air over delivered fuel, as a sensor in the exhaust sees it; {100 * system.Engine.TrappingEfficiency.InSi():0.0} % of the air is trapped. What burns lies between the mean, fuel lost with the air, and trapped: were all fuel trapped."
                )
                : "";
        return $"By number of the chamber; mean: as one sensor for all sees it.{oil}{trapped} If the sensor fails: nobody corrects the mean.";
    }

    private static object?[]? Row(FuelSystem system, SystemAssessment.AssessedState one, bool premix, bool trapped)
    {
        if (one.State is not { Lambda: { } mean } state)
        {
            return null;
        }

        double? asked = state.TargetLambda?.ToRatio();
        return
        [
            state.Point.Name,
            StateTables.Words(one.Basis),
            asked,
            .. state.Chambers.Select(c => (object?)c.Lambda?.ToRatio()),
            mean.ToRatio(),
            .. trapped ? [(object?)system.Engine.TrappedLambda(mean, SiUnits.Ratio(1)).ToRatio()] : NoCell,
            Above(state.Chambers.Max(c => c.Lambda?.ToRatio()), asked),
            .. premix ? [Above(state.Chambers.Max(c => c.LambdaIfOilUnburned?.ToRatio()), asked)] : NoCell,
        ];
    }

    private static object?[] NoCell => [];

    private static double? Above(double? leanest, double? asked) => 100 * ((leanest / asked) - 1);
}
