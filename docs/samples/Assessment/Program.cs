using FuelMath;
using FuelMath.Assessments;
using FuelMath.Documents;
using FuelMath.Samples.Assessment;
using FuelMath.Systems;

// Usage: Assessment [system.json [points.json [bench.csv]]] [--out folder]
// Without arguments it assesses the bundled time-trial car. Beside "name.json" it looks for "name-points.json" and
// "name-bench.csv", and for raw pulses in "name-pulses.json"; a system without them is assessed without them.
string? folder = null;
var files = new List<string>();
for (int i = 0; i < args.Length; i++)
{
    if (args[i] == "--out" && i + 1 < args.Length)
    {
        folder = args[++i];
    }
    else
    {
        files.Add(args[i]);
    }
}

string file = files.Count > 0 ? files[0] : Path.Combine(AppContext.BaseDirectory, "data", "time-trial-car.json");
string stem = Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file));
string pointsFile = files.Count > 1 ? files[1] : stem + "-points.json";
string benchFile = files.Count > 2 ? files[2] : stem + "-bench.csv";
string pulsesFile = stem + "-pulses.json";
try
{
    FuelSystem system = SystemDocument.ReadFile(file);
    SolvedPoint[] points = [.. OperatingListDocument.ReadFile(pointsFile).Select(p => SolvedPoint.Of(system, p))];
    MeasuredSet? measured = File.Exists(benchFile)
        ? MeasuredSet.Of(system, BenchReport.Read(benchFile), Path.GetFileName(benchFile), points)
        : null;

    PulsedReport? pulsed = File.Exists(pulsesFile) ? new PulsedReport(BenchDocument.ReadFile(pulsesFile)) : null;

    OperatingPoint[] asked = [.. points.Select(p => p.Point)];
    SystemAssessment assessment = measured is null
        ? new SystemAssessment(system, asked)
        : SystemAssessment.FromBench(system, asked, measured.Fitted, measured.Sets);
    new AssessmentReport(system, assessment, points, measured, Console.Out).Print();
    pulsed?.Print(Console.Out);
    string sheet = HandoverSheet.Text(system, points, measured);
    Console.WriteLine();
    Console.Write(sheet);

    folder ??= Path.Combine("out", Path.GetFileName(stem));
    Directory.CreateDirectory(folder);
    File.WriteAllText(Path.Combine(folder, "sheet.txt"), sheet);
    HtmlPage.Write(Path.Combine(folder, "assessment.html"), system, assessment, points, measured, pulsed, sheet);
    Console.WriteLine();
    Console.WriteLine($"Written: {Path.Combine(folder, "assessment.html")} and {Path.Combine(folder, "sheet.txt")}");
    return 0;
}
catch (Exception refusal)
    when (refusal
            is DocumentException
                or FormatException
                or IOException
                or UnauthorizedAccessException
                or ArgumentException
    )
{
    Console.Error.WriteLine(refusal.Message);
    return 1;
}
