using System.Globalization;
using FuelMath;
using FuelMath.Samples.Assessment;

// Usage: Assessment [system.json [points.json [bench.csv]]] [--out folder] [--force] [--dated 2026-11-20] [--all]
// Without arguments it assesses the bundled time-trial car. Beside "name.json" it looks for "name-points.json" and
// "name-bench.csv", and for raw pulses in "name-pulses.json"; a system without them is assessed without them.
// Assessment --line plan.json says of a line plan, joint by joint, whether it seals, and what to buy and to cut.
// Assessment --brief brief.json gives a first answer from the least that is known, and what to measure next.
// It writes below "out/<name of the system's file>", or into the folder of --out, and overwrites nothing without --force.
// It ends with 0 when everything holds or every joint seals, with 1 on a joint that does not, on "act first" or "do not run", with 2 on "not known" or a refusal.
string? folder = null;
DateOnly? dated = null;
bool all = false;
string? brief = null;
string? plan = null;
bool force = false;
var files = new List<string>();
try
{
    for (int i = 0; i < args.Length; i++)
    {
        switch (args[i])
        {
            case "--all":
                all = true;
                break;
            case "--brief" when i + 1 < args.Length:
                brief = args[++i];
                break;
            case "--line" when i + 1 < args.Length:
                plan = args[++i];
                break;
            case "--force":
                force = true;
                break;
            case "--out" when i + 1 < args.Length:
                folder = args[++i];
                break;
            case "--dated" when i + 1 < args.Length:
                dated = DateOnly.TryParseExact(
                    args[++i],
                    "yyyy-MM-dd",
                    CultureInfo.InvariantCulture,
                    default,
                    out DateOnly day
                )
                    ? day
                    : throw new FormatException($"--dated must be a date such as 2026-11-20; it was '{args[i]}'.");
                break;
            case ['-', '-', ..]:
                throw new FormatException(
                    $"An option must be one of --out, --force, --dated, --all, --brief, --line; it was '{args[i]}'."
                );
            default:
                files.Add(args[i]);
                break;
        }
    }

    if (plan is not null)
    {
        LinePlan line = LinePlanDocument.ReadFile(plan);
        foreach (string row in LineReport.Text(line))
        {
            Console.WriteLine(row);
        }

        return line.AllSeal ? 0 : 1;
    }

    if (brief is not null)
    {
        var first = new BriefAssessment(BriefDocument.ReadFile(brief));
        foreach (string line in BriefReport.Text(first))
        {
            Console.WriteLine(line);
        }

        return ExitCode.Of(first.Assessment.Verdict.Kind);
    }

    string file = files.Count > 0 ? files[0] : Path.Combine(AppContext.BaseDirectory, "data", "time-trial-car.json");
    string stem = Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file));
    string pointsFile = files.Count > 1 ? files[1] : stem + "-points.json";
    string benchFile = files.Count > 2 ? files[2] : stem + "-bench.csv";
    string pulsesFile = stem + "-pulses.json";
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
    TuningSheet sheet = dated is { } date ? TuningSheet.FromDated(assessment, date) : new TuningSheet(assessment);

    var output = OutputFolder.Of(folder, Path.GetFileName(stem), force);
    output.Check(["assessment.html", .. SheetFolder.Files(sheet)]);
    SheetFolder.Write(output, sheet);
    HtmlPage.Write(output.Path("assessment.html"), assessment, points, measured, pulsed, sheet);
    string[] written = [output.Path("assessment.html"), output.Path("sheet.txt"), output.Path("tables")];
    foreach (string line in new ConsoleSummary(assessment, sheet, written).Text())
    {
        Console.WriteLine(line);
    }

    if (all)
    {
        Console.WriteLine();
        Console.WriteLine(string.Join(Environment.NewLine, sheet.ToLines(TuningSheet.PageWidth)));
        new AssessmentReport(system, points, measured, Console.Out).Print();
        pulsed?.Print(Console.Out);
    }

    return ExitCode.Of(assessment.Verdict.Kind);
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
    return ExitCode.Refused;
}
