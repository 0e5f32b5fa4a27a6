using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>
/// A kind of quantity as text: reads "3.0 bar" or "980 cm3/min", and writes text that reads back unchanged.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <remarks>
/// Numbers are read strictly: no group separators, so "3,5 bar" is refused where the decimal separator is a point. A
/// number too large or too small to be represented, or not finite, is refused too. The default culture is invariant.
/// Instances are in <see cref="QuantityKinds"/>; gauge and absolute pressures have theirs in <c>PressureKinds</c>.
/// </remarks>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public sealed class QuantityKind<T>
    where T : struct
{
    private readonly UnitKind kind;
    private readonly Func<T, double> toSi;
    private readonly Func<double, T> fromSi;

    internal QuantityKind(UnitKind kind, Func<T, double> toSi, Func<double, T> fromSi)
    {
        this.kind = kind;
        this.toSi = toSi;
        this.fromSi = fromSi;
        Units = [.. kind.Units.Select(u => u.Symbol)];
    }

    /// <summary>The name of the kind, for example <c>volume flow</c>.</summary>
    public string Name => kind.Name;

    /// <summary>The symbols of the units for reading and writing; the first is the SI unit.</summary>
    public ImmutableArray<string> Units { get; }

    internal UnitKind Kind => kind;

    /// <summary>Reads a quantity.</summary>
    /// <param name="text">A number and a unit, for example <c>980 cm3/min</c>.</param>
    /// <param name="formatProvider">The culture of the number; invariant when null.</param>
    /// <returns>The quantity, in the SI unit.</returns>
    /// <exception cref="QuantityTextException">The text is not a quantity of this kind.</exception>
    public T Parse(ReadOnlySpan<char> text, IFormatProvider? formatProvider) =>
        Read(text, formatProvider, out T value) is { } problem ? throw problem : value;

    /// <summary>Reads a quantity without an exception when the text is refused.</summary>
    /// <param name="text">A number and a unit.</param>
    /// <param name="formatProvider">The culture of the number; invariant when null.</param>
    /// <param name="value">The quantity, in the SI unit; the default value when the text is refused.</param>
    /// <returns>Whether the text is a quantity of this kind.</returns>
    public bool TryParse(ReadOnlySpan<char> text, IFormatProvider? formatProvider, out T value) =>
        Read(text, formatProvider, out value) is null;

    /// <summary>Reads a quantity as people write it: "550 cc/min", "58 PSI", "822,7 cm3/min", "5/16 in".</summary>
    /// <param name="text">A number and a unit.</param>
    /// <param name="writer">
    /// The culture of the writer, which decides about "1,234"; null when not known, and such a text is then refused.
    /// </param>
    /// <returns>The quantity. Text that <see cref="Parse"/> accepts is read in the same way.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="QuantityTextException">
    /// The text is not such a quantity, has no unit, or is ambiguous: gallons without a country, a pressure without its
    /// reference, a comma that may be decimal or group. The message says what to write.
    /// </exception>
    public T ParseLenient(string text, IFormatProvider? writer) =>
        TryParseLenient(text, writer, out T value, out QuantityTextException? problem) ? value : throw problem!;

    /// <summary>Reads a quantity as people write it, without an exception when the text is refused.</summary>
    /// <param name="text">A number and a unit.</param>
    /// <param name="writer">The culture of the writer; null when it is not known.</param>
    /// <param name="value">The quantity.</param>
    /// <param name="problem">Why the text is refused and what to write instead; null when it is read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public bool TryParseLenient(string text, IFormatProvider? writer, out T value, out QuantityTextException? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        problem = LenientReading.Read(text, kind, writer, out double si, out _, out _);
        value = problem is null ? fromSi(si) : default;
        return problem is null;
    }

    /// <summary>Writes a quantity with all its digits: the text reads back to the same number.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="unit">
    /// One of <see cref="Units"/>. The few numbers that it can't represent to the last bit are written in the SI unit.
    /// </param>
    /// <param name="formatProvider">The culture of the number; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public string Format(T value, string unit, IFormatProvider? formatProvider) =>
        QuantityReading.Write(Si(value), kind, UnitOf(unit), formatProvider);

    /// <summary>Writes a quantity for people.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="unit">One of <see cref="Units"/>.</param>
    /// <param name="numberFormat">The format of the number, for example <c>0.0</c>.</param>
    /// <param name="formatProvider">The culture of the number; invariant when null.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public string Format(T value, string unit, string numberFormat, IFormatProvider? formatProvider)
    {
        Unit found = UnitOf(unit);
        return $"{found.FromSi(Si(value)).ToString(numberFormat, NumberText.FormatOf(formatProvider))} {found.Symbol}";
    }

    /// <summary>Gives the name of the kind.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    internal QuantityTextException? Read(ReadOnlySpan<char> text, IFormatProvider? provider, out T value)
    {
        QuantityTextException? problem = QuantityReading.Read(text, kind, provider, out double si);
        value = problem is null ? fromSi(si) : default;
        return problem;
    }

    internal double Si(T value)
    {
        double si = toSi(value);
        return double.IsFinite(si)
            ? si
            : throw Guard.Outside(value, RefusalCode.NotFinite, $"A {Name:kind} must be finite; it was {si:value}.");
    }

    private Unit UnitOf(string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return kind.Find(unit)
            ?? throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be a unit of {Name:kind} ({kind.Units.Select(u => u.Symbol):allowed}); it was {Echo.Quote(unit):given}.",
                nameof(unit)
            );
    }
}
