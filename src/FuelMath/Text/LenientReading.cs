using System.Globalization;
using System.Text.RegularExpressions;

namespace FuelMath;

/// <summary>Reads a number and a unit as people write them, or says what to clarify.</summary>
internal static partial class LenientReading
{
    private static readonly (int Sure, int Most) Exact = (NumberText.MaximumDigits, NumberText.MaximumDigits);

    internal static QuantityTextException? Read(
        string text,
        UnitKind kind,
        IFormatProvider? provider,
        out double si,
        out (int Sure, int Most) digits,
        out Unit unit
    )
    {
        (si, digits, unit) = (0, Exact, kind.SiUnit);
        if (text.Length > QuantityReading.MaximumLength)
        {
            return QuantityReading.Read(text, kind, provider, out si);
        }

        NumberFormatInfo? format = provider is null ? null : NumberText.FormatOf(provider);
        string clean = Spaces().Replace(LenientSpellings.Signs(text), " ").Trim();
        bool numbered = LenientNumber.TryRead(
            clean,
            format,
            out double value,
            out (int Sure, int Most) written,
            out string rest,
            out string? two
        );
        string symbol = rest.Trim();

        // Text that the strict reader accepts is read in the same way, so that printed text reads back bit by bit.
        if (QuantityReading.Read(text, kind, provider, out si) is not { } strict)
        {
            digits = numbered ? written : Exact;
            unit = kind.Find(symbol) ?? kind.SiUnit;
            return null;
        }

        si = 0;
        if (two is not null)
        {
            return Ambiguous(kind, text, $"the number may be {two}");
        }

        if (!numbered)
        {
            return strict.Problem == QuantityTextException.TextProblem.MissingNumber ? strict : OneNumber(kind, text);
        }

        if (symbol.Length == 0 && kind == UnitTable.Ratio)
        {
            (si, digits) = (value + 0.0, written); // A negative zero is zero.
            return null;
        }

        if (symbol.Length == 0)
        {
            return new(
                QuantityTextException.TextProblem.MissingUnit,
                kind.Name,
                $"A unit of {kind.Name:kind} must follow the number ({kind.Symbols:allowed}); it was {Echo.Quote(text):given}."
            );
        }

        Unit[] meant = LenientUnits.For(kind).Find(symbol);
        if (meant.Length == 0)
        {
            return Refuse(kind, text, symbol);
        }

        if (meant.Length > 1)
        {
            return Ambiguous(
                kind,
                text,
                $"the unit may be {string.Join(" or ", meant.Select(u => u.Symbol).Distinct())}; write it so"
            );
        }

        (unit, digits) = (meant[0], written);
        si = unit.ToSi(value);
        bool vanished =
            value == 0 ? NumberText.Vanished(clean.AsSpan(0, clean.Length - rest.Length)) : si == 0 && !unit.HasOffset;
        return !kind.Holds(si) || vanished ? QuantityReading.NotRepresentable(kind, text)
            : si < 0 && kind.NeverNegative
                ? new(
                    QuantityTextException.TextProblem.BelowZero,
                    kind.Name,
                    $"Must be at least {new Amount(0, kind.SiUnit.Symbol):least}; it was {Echo.Quote(text):given}."
                )
            : null;
    }

    private static QuantityTextException Refuse(UnitKind kind, string text, string symbol)
    {
        if (char.IsAsciiDigit(symbol[0]) || Range().IsMatch(symbol))
        {
            return OneNumber(kind, text);
        }

        bool pressure = kind == UnitTable.GaugePressure || kind == UnitTable.AbsolutePressure;
        if (pressure && LenientUnits.For(UnitTable.PressureDifference).Find(symbol).Length == 1)
        {
            return Ambiguous(kind, text, "the pressure may be gauge or absolute; write which after the unit");
        }

        UnitKind? other = UnitTable.All.FirstOrDefault(k => k != kind && LenientUnits.For(k).Find(symbol).Length > 0);
        return other is null
            ? new(
                QuantityTextException.TextProblem.UnknownUnit,
                kind.Name,
                $"{Echo.Quote(symbol):given} is not a known unit; allowed for {kind.Name:kind} are {kind.Symbols:allowed}."
            )
            : new(
                QuantityTextException.TextProblem.WrongKind,
                kind.Name,
                $"{Echo.Quote(symbol):given} is a unit of {other.Name:other}; allowed for {kind.Name:kind} are {kind.Symbols:allowed}."
            );
    }

    private static QuantityTextException Ambiguous(UnitKind kind, string text, string question) =>
        new(
            QuantityTextException.TextProblem.Ambiguous,
            kind.Name,
            $"{Echo.Quote(text):given} can be read in two ways: {question:explanation}."
        );

    private static QuantityTextException OneNumber(UnitKind kind, string text) =>
        new(
            QuantityTextException.TextProblem.BadNumber,
            kind.Name,
            $"Must be one number and a unit of {kind.Name:kind} ({kind.Symbols:allowed}); it was {Echo.Quote(text):given}."
        );

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^(?:-|\.\.+|to|\+/?-)\s*[0-9]")]
    private static partial Regex Range();
}
