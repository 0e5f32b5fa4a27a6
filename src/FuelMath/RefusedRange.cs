using System.Globalization;

namespace FuelMath;

/// <summary>
/// A refused value and the sentence of its message. Numbers have six significant digits, more where they are needed to
/// distinguish value and limit.
/// </summary>
internal sealed class RefusedRange
{
    private readonly string? words;
    private readonly double minimumSi;
    private readonly double maximumSi;

    /// <summary>Creates a refusal by a rule in words.</summary>
    internal RefusedRange(string words, double value, double si, string suffix, double? minimum, bool minimumExcluded)
    {
        this.words = words;
        (Value, Si, Minimum, IsMinimumExcluded) = (value, si, minimum, minimumExcluded);
        Sentence = $"Must be {words}; it was {Shown(value)}{suffix}.";
    }

    /// <summary>Creates a refusal by a closed range.</summary>
    internal RefusedRange(
        double value,
        double si,
        double minimum,
        double maximum,
        double minimumSi,
        double maximumSi,
        string suffix
    )
        : this(value, si, minimum, maximum, minimumSi, maximumSi, suffix, null) { }

    private RefusedRange(
        double value,
        double si,
        double minimum,
        double maximum,
        double minimumSi,
        double maximumSi,
        string suffix,
        string? written
    )
    {
        (Value, Si, Minimum, Maximum) = (value, si, minimum, maximum);
        (this.minimumSi, this.maximumSi) = (minimumSi, maximumSi);
        string came = written ?? Shown(value, minimum, maximum) + suffix;
        Sentence = $"Must be from {Shown(minimum)}{suffix} to {Shown(maximum)}{suffix}; it was {came}.";
    }

    /// <summary>Creates a refusal with its own sentence.</summary>
    internal RefusedRange(string sentence, double value, double? minimum, double? maximum, bool minimumExcluded)
    {
        (Sentence, Value, Si) = (sentence, value, double.NaN);
        (Minimum, Maximum, IsMinimumExcluded) = (minimum, maximum, minimumExcluded);
    }

    private RefusedRange(RefusedRange other, string written)
    {
        words = other.words;
        (Value, Si, Minimum, IsMinimumExcluded) = (other.Value, other.Si, other.Minimum, other.IsMinimumExcluded);
        Sentence = $"Must be {words}; it was {written}.";
    }

    internal double Value { get; }

    /// <summary>The value in SI.</summary>
    internal double Si { get; }

    internal double? Minimum { get; }

    internal double? Maximum { get; }

    internal bool IsMinimumExcluded { get; }

    internal string Sentence { get; }

    /// <summary>The same in another unit, with the value as it was written.</summary>
    internal RefusedRange In(Func<double, double> fromSi, string unit, string written) =>
        words is not null
            ? new(this, written)
            : new(
                fromSi(Si),
                Si,
                fromSi(minimumSi),
                fromSi(maximumSi),
                minimumSi,
                maximumSi,
                unit.Length == 0 ? "" : $" {unit}",
                written
            );

    /// <summary>A number for a message, without a sign on zero.</summary>
    internal static string Shown(double value) => Written(value, "G6");

    /// <summary>A number outside a range, with as many digits as needed to see that.</summary>
    private static string Shown(double value, double minimum, double maximum)
    {
        foreach (string format in new[] { "G6", "G9", "G12", "G15" })
        {
            string text = Written(value, format);
            if (text != Written(minimum, format) && text != Written(maximum, format))
            {
                return text;
            }
        }

        return value.ToString("R", CultureInfo.InvariantCulture);
    }

    /// <summary>Formats large and whole numbers in full, without a power of ten.</summary>
    private static string Written(double value, string format) =>
        Math.Abs(value) is >= 1e5 and < 1e15 || (value == Math.Floor(value) && Math.Abs(value) < 1e15)
            ? (value + 0.0).ToString("F0", CultureInfo.InvariantCulture)
            : value.ToString(format, CultureInfo.InvariantCulture);
}
