using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace FuelMath;

/// <summary>What the compiler calls for each hole of an interpolated string that is given to <see cref="LogText"/>.</summary>
[InterpolatedStringHandler]
internal readonly struct LogTextHandler
{
    private readonly StringBuilder text;

    public LogTextHandler(int literalLength, int formattedCount) => text = new(literalLength + (12 * formattedCount));

    public void AppendLiteral(string value) => text.Append(value);

    public void AppendFormatted<T>(T value) => AppendFormatted(value, null);

    /// <summary>A value; what nobody gave is "unknown".</summary>
    public void AppendFormatted<T>(T value, string? format) =>
        text.Append(
            value switch
            {
                null => "unknown",
                string words => words,
                double number => LogText.Number(number),
                IQuantity quantity => LogText.Of(quantity, format),
                IFormattable other => other.ToString(format, CultureInfo.InvariantCulture),
                _ => value.ToString(),
            }
        );

    public override string ToString() => text.ToString();
}
