using System.Globalization;

namespace FuelMath;

/// <summary>Reads "number unit" into an SI number, and writes an SI number so that it reads back to the same bits.</summary>
internal static class QuantityReading
{
    /// <summary>The greatest length of a text; no quantity needs more.</summary>
    internal const int MaximumLength = 100;

    /// <summary>Tried in turn, so that 99.995 degF is written as that again.</summary>
    private static readonly string[] FewDigits = ["G12", "G13", "G14", "G15"];

    /// <summary>Reads a text of a kind; null when it is accepted, else the problem.</summary>
    internal static QuantityTextException? Read(
        ReadOnlySpan<char> text,
        UnitKind kind,
        IFormatProvider? provider,
        out double si
    )
    {
        si = 0;
        if (text.Length > MaximumLength)
        {
            return new(
                QuantityTextException.TextProblem.TooLong,
                kind.Name,
                $"Must be at most {MaximumLength:most} characters long; it had {text.Length:value}."
            );
        }

        NumberFormatInfo format = NumberText.FormatOf(provider);
        ReadOnlySpan<char> trimmed = text.Trim();
        int length = NumberText.Length(trimmed, format);
        ReadOnlySpan<char> number = trimmed[..length];
        ReadOnlySpan<char> symbol = trimmed[length..].TrimStart();
        if (number.IsEmpty)
        {
            return IsNotFinite(symbol, format)
                ? NotRepresentable(kind, trimmed)
                : new(
                    QuantityTextException.TextProblem.MissingNumber,
                    kind.Name,
                    $"Must be a number followed by a unit of {kind.Name:kind} ({kind.Symbols:allowed}); it was {Echo.Quote(trimmed):given}."
                );
        }

        if (!NumberText.TryRead(number, format, out double value) || StartsLikeANumber(symbol))
        {
            return number.Length < trimmed.Length && IsNotFinite(symbol, format)
                ? NotRepresentable(kind, trimmed)
                : new(
                    QuantityTextException.TextProblem.BadNumber,
                    kind.Name,
                    $"The number must be digits with '{format.NumberDecimalSeparator:separator}' as decimal separator, without group separators or spaces; it was {Echo.Quote(trimmed):given}."
                );
        }

        if (symbol.IsEmpty)
        {
            return new(
                QuantityTextException.TextProblem.MissingUnit,
                kind.Name,
                $"A unit of {kind.Name:kind} must follow the number ({kind.Symbols:allowed}); it was {Echo.Quote(trimmed):given}."
            );
        }

        if (kind.Find(symbol) is not { } unit)
        {
            return UnknownUnit(symbol, kind);
        }

        si = unit.ToSi(value);
        bool vanished = value == 0 ? NumberText.Vanished(number) : si == 0 && !unit.HasOffset;
        if (!kind.Holds(si) || vanished)
        {
            return NotRepresentable(kind, trimmed);
        }

        return si < 0 && kind.NeverNegative
            ? new(
                QuantityTextException.TextProblem.BelowZero,
                kind.Name,
                $"Must be at least {new Amount(0, kind.SiUnit.Symbol):least}; it was {Echo.Quote(trimmed):given}."
            )
            : null;
    }

    /// <summary>Writes an SI number in a unit; in the SI unit where no number in that unit has the same bits.</summary>
    internal static string Write(double si, UnitKind kind, Unit unit, IFormatProvider? provider)
    {
        NumberFormatInfo format = NumberText.FormatOf(provider);
        si += 0.0; // A negative zero is written as zero.
        return InUnit(si, unit, format) ?? $"{si.ToString("R", format)} {kind.SiUnit.Symbol}";
    }

    private static string? InUnit(double si, Unit unit, NumberFormatInfo format)
    {
        double number = unit.FromSi(si);
        if (!double.IsFinite(number))
        {
            return null;
        }

        foreach (string digits in FewDigits)
        {
            if (Same(number.ToString(digits, format), si, unit, format) is { } text)
            {
                return text;
            }
        }

        double lower = number;
        double higher = number;
        for (int step = 0; step < 3; step++)
        {
            string? near =
                Same(lower.ToString("R", format), si, unit, format)
                ?? Same(higher.ToString("R", format), si, unit, format);
            if (near is not null)
            {
                return near;
            }

            lower = Math.BitDecrement(lower);
            higher = Math.BitIncrement(higher);
        }

        return null;
    }

    private static string? Same(string number, double si, Unit unit, NumberFormatInfo format) =>
        NumberText.TryRead(number, format, out double value)
        && BitConverter.DoubleToInt64Bits(unit.ToSi(value)) == BitConverter.DoubleToInt64Bits(si)
            ? $"{number} {unit.Symbol}"
            : null;

    private static QuantityTextException UnknownUnit(ReadOnlySpan<char> symbol, UnitKind kind) =>
        KindWith(symbol) is { } other
            ? new(
                QuantityTextException.TextProblem.WrongKind,
                kind.Name,
                $"{Echo.Quote(symbol):given} is a unit of {other.Name:other}; allowed for {kind.Name:kind} are {kind.Symbols:allowed}."
            )
            : new(
                QuantityTextException.TextProblem.UnknownUnit,
                kind.Name,
                $"{Echo.Quote(symbol):given} is not a known unit; allowed for {kind.Name:kind} are {kind.Symbols:allowed}."
            );

    internal static QuantityTextException NotRepresentable(UnitKind kind, ReadOnlySpan<char> text) =>
        new(
            QuantityTextException.TextProblem.NotRepresentable,
            kind.Name,
            $"The number must be finite, and neither too large nor too small for {kind.Name:kind}; it was {Echo.Quote(text):given}."
        );

    /// <summary>Digits after a space belong to a larger number or are a second number, never a unit.</summary>
    private static bool StartsLikeANumber(ReadOnlySpan<char> symbol) =>
        !symbol.IsEmpty && char.IsAsciiDigit(symbol[0]) && KindWith(symbol) is null;

    private static UnitKind? KindWith(ReadOnlySpan<char> symbol)
    {
        foreach (UnitKind kind in UnitTable.All)
        {
            if (kind.Find(symbol) is not null)
            {
                return kind;
            }
        }

        return null;
    }

    private static bool IsNotFinite(ReadOnlySpan<char> text, NumberFormatInfo format) =>
        text.StartsWith(format.NaNSymbol, StringComparison.OrdinalIgnoreCase)
        || text.StartsWith(format.PositiveInfinitySymbol, StringComparison.OrdinalIgnoreCase)
        || text.StartsWith("inf", StringComparison.OrdinalIgnoreCase);
}
