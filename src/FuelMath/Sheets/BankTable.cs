using System.Globalization;

namespace FuelMath;

/// <summary>The table of what the lambda sensor of each bank sees at each point.</summary>
internal static class BankTable
{
    /// <summary>The table; it has a row for each point and bank, and one for a point without a mixture.</summary>
    internal static SheetTable Of(SystemAssessment assessment) =>
        SheetTable.Of(
            "banks",
            "Banks: what the sensor of each sees",
            "Correction: the factor on the fuel that the controller needs to hold the lambda, by what it was told of its injectors; none where no sensor holds it. Width of stage 1.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("bank"),
                SheetTable.Column.Words("chambers"),
                SheetTable.Column.Numbers("reached", "lambda", 3),
                SheetTable.Column.Numbers("correction", "%", 1),
                SheetTable.Column.Numbers("width", "ms", 3),
            ],
            assessment.Points.SelectMany(Rows)
        );

    private static IEnumerable<object?[]> Rows(SystemAssessment.PointAssessment point)
    {
        if (point.Of(SystemAssessment.StateBasis.AsDescribed)?.State is not { Banks.IsEmpty: false } state)
        {
            yield return [point.Point.Name, "none", "", null, null, null];
            yield break;
        }

        foreach (BankResult bank in state.Banks)
        {
            yield return
            [
                point.Point.Name,
                bank.Bank.ToString(CultureInfo.InvariantCulture),
                string.Join(", ", bank.Chambers),
                bank.Lambda?.ToRatio(),
                100 * bank.Correction?.InSi(),
                bank.PulseWidths[0].InSi() * 1e3,
            ];
        }
    }
}
