using System.Collections.Immutable;

namespace FuelMath.Formulas;

/// <summary>
/// What an argument or a result of a formula is: its symbol, its kind and the units it is written in.
/// </summary>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public sealed partial class FormulaQuantity
{
    private readonly FuelMath.Unit customary;

    internal FormulaQuantity(Symbol symbol, UnitKind kind, string customaryUnit)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        Symbol = symbol;
        UnitKind = kind;
        customary = Find(customaryUnit, nameof(customaryUnit));
        Units = [.. kind.Symbols];
    }

    /// <summary>The name of the quantity in formulas and workings, with its SI unit and meaning.</summary>
    public Symbol Symbol { get; }

    /// <summary>The kind of quantity, for example <c>volume flow</c>.</summary>
    public string Kind => UnitKind.Name;

    /// <summary>The SI unit, in which formulas count; <c>1</c> for a pure number.</summary>
    public string Unit => UnitKind.SiUnit.Symbol;

    /// <summary>The unit that the trade writes it in.</summary>
    public string CustomaryUnit => customary.Symbol;

    /// <summary>All units it can be converted from and to; the first is the SI unit.</summary>
    public ImmutableArray<string> Units { get; }

    internal UnitKind UnitKind { get; }

    /// <summary>Describes a quantity of one of the kinds that text may hold.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="symbol">Its name in formulas and workings.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="customaryUnit">The unit that the trade writes it in, one of the kind's.</param>
    /// <returns>The description.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="customaryUnit"/> is no unit of the kind.</exception>
    public static FormulaQuantity Of<TQuantity>(Symbol symbol, QuantityKind<TQuantity> kind, string customaryUnit)
        where TQuantity : struct
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new(symbol, kind.Kind, customaryUnit);
    }

    /// <summary>Describes a pure number.</summary>
    /// <param name="symbol">Its name in formulas and workings.</param>
    /// <returns>The description.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="symbol"/> is null.</exception>
    public static FormulaQuantity Number(Symbol symbol) => new(symbol, UnitTable.Ratio, "1");

    /// <summary>Converts a number from one of the units to the SI unit.</summary>
    /// <param name="number">A number.</param>
    /// <param name="unit">Its unit, one of <see cref="Units"/>.</param>
    /// <returns>The number in the SI unit.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    public double ToSi(double number, string unit) => Find(unit, nameof(unit)).ToSi(number);

    /// <summary>Converts a number from the SI unit to one of the units.</summary>
    /// <param name="si">A number in the SI unit.</param>
    /// <param name="unit">The unit wanted, one of <see cref="Units"/>.</param>
    /// <returns>The number in that unit.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    public double FromSi(double si, string unit) => Find(unit, nameof(unit)).FromSi(si);

    /// <summary>Reads a number and a unit as people write them, for example in a form or in a learner's answer.</summary>
    /// <param name="text">The text.</param>
    /// <param name="writer">The culture of the writer; null when it is not known.</param>
    /// <returns>What was read, or why nothing was.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public Reading ReadLenient(string text, IFormatProvider? writer)
    {
        ArgumentNullException.ThrowIfNull(text);
        QuantityTextException? problem = LenientReading.Read(
            text,
            UnitKind,
            writer,
            out double si,
            out (int Sure, int Most) digits,
            out FuelMath.Unit unit
        );
        return new(si, digits.Sure, digits.Most, unit.Symbol, problem);
    }

    /// <summary>Converts from one of the units to the SI unit, in any scalar.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="number">A number in that unit.</param>
    /// <param name="unit">Its unit, one of <see cref="Units"/>.</param>
    /// <returns>The number in the SI unit.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    public T ToSi<T>(T number, string unit)
        where T : struct, IScalar<T> => Find(unit, nameof(unit)).ToSi(number);

    /// <summary>Converts from the SI unit to one of the units, in any scalar.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="si">A number in the SI unit.</param>
    /// <param name="unit">The unit wanted, one of <see cref="Units"/>.</param>
    /// <returns>The number in that unit.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    public T FromSi<T>(T si, string unit)
        where T : struct, IScalar<T> => Find(unit, nameof(unit)).FromSi(si);

    /// <summary>An input of a working in the unit in which a reader gives it.</summary>
    /// <param name="number">The number; finite.</param>
    /// <param name="unit">Its unit, one of <see cref="Units"/>.</param>
    /// <returns>The input; the working converts it in a line of its own.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not finite.</exception>
    public Traced Trace(double number, string unit)
    {
        FuelMath.Unit found = Find(unit, nameof(unit));
        return Trace(Guard.Finite(number), found, found.ToSi(number));
    }

    /// <summary>Gives the working of a result of this kind, ending in the unit that a reader asks for.</summary>
    /// <param name="result">The result.</param>
    /// <param name="unit">The unit wanted, one of <see cref="Units"/>.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is none of <see cref="Units"/>.</exception>
    public Working Show(Traced result, string unit) =>
        result.ToWorking(ReaderUnits.Traceable(Find(unit, nameof(unit))));

    /// <summary>Gives the symbol as LaTeX without delimiters, for example <c>\Delta p_{0}</c>.</summary>
    /// <returns>The typeset symbol.</returns>
    public string ToLatexSymbol() => Latex.Symbol(Symbol.Name);

    /// <summary>Gives the symbol as printed.</summary>
    /// <returns>The symbol's name.</returns>
    public override string ToString() => Symbol.Name;

    internal double ToSi(double number, FormulaInfo.CallUnits units) =>
        units == FormulaInfo.CallUnits.Si ? number : customary.ToSi(number);

    internal double FromSi(double si, FormulaInfo.CallUnits units) =>
        units == FormulaInfo.CallUnits.Si ? si : customary.FromSi(si);

    internal FuelMath.Unit Customary => customary;

    internal Traced Trace(double number, FuelMath.Unit unit, double si) =>
        unit.IsSi ? Traced.Input(Symbol, si) : Traced.Input(Symbol, si, number, ReaderUnits.Traceable(unit));

    internal string UnitIn(FormulaInfo.CallUnits units) => units == FormulaInfo.CallUnits.Si ? Unit : CustomaryUnit;

    internal FuelMath.Unit Find(string unit, string paramName)
    {
        ArgumentNullException.ThrowIfNull(unit, paramName);
        return UnitKind.Find(unit)
            ?? throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be a unit of {Kind:kind} ({UnitKind.Symbols:allowed}); it was {Echo.Quote(unit):given}.",
                paramName
            );
    }
}
