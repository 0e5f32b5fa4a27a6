using UnitsNet;

namespace FuelMath;

/// <summary>The table of contributions of uncertain inputs to the scatter of rail pressure and lambda.</summary>
internal static class ScatterTable
{
    private const double Bar = 1e5;

    /// <summary>Half of the last digit shown of lambda: less counts as none, as where a sensor holds one chamber.</summary>
    private const double NoScatter = 5e-5;

    /// <summary>The table; it has a row for each point and input, and one for a point without a state.</summary>
    internal static SheetTable Of(SystemAssessment assessment) =>
        SheetTable.Of(
            "scatter",
            "What makes the scatter of rail pressure and lambda",
            "One standard deviation each: what the input alone would make, and its share of all together. Rail pressure at the first injector, lambda of the chamber that scatters most. What is not listed counts as exact. (bent): not in proportion over its scatter; ask random trials.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("uncertain"),
                SheetTable.Column.Words("by"),
                SheetTable.Column.Numbers("rail", "bar", 3),
                SheetTable.Column.Numbers("rail share", "%", 0),
                SheetTable.Column.Numbers("lambda", "-", 4),
                SheetTable.Column.Numbers("lambda share", "%", 0),
            ],
            assessment.Shares.SelectMany(Rows)
        );

    private static IEnumerable<object?[]> Rows(SystemAssessment.PointShares point)
    {
        if (point.Shares is not { } shares)
        {
            yield return [point.Point.Name, "no state", "", null, null, null, null];
            yield break;
        }

        ScatterShares<GaugePressure, Pressure> rail = shares.PressureAt(shares.BestEstimate.Injectors[0].Seat.Node);
        ScatterShares<Lambda, Ratio>? lambda = shares.BestEstimate.Chambers.All(c => c.Lambda is not null)
            ? shares
                .BestEstimate.Chambers.Select(c => shares.LambdaOf(c.Chamber))
                .MaxBy(s => s.StandardDeviation.InSi())
            : null;
        bool scatters = lambda?.StandardDeviation.InSi() >= NoScatter;
        foreach (ScatterShare<Pressure> line in rail.Lines)
        {
            ScatterShare<Ratio>? own = lambda?.Lines.First(l => l.Input == line.Input);
            yield return
            [
                point.Point.Name,
                line.IsBent || own is { IsBent: true } ? $"{line.Input.Name} (bent)" : line.Input.Name,
                LogText.Of($"{line.Input.StandardDeviation}"),
                line.StandardDeviation.InSi() / Bar,
                100 * line.Share.InSi(),
                own?.StandardDeviation.InSi(),
                scatters ? 100 * own?.Share.InSi() : null,
            ];
        }

        yield return
        [
            point.Point.Name,
            "all together",
            "",
            rail.StandardDeviation.InSi() / Bar,
            rail.StandardDeviation.InSi() == 0 ? null : 100.0,
            lambda?.StandardDeviation.InSi(),
            scatters ? 100.0 : null,
        ];
    }
}
