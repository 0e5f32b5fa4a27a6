using System.Globalization;

namespace FuelMath;

/// <summary>A table was asked outside its range, and nobody chose to hold or extend its ends.</summary>
#pragma warning disable CA1032 // An instance without table, axis, value and range would be of no use.
public sealed class OutsideTableException : ArgumentOutOfRangeException, IRefusal
#pragma warning restore CA1032
{
    private readonly string sentence;

    /// <summary>Says which table was asked for what.</summary>
    /// <param name="table">The table's name.</param>
    /// <param name="axis">The axis, with its unit.</param>
    /// <param name="value">What was asked for.</param>
    /// <param name="minimum">The least value on the axis.</param>
    /// <param name="maximum">The greatest value on the axis.</param>
    public OutsideTableException(string table, string axis, double value, double minimum, double maximum)
        : this(table, axis, value, minimum, maximum, "") { }

    /// <summary>The same, and what can be done about it.</summary>
    /// <param name="table">The table's name.</param>
    /// <param name="axis">The axis, with its unit.</param>
    /// <param name="value">What was asked for.</param>
    /// <param name="minimum">The least value on the axis.</param>
    /// <param name="maximum">The greatest value on the axis.</param>
    /// <param name="remedy">What can be done, in sentences; empty when there is nothing to say.</param>
    public OutsideTableException(string table, string axis, double value, double minimum, double maximum, string remedy)
        : this(table, axis, value, minimum, maximum, remedy, null) { }

    internal OutsideTableException(
        string table,
        string axis,
        double value,
        double minimum,
        double maximum,
        string remedy,
        string? paramName
    )
        : base(paramName, value, null)
    {
        sentence = string.Create(
            CultureInfo.InvariantCulture,
            $"{table}: {axis} must be from {minimum:g7} to {maximum:g7}; it was {value:g7}.{(string.IsNullOrEmpty(remedy) ? "" : " ")}{remedy}"
        );
        Table = table;
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

    /// <summary>What was asked for.</summary>
    public double Value { get; }

    /// <summary>The least value on the axis.</summary>
    public double Minimum { get; }

    /// <summary>The greatest value on the axis.</summary>
    public double Maximum { get; }

    /// <summary>What can be done about it, in sentences; empty when there is nothing to say.</summary>
    public string Remedy { get; }

    /// <inheritdoc />
    public override string Message => ParamName is null ? sentence : $"{sentence} (Parameter '{ParamName}')";
}
