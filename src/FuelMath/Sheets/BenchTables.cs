using FuelMath.Bench;

namespace FuelMath;

/// <summary>The tables of sets of injectors on the bench.</summary>
internal static class BenchTables
{
    internal static IEnumerable<SheetTable> All(SystemAssessment assessment) => [Members(assessment), Sets(assessment)];

    private static SheetTable Sets(SystemAssessment assessment) =>
        SheetTable.Of(
            "bench-sets",
            "Sets of injectors on the bench",
            "Spread: (largest - smallest) / mean. Repeats: the standard deviation of one reading about the mean of its injector. Can show: the least difference of two injectors that is not chance (95 %).",
            [
                SheetTable.Column.Words("stage"),
                SheetTable.Column.Words("verdict"),
                SheetTable.Column.Numbers("mean", "cm3/min", 1),
                SheetTable.Column.Numbers("spread", "%", 2),
                SheetTable.Column.Numbers("coefficient of variation", "%", 2),
                SheetTable.Column.Numbers("repeats", "%", 2),
                SheetTable.Column.Numbers("can show", "%", 2),
            ],
            assessment.Sets.Select(
                object?[] (s) =>
                    [
                        s.Stage,
                        s.Report.Verdict.ToString().ToLowerInvariant(),
                        s.Report.MeanFlow.InSi() * 6e7,
                        100 * s.Report.Spread.InSi(),
                        100 * s.Report.CoefficientOfVariation.InSi(),
                        100 * s.Report.Repeatability?.InSi(),
                        100 * s.Report.LeastDifference?.InSi(),
                    ]
            )
        );

    private static SheetTable Members(SystemAssessment assessment) =>
        SheetTable.Of(
            "bench-injectors",
            "Injectors on the bench",
            "Flow carried to the pressure, fluid and temperature of the rating, with its interval (95 %).",
            [
                SheetTable.Column.Words("injector"),
                SheetTable.Column.Words("stage"),
                SheetTable.Column.Numbers("flow", "cm3/min", 1),
                SheetTable.Column.Numbers("+/-", "cm3/min", 1),
                SheetTable.Column.Numbers("of rating", "%", 1),
                SheetTable.Column.Numbers("of set's mean", "%", 1),
                SheetTable.Column.Words("verdict"),
            ],
            assessment.Sets.SelectMany(s => s.Report.Members.Select(m => Member(s.Stage, m)))
        );

    private static object?[] Member(string stage, SetReport.Member member) =>
        [
            member.Name,
            stage,
            member.Flow.InSi() * 6e7,
            member.FlowHalfWidth?.InSi() * 6e7,
            100 * (1 + member.FromRating.InSi()),
            100 * (1 + member.FromMean.InSi()),
            member.Verdict.ToString().ToLowerInvariant(),
        ];
}
