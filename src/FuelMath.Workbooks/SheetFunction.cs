using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>A function of cells for an add-in of a spreadsheet host: description and call.</summary>
/// <remarks>
/// <para>
/// It takes the values of a host: numbers, texts, logical values, <c>null</c> for an empty cell, and two-dimensional
/// arrays for ranges. It gives a number, a text, a <see cref="CellError"/>, or an array of those, and throws for no
/// content of a cell. Ranges are combined cell by cell; a single cell, row or column is repeated.
/// </para>
/// <para>
/// A bare number has the unit that its argument declares; a text such as "3 bar" may have any unit of the kind, as
/// people write it. A value of another type, such as an error of the host, is passed on unchanged.
/// </para>
/// <para>A number in a cell is no clearance to load an engine: verify with a sensor at light load first.</para>
/// </remarks>
/// <example>
/// <code source="../../tests/FuelMath.Examples/SheetFunctionExamples.cs" region="Loop" />
/// </example>
/// <seealso href="../guide/add-ins.html">Functions for an add-in</seealso>
public sealed class SheetFunction
{
    private readonly Preparation prepare;

    internal SheetFunction(
        string name,
        string summary,
        ImmutableArray<SheetFunctionArgument> arguments,
        string result,
        string resultUnit,
        string source,
        FormulaInfo? formula,
        Preparation prepare
    )
    {
        (Name, Summary, Arguments, Result) = (name, summary, arguments, result);
        (ResultUnit, Source, Formula, this.prepare) = (resultUnit, source, formula, prepare);
    }

    /// <summary>Reads the tables of a call once; gives the calculation of one cell, or the error.</summary>
    internal delegate CellCalculation? Preparation(
        IReadOnlyList<object?> cells,
        IFormatProvider? writer,
        out CellError? error
    );

    /// <summary>Calculates one cell from one cell of each argument; a table is passed as a whole.</summary>
    internal delegate object CellCalculation(IReadOnlyList<object?> cells);

    /// <summary>The name, for example <c>FuelFlowAtPressure</c>; letters only, unique.</summary>
    public string Name { get; }

    /// <summary>The summary.</summary>
    public string Summary { get; }

    /// <summary>The arguments.</summary>
    public ImmutableArray<SheetFunctionArgument> Arguments { get; }

    /// <summary>The meaning of the result.</summary>
    public string Result { get; }

    /// <summary>The unit of the result; blank for a text.</summary>
    public string ResultUnit { get; }

    /// <summary>The source of the formula.</summary>
    public string Source { get; }

    /// <summary>The formula that it calls, with its ranges and example; null for tables, units and states.</summary>
    public FormulaInfo? Formula { get; }

    /// <summary>Calculates a cell, or a range of cells.</summary>
    /// <param name="writer">
    /// The culture of texts such as "1,5 bar"; null when it is not known, which refuses ambiguous texts.
    /// </param>
    /// <param name="arguments">The value of each argument from the host.</param>
    /// <returns>
    /// A <see cref="double"/>, a <see cref="string"/>, a <see cref="CellError"/>, a value of the host that was passed on, or
    /// an <c>object[,]</c> of those.
    /// </returns>
    public object Call(IFormatProvider? writer, params ReadOnlySpan<object?> arguments)
    {
        if (arguments.Length != Arguments.Length)
        {
            return CellError.Value(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Name} takes {Arguments.Length} arguments ({string.Join(", ", Arguments)}); it got {arguments.Length}."
                )
            );
        }

        object?[] cells = arguments.ToArray();
        for (int i = 0; i < cells.Length; i++)
        {
            if (!Arguments[i].IsWholeRange && cells[i] is double[,] numbers)
            {
                cells[i] = CellRange.Boxed(numbers);
            }
        }

        return prepare(cells, writer, out CellError? error) is { } calculate
            ? CellRange.Together(cells, Arguments, calculate)
            : error!;
    }

    /// <summary>Gives the name with its arguments, for example <c>DutyCycle(width, period)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}({string.Join(", ", Arguments)})";
}
