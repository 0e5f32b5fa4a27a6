using FuelMath.Formulas;

namespace FuelMath;

/// <summary>One unit of a kind: the SI number is (number + offset) * numerator / denominator.</summary>
/// <remarks>Numerator and denominator are kept apart so that "85 %" is 85 / 100, rounded once.</remarks>
internal sealed class Unit
{
    private readonly double numerator;
    private readonly double denominator;
    private readonly double offset;
    private readonly string[] aliases;

    internal Unit(string symbol, double numerator, double denominator, double offset, params string[] aliases)
    {
        Symbol = symbol;
        this.numerator = numerator;
        this.denominator = denominator;
        this.offset = offset;
        this.aliases = aliases;
    }

    internal string Symbol { get; }

    internal double Numerator => numerator;

    internal double Denominator => denominator;

    internal double Offset => offset;

    internal IEnumerable<string> Spellings => aliases.Prepend(Symbol);

    /// <summary>The power of ten of the factor, for comparing factors.</summary>
    internal double Scale => Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(numerator / denominator))));

    /// <summary>Whether the number is the SI number itself.</summary>
    internal bool IsSi => numerator == 1 && denominator == 1 && offset == 0;

    internal bool HasOffset => offset != 0;

    internal bool IsWritten(ReadOnlySpan<char> symbol)
    {
        if (symbol.SequenceEqual(Symbol))
        {
            return true;
        }

        foreach (string alias in aliases)
        {
            if (symbol.SequenceEqual(alias))
            {
                return true;
            }
        }

        return false;
    }

    internal double ToSi(double number) => (number + offset) * numerator / denominator;

    internal double FromSi(double si) => si * denominator / numerator - offset;

    /// <summary>The same in any scalar, without steps that have no effect.</summary>
    internal T ToSi<T>(T number)
        where T : struct, IScalar<T>
    {
        T shifted = offset == 0 ? number : number + offset;
        T scaled = numerator == 1 ? shifted : shifted * numerator;
        return denominator == 1 ? scaled : scaled / denominator;
    }

    /// <summary>The same in any scalar, without steps that have no effect.</summary>
    internal T FromSi<T>(T si)
        where T : struct, IScalar<T>
    {
        T scaled = denominator == 1 ? si : si * denominator;
        T shifted = numerator == 1 ? scaled : scaled / numerator;
        return offset == 0 ? shifted : shifted - offset;
    }

    internal Unit With(string suffix) =>
        new(Symbol + suffix, numerator, denominator, offset, Array.ConvertAll(aliases, a => a + suffix));
}
