namespace FuelMath.Samples.Assessment;

/// <summary>An assessment with all that is printed of it: sheet, tables, and what the bench said.</summary>
internal sealed record Assessed(TuningSheet Sheet, AssessmentTables Tables, MeasuredSet? Measured, PulsedReport? Pulsed)
{
    /// <summary>Reads a system and the files beside it.</summary>
    /// <param name="file">The system.</param>
    /// <param name="points">Its operating points; null for "name-points.json" beside it.</param>
    /// <param name="bench">The bench's readings; null for "name-bench.csv" beside it, where there is one.</param>
    /// <param name="dated">The date of the data; null where not given.</param>
    internal static Assessed Read(string file, string? points, string? bench, DateOnly? dated)
    {
        string stem = Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file));
        string benchFile = bench ?? stem + "-bench.csv";
        string pulsesFile = stem + "-pulses.json";
        FuelSystem system = SystemDocument.ReadFile(file);
        IReadOnlyList<OperatingPoint> asked = [.. OperatingListDocument.ReadFile(points ?? stem + "-points.json")];
        MeasuredSet? measured =
            bench is not null || File.Exists(benchFile)
                ? MeasuredSet.Of(system, BenchReport.Read(benchFile), Path.GetFileName(benchFile))
                : null;
        return Of(
            measured is null
                ? new SystemAssessment(system, asked)
                : SystemAssessment.FromBench(system, asked, measured.Fitted, measured.Sets),
            measured,
            File.Exists(pulsesFile) ? new PulsedReport(BenchDocument.ReadFile(pulsesFile)) : null,
            dated
        );
    }

    internal static Assessed Of(
        SystemAssessment assessment,
        MeasuredSet? measured,
        PulsedReport? pulsed,
        DateOnly? dated
    ) =>
        new(
            dated is { } date ? TuningSheet.FromDated(assessment, date) : new TuningSheet(assessment),
            new AssessmentTables(assessment),
            measured,
            pulsed
        );
}
