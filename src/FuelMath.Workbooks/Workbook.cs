using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>A spreadsheet workbook with formulas whose steps are cells, live without an add-in.</summary>
/// <remarks>
/// <para>
/// The file has formulas without results: the host calculates when it opens the file. An input outside its range, or a
/// violated bound, gives an error as the result, never a number.
/// </para>
/// <para>A sheet is no clearance to load an engine: see its cautions.</para>
/// </remarks>
/// <example>
/// <code source="../../tests/FuelMath.Examples/WorkbookExamples.cs" region="Topic" />
/// </example>
/// <seealso href="../guide/spreadsheets.html">Spreadsheets</seealso>
public sealed class Workbook
{
    private readonly ImmutableArray<Sheet> sheets;

    internal Workbook(ImmutableArray<Sheet> sheets) => this.sheets = sheets;

    /// <summary>The names of the sheets, in their order.</summary>
    public ImmutableArray<string> SheetNames => [.. sheets.Select(s => s.Name)];

    /// <summary>Creates a workbook of one formula.</summary>
    /// <param name="formula">The formula, of the catalog or your own.</param>
    /// <param name="units">The units of inputs and result.</param>
    /// <returns>The workbook: one sheet, filled with the formula's example.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="units"/> is not a member of its enumeration.</exception>
    public static Workbook FromFormula(FormulaInfo formula, FormulaInfo.CallUnits units)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return FormulaSheets.Workbook([formula], units, _ => null);
    }

    /// <summary>Creates a workbook of one formula with numbers.</summary>
    /// <param name="formula">The formula, of the catalog or your own.</param>
    /// <param name="units">The units of inputs and result.</param>
    /// <param name="arguments">The values of the inputs, in the order of the formula's arguments.</param>
    /// <returns>The workbook: one sheet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="formula"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="units"/> is not a member of its enumeration.</exception>
    /// <exception cref="FormulaRefusedException">The count is wrong, or an argument is outside its range.</exception>
    public static Workbook FromFormula(
        FormulaInfo formula,
        FormulaInfo.CallUnits units,
        params ReadOnlySpan<double> arguments
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (formula.Check(units, arguments) is { } refusal)
        {
            throw new FormulaRefusedException(refusal);
        }

        ImmutableArray<double> numbers = [.. arguments];
        return FormulaSheets.Workbook([formula], units, _ => numbers);
    }

    /// <summary>Creates a workbook of every formula of a topic.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="units">The units of inputs and results.</param>
    /// <returns>The workbook: a sheet of contents with each result, then a sheet for each formula.</returns>
    /// <exception cref="ArgumentException">An argument is not a member of its enumeration.</exception>
    public static Workbook FromTopic(FormulaInfo.FormulaTopic topic, FormulaInfo.CallUnits units) =>
        Enum.IsDefined(topic)
            ? FromFormulas(FormulaCatalog.About(topic), units)
            : throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be a topic; it was {topic}.",
                nameof(topic),
                topic.ToString(),
                Enum.GetNames<FormulaInfo.FormulaTopic>()
            );

    /// <summary>Creates a workbook of several formulas.</summary>
    /// <param name="formulas">The formulas; one or more.</param>
    /// <param name="units">The units of inputs and results.</param>
    /// <returns>The workbook: a sheet of contents with each result, then a sheet for each formula.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="formulas"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is no formula, or <paramref name="units"/> is not a member of its enumeration.
    /// </exception>
    public static Workbook FromFormulas(IEnumerable<FormulaInfo> formulas, FormulaInfo.CallUnits units)
    {
        ArgumentNullException.ThrowIfNull(formulas);
        FormulaInfo[] all = [.. formulas];
        foreach (FormulaInfo formula in all)
        {
            ArgumentNullException.ThrowIfNull(formula, nameof(formulas));
        }

        return all.Length > 0
            ? FormulaSheets.Workbook(all, units, _ => null)
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                "Must have one or more formulas; it has none.",
                nameof(formulas)
            );
    }

    /// <summary>Creates a workbook of several formulas with numbers.</summary>
    /// <param name="formulas">The formulas; one or more.</param>
    /// <param name="units">The units of inputs and results.</param>
    /// <param name="arguments">
    /// The values of the inputs of each formula, in the order of its arguments; one list for each formula.
    /// </param>
    /// <returns>The workbook: a sheet of contents with each result, then a sheet for each formula.</returns>
    /// <exception cref="ArgumentNullException">An argument or a formula is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is no formula, the counts differ, a formula occurs twice, or <paramref name="units"/> is not a member of
    /// its enumeration.
    /// </exception>
    /// <exception cref="FormulaRefusedException">The count of a formula's numbers is wrong, or one is outside its range.</exception>
    public static Workbook FromFormulas(
        IEnumerable<FormulaInfo> formulas,
        FormulaInfo.CallUnits units,
        IEnumerable<ImmutableArray<double>> arguments
    )
    {
        ArgumentNullException.ThrowIfNull(formulas);
        ArgumentNullException.ThrowIfNull(arguments);
        FormulaInfo[] all = [.. formulas];
        ImmutableArray<double>[] numbers = [.. arguments];
        if (all.Length == 0 || all.Length != numbers.Length || all.Distinct().Count() < all.Length)
        {
            throw new RefusedArgumentException(
                all.Length == 0 ? RefusalCode.Count
                    : all.Length != numbers.Length ? RefusalCode.NotAlike
                    : RefusalCode.Duplicate,
                $"Must have one or more different formulas and numbers for each; there are {all.Length} and {numbers.Length}.",
                nameof(formulas),
                FormattableString.Invariant($"{all.Length} and {numbers.Length}"),
                []
            );
        }

        var filled = new Dictionary<FormulaInfo, ImmutableArray<double>>();
        for (int i = 0; i < all.Length; i++)
        {
            ArgumentNullException.ThrowIfNull(all[i], nameof(formulas));
            if (all[i].Check(units, numbers[i].AsSpan()) is { } refusal)
            {
                throw new FormulaRefusedException(refusal);
            }

            filled[all[i]] = numbers[i];
        }

        return FormulaSheets.Workbook(all, units, f => filled[f]);
    }

    /// <summary>
    /// Creates a workbook of an assessment: verdict, a sheet for each solved state, and findings. Rail pressure, pulse
    /// width, duty cycle and lambda are live where their laws are explicit; solved values are constants with a note.
    /// </summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The workbook.</returns>
    /// <remarks>
    /// A sheet does not calculate pump, lines and tables: dead times, flows and line losses stay those of the solved
    /// state, and the sheet says so when a given number was changed.
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code source="../../tests/FuelMath.Examples/WorkbookExamples.cs" region="Assessment" />
    /// </example>
    public static Workbook FromAssessment(SystemAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return AssessmentSheets.Workbook(assessment);
    }

    /// <summary>Writes the workbook as <c>.xlsx</c>.</summary>
    /// <param name="stream">The stream; it stays open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public void Write(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using var buffer = new MemoryStream();
        WorkbookFile.Write(sheets, buffer);
        buffer.Position = 0;
        buffer.CopyTo(stream);
    }

    /// <summary>Writes the workbook to a file; one that exists is replaced.</summary>
    /// <param name="path">The path; it ends in <c>.xlsx</c>.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="path"/> is null or does not end in <c>.xlsx</c>.
    /// </exception>
    /// <exception cref="IOException">The file can't be written.</exception>
    public void WriteFile(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAsWanted,
                $"Must end in .xlsx; it was \"{path}\".",
                nameof(path),
                path,
                [".xlsx"]
            );
        }

        using FileStream file = File.Create(path);
        Write(file);
    }
}
