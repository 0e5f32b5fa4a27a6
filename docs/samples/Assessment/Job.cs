using System.Globalization;

namespace FuelMath.Samples.Assessment;

/// <summary>What a command line asks for, done; the result is the exit code.</summary>
/// <remarks>
/// <para>
/// Usage: Assessment [system.json [points.json [bench.csv]]] [--out folder] [--force] [--dated 2026-11-20] [--all].
/// Without arguments it assesses the bundled time-trial car. Beside "name.json" it looks for "name-points.json" and
/// "name-bench.csv", and for raw pulses in "name-pulses.json"; a system without the last two is assessed without them.
/// </para>
/// <para>
/// Assessment --line plan.json says of a line plan, joint by joint, whether it seals, and what to buy and to cut.
/// Assessment --brief brief.json gives a first answer from the least that is known, and what to measure next.
/// </para>
/// <para>
/// It writes below "out/name of the system's file", or into the folder of --out, and overwrites nothing without --force. It
/// ends with 0 when everything holds or every joint seals, with 1 on "act first", "do not run" or a joint that does not seal,
/// with 2 on "not known" or a refusal.
/// </para>
/// </remarks>
internal sealed class Job
{
    private readonly List<string> files = [];
    private readonly string? folder;
    private readonly DateOnly? dated;
    private readonly string? brief;
    private readonly string? plan;
    private readonly bool all;
    private readonly bool force;

    private Job(string[] args)
    {
        for (int i = 0; i < args.Length; i++)
        {
            switch (args[i])
            {
                case "--all":
                    all = true;
                    break;
                case "--force":
                    force = true;
                    break;
                case "--brief" when i + 1 < args.Length:
                    brief = args[++i];
                    break;
                case "--line" when i + 1 < args.Length:
                    plan = args[++i];
                    break;
                case "--out" when i + 1 < args.Length:
                    folder = args[++i];
                    break;
                case "--dated" when i + 1 < args.Length:
                    dated = Day(args[++i]);
                    break;
                case ['-', '-', ..]:
                    throw new FormatException(
                        $"An option must be --force, --all, or --out, --dated, --brief or --line with what it needs; it was '{args[i]}'."
                    );
                default:
                    files.Add(args[i]);
                    break;
            }
        }
    }

    internal static int Run(string[] args, TextWriter output, TextWriter error)
    {
        try
        {
            return new Job(args).Run(output);
        }
        catch (Exception refusal)
            when (refusal
                    is IRefusal
                        or DocumentException
                        or FormatException
                        or IOException
                        or UnauthorizedAccessException
                        or ArgumentException
            )
        {
            error.WriteLine(refusal.Message);
            return ExitCode.Refused;
        }
    }

    private static DateOnly Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out DateOnly day)
            ? day
            : throw new FormatException($"--dated must be a date such as 2026-11-20; it was '{text}'.");

    private int Run(TextWriter output)
    {
        if (plan is not null)
        {
            LinePlan line = LinePlanDocument.ReadFile(plan);
            Write(output, LineReport.Text(line));
            return line.AllSeal ? 0 : 1;
        }

        if (brief is not null)
        {
            var first = new BriefAssessment(BriefDocument.ReadFile(brief));
            Write(output, BriefReport.Text(first));
            return ExitCode.Of(first.Assessment.Verdict.Kind);
        }

        string file =
            files.Count > 0 ? files[0] : Path.Combine(AppContext.BaseDirectory, "data", "time-trial-car.json");
        var assessed = Assessed.Read(file, files.ElementAtOrDefault(1), files.ElementAtOrDefault(2), dated);
        string[] written = WriteFiles(assessed, Path.GetFileNameWithoutExtension(file));
        Write(output, new ConsoleSummary(assessed.Sheet, written).Text());
        if (all)
        {
            output.WriteLine();
            Write(output, AllText.Of(assessed));
        }

        return ExitCode.Of(assessed.Sheet.Assessment.Verdict.Kind);
    }

    private string[] WriteFiles(Assessed assessed, string stem)
    {
        var to = OutputFolder.Of(folder, stem, force);
        to.Check(["assessment.html", .. SheetFolder.Files(assessed)]);
        SheetFolder.Write(to, assessed);
        to.Write("assessment.html", new HtmlPage(assessed).ToText());
        return [to.Path("assessment.html"), to.Path("sheet.txt"), to.Path("tables")];
    }

    private static void Write(TextWriter output, IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }
    }
}
