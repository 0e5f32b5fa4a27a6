using System.Globalization;

namespace FuelMath;

/// <summary>
/// Thrown for a value outside the range of a table that is neither held nor extended beyond its ends.
/// </summary>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class OutsideTableException : ArgumentOutOfRangeException, IRefusal, IExplained
{
    private readonly string sentence;

    /// <summary>Creates an exception.</summary>
    /// <param name="table">The table's name.</param>
    /// <param name="axis">The axis, with its unit.</param>
    /// <param name="value">The value outside the range.</param>
    /// <param name="minimum">The smallest value on the axis.</param>
    /// <param name="maximum">The largest value on the axis.</param>
    public OutsideTableException(string table, string axis, double value, double minimum, double maximum)
        : this(table, axis, value, minimum, maximum, "") { }

    /// <summary>Creates an exception with a remedy.</summary>
    /// <param name="table">The table's name.</param>
    /// <param name="axis">The axis, with its unit.</param>
    /// <param name="value">The value outside the range.</param>
    /// <param name="minimum">The smallest value on the axis.</param>
    /// <param name="maximum">The largest value on the axis.</param>
    /// <param name="remedy">A remedy, in sentences; may be empty.</param>
    public OutsideTableException(string table, string axis, double value, double minimum, double maximum, string remedy)
        : this(table, axis, value, minimum, maximum, remedy, null, null) { }

    internal OutsideTableException(
        RefusalText table,
        string axis,
        double value,
        double minimum,
        double maximum,
        string remedy,
        string? paramName = null,
        string? part = null
    )
        : base(paramName, value, null)
    {
        int open = axis.EndsWith(')') ? axis.LastIndexOf(" (", StringComparison.Ordinal) : -1;
        string unit = open < 0 ? "" : axis[(open + 2)..^1];
        Quantity = open < 0 ? axis : axis[..open];
        Sentence = table
            .With(table.ToString(), "table")
            .Then(
                $": {Quantity:axis} must be from {new Amount(minimum, unit):least} to {new Amount(maximum, unit):most}; it was {new Amount(value, unit):value}."
            );
        sentence = RefusalWords.Of(remedy.Length == 0 ? Sentence : Sentence.Then($" {remedy:remedy}"), part);
        Part = part;
        Table = table.ToString();
        Axis = axis;
        Value = value;
        Minimum = minimum;
        Maximum = maximum;
        Remedy = remedy;
    }

    /// <summary>The table's name.</summary>
    public string Table { get; }

    /// <summary>The axis, with its unit.</summary>
    public string Axis { get; }

    /// <summary>The value outside the range.</summary>
    public double Value { get; }

    /// <summary>The smallest value on the axis.</summary>
    public double Minimum { get; }

    /// <summary>The largest value on the axis.</summary>
    public double Maximum { get; }

    /// <summary>A remedy, in sentences; may be empty.</summary>
    public string Remedy { get; }

    Refusal IExplained.Refusal =>
        Sentence.ToRefusal(RefusalKind.Table, RefusalCode.OutsideData, Quantity, sentence, Part);

    /// <summary>The axis without its unit.</summary>
    private string Quantity { get; }

    private RefusalText Sentence { get; }

    private string? Part { get; }

    /// <inheritdoc />
    public override string Message => ParamName is null ? sentence : $"{sentence} (Parameter '{ParamName}')";
}
