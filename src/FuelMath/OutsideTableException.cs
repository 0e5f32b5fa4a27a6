using System.Globalization;

namespace FuelMath;

/// <summary>A table was asked outside its range, and nobody chose to hold or extend its ends.</summary>
#pragma warning disable CA1032 // An instance without table, axis, value and range would be of no use.
public sealed class OutsideTableException : ArgumentOutOfRangeException
#pragma warning restore CA1032
{
    /// <summary>Says which table was asked for what.</summary>
    /// <param name="table">The table's name.</param>
    /// <param name="axis">The axis, with its unit.</param>
    /// <param name="value">What was asked for.</param>
    /// <param name="minimum">The least value on the axis.</param>
    /// <param name="maximum">The greatest value on the axis.</param>
    public OutsideTableException(string table, string axis, double value, double minimum, double maximum)
        : base(
            axis,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{table}: {axis} must be from {minimum:g7} to {maximum:g7}; it was {value:g7}."
            )
        )
    {
        Table = table;
        Axis = axis;
        Value = value;
        Minimum = minimum;
        Maximum = maximum;
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
}
