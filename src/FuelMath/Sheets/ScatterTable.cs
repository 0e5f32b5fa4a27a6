using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>The table of contributions of uncertain inputs to the scatter of rail pressure and lambda.</summary>
internal static class ScatterTable
{
    private const double Bar = 1e5;

    /// <summary>Half of the last digit shown of lambda: less counts as none, as where a sensor holds one chamber.</summary>
    private const double NoScatter = 5e-5;

    /// <summary>A share that rounds to nothing in whole percent.</summary>
    private const double NoShare = 0.005;

    /// <summary>The table; it has a row for each point and input that counts, and one for a point without a state.</summary>
    internal static SheetTable Of(SystemAssessment assessment) =>
        SheetTable.Of(
            "scatter",
            "What makes the scatter of rail pressure and lambda",
            "One standard deviation each: what the input alone would make, and its share in the square of all together; the first of a point is what to measure next. Lambda of the chamber that scatters most, rail pressure at the first injector. Shares that round to nothing in both are left out; what the description does not name as uncertain counts as exact. (bent): not in proportion over its scatter; ask random trials.",
            [
                SheetTable.Column.Words("point"),
                SheetTable.Column.Words("uncertain"),
                SheetTable.Column.Words("by"),
                SheetTable.Column.Numbers("lambda", "-", 4),
                SheetTable.Column.Numbers("of lambda", "%", 0),
                SheetTable.Column.Numbers("rail", "bar", 3),
                SheetTable.Column.Numbers("of rail", "%", 0),
            ],
            assessment.Shares.SelectMany(Rows)
        );

    /// <summary>In the units of the other tables of a sheet.</summary>
    private static string Words(IQuantity deviation) =>
        deviation switch
        {
            Duration time => LogText.Of($"{time.ToUnit(DurationUnit.Millisecond)}"),
            Pressure pressure => LogText.Of($"{pressure.ToUnit(PressureUnit.Bar)}"),
            _ => LogText.Of($"{deviation}"),
        };

    private static IEnumerable<object?[]> Rows(SystemAssessment.PointShares point)
    {
        if (point.Shares is not { } shares)
        {
            yield return [point.Point.Name, "no state", "", null, null, null, null];
            yield break;
        }

        string first = shares.BestEstimate.Injectors[0].Seat.Node;
        if (!shares.BestEstimate.Network.TryPressureAt(first, out _))
        {
            yield return [point.Point.Name, "no pressure: every way to the rail is shut", "", null, null, null, null];
            yield break;
        }

        ScatterShares<GaugePressure, Pressure> rail = shares.PressureAt(first);
        ScatterShares<Lambda, Ratio>? lambda = shares.BestEstimate.Chambers.All(c => c.Lambda is not null)
            ? shares
                .BestEstimate.Chambers.Select(c => shares.LambdaOf(c.Chamber))
                .MaxBy(s => s.StandardDeviation.InSi())
            : null;
        bool scatters = lambda?.StandardDeviation.InSi() >= NoScatter;
        foreach (
            UncertainInput input in scatters ? lambda!.Lines.Select(l => l.Input) : rail.Lines.Select(l => l.Input)
        )
        {
            ScatterShare<Pressure> ofRail = rail.Lines.First(l => l.Input == input);
            ScatterShare<Ratio>? ofLambda = lambda?.Lines.First(l => l.Input == input);
            if (ofRail.Share.InSi() < NoShare && !(scatters && ofLambda!.Share.InSi() >= NoShare))
            {
                continue;
            }

            yield return
            [
                point.Point.Name,
                ofRail.IsBent || ofLambda is { IsBent: true } ? $"{input.Kind} (bent)" : input.Kind,
                Words(input.StandardDeviation),
                ofLambda?.StandardDeviation.InSi(),
                scatters ? 100 * ofLambda?.Share.InSi() : null,
                ofRail.StandardDeviation.InSi() / Bar,
                100 * ofRail.Share.InSi(),
            ];
        }

        yield return
        [
            point.Point.Name,
            "all together",
            "",
            lambda?.StandardDeviation.InSi(),
            scatters ? 100.0 : null,
            rail.StandardDeviation.InSi() / Bar,
            rail.StandardDeviation.InSi() == 0 ? null : 100.0,
        ];
    }
}
