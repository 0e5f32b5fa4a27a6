using System.Collections.Immutable;

namespace FuelMath.Formulas;

/// <summary>A scalar that writes a formula as cells of a spreadsheet: each named step in a cell of its own.</summary>
/// <remarks>
/// <para>
/// A choice becomes <c>IF</c>, an implicit law its two steps (near the root, then one Newton step, as in
/// <see cref="Real"/>). Numbers are written out in decimals, because not every engine reads <c>1E-06</c> inside a
/// formula; a power is <c>POWER</c> and a sign is put in brackets, because engines differ in precedence. No cell is
/// longer than <see cref="MostCharacters"/>.
/// </para>
/// <para>
/// The text has English function names, a decimal point and commas between arguments: as files hold it, whatever the
/// reader's language. The default value is the constant zero.
/// </para>
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly partial struct SpreadsheetText : IScalar<SpreadsheetText>
{
    /// <summary>The most characters in a cell; spreadsheets allow 8192.</summary>
    public const int MostCharacters = 1000;

    private readonly SpreadsheetNode? node;

    private SpreadsheetText(SpreadsheetNode node) => this.node = node;

    private SpreadsheetNode Node => node ?? SpreadsheetNode.Zero;

    /// <summary>An input of the formula.</summary>
    /// <param name="reference">The cell that holds it, or its defined name, for example <c>C5</c>; not blank.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException"><paramref name="reference"/> is blank.</exception>
    public static SpreadsheetText Input(string reference)
    {
        _ = Guard.NotBlank(reference);
        return new(SpreadsheetNode.Input(reference));
    }

    /// <summary>Gives the cells that compute this number, each after those it reads; the last is the number itself.</summary>
    /// <param name="place">
    /// Gives the reference of the first, second, ... cell, counted from zero, for example <c>C7</c>.
    /// </param>
    /// <returns>One or more cells.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="place"/> is null.</exception>
    public ImmutableArray<Cell> ToCells(Func<int, string> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return new SpreadsheetWriter(place, MostCharacters).Write(Node);
    }

    /// <summary>Gives this number as the formula of one cell, with all steps inside.</summary>
    /// <returns>The formula without the equals sign before it, for example <c>C3*SQRT(C5/C4)</c>.</returns>
    /// <exception cref="InvalidOperationException">
    /// It is longer than <see cref="MostCharacters"/> or nested deeper than a cell allows: <see cref="ToCells"/> has no
    /// such limit.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A number in it is not finite: a sheet has no such number.</exception>
    public string ToFormula() =>
        new SpreadsheetWriter(
            _ =>
                throw new RefusedOperationException(
                    RefusalCode.OneCellOnly,
                    "A formula in one cell has no other cells."
                ),
            MostCharacters
        ).WriteWhole(Node);

    /// <inheritdoc />
    public static SpreadsheetText Of(double value) => new(SpreadsheetNode.Constant(value));

    /// <inheritdoc />
    public static SpreadsheetText operator +(SpreadsheetText a, SpreadsheetText b) =>
        new(SpreadsheetNode.Sum(a.Node, b.Node));

    /// <inheritdoc />
    public static SpreadsheetText operator +(SpreadsheetText a, double b) => a + Of(b);

    /// <inheritdoc />
    public static SpreadsheetText operator +(double a, SpreadsheetText b) => Of(a) + b;

    /// <inheritdoc />
    public static SpreadsheetText operator -(SpreadsheetText a, SpreadsheetText b) =>
        new(SpreadsheetNode.Difference(a.Node, b.Node));

    /// <inheritdoc />
    public static SpreadsheetText operator -(SpreadsheetText a, double b) => a - Of(b);

    /// <inheritdoc />
    public static SpreadsheetText operator -(double a, SpreadsheetText b) => Of(a) - b;

    /// <inheritdoc />
    public static SpreadsheetText operator *(SpreadsheetText a, SpreadsheetText b) =>
        new(SpreadsheetNode.Product(a.Node, b.Node));

    /// <inheritdoc />
    public static SpreadsheetText operator *(SpreadsheetText a, double b) => a * Of(b);

    /// <inheritdoc />
    public static SpreadsheetText operator *(double a, SpreadsheetText b) => Of(a) * b;

    /// <inheritdoc />
    public static SpreadsheetText operator /(SpreadsheetText a, SpreadsheetText b) =>
        new(SpreadsheetNode.Quotient(a.Node, b.Node));

    /// <inheritdoc />
    public static SpreadsheetText operator /(SpreadsheetText a, double b) => a / Of(b);

    /// <inheritdoc />
    public static SpreadsheetText operator /(double a, SpreadsheetText b) => Of(a) / b;

    /// <inheritdoc />
    public static SpreadsheetText operator -(SpreadsheetText value) => new(SpreadsheetNode.Negative(value.Node));

    /// <inheritdoc />
    public static SpreadsheetText Sqrt(SpreadsheetText x) => Call("SQRT", x);

    /// <inheritdoc />
    public static SpreadsheetText Exp(SpreadsheetText x) => Call("EXP", x);

    /// <inheritdoc />
    public static SpreadsheetText Log(SpreadsheetText x) => Call("LN", x);

    /// <inheritdoc />
    public static SpreadsheetText Pow(SpreadsheetText x, double exponent) => Call("POWER", x, Of(exponent));

    /// <inheritdoc />
    public static SpreadsheetText Abs(SpreadsheetText x) => Call("ABS", x);

    /// <inheritdoc />
    public static SpreadsheetText Min(SpreadsheetText a, SpreadsheetText b) => Call("MIN", a, b);

    /// <inheritdoc />
    public static SpreadsheetText Max(SpreadsheetText a, SpreadsheetText b) => Call("MAX", a, b);

    /// <inheritdoc />
    public static Mask<SpreadsheetText> Less(SpreadsheetText a, SpreadsheetText b) =>
        new(new(SpreadsheetNode.Less(a.Node, b.Node)));

    /// <inheritdoc />
    public static Mask<SpreadsheetText> And(Mask<SpreadsheetText> a, Mask<SpreadsheetText> b) =>
        new(Call("AND", a.Bits, b.Bits));

    /// <inheritdoc />
    public static Mask<SpreadsheetText> Or(Mask<SpreadsheetText> a, Mask<SpreadsheetText> b) =>
        new(Call("OR", a.Bits, b.Bits));

    /// <summary>Not known before the sheet is calculated.</summary>
    /// <param name="mask">The mask.</param>
    /// <returns>Never returns.</returns>
    /// <exception cref="NotSupportedException">
    /// Always: only a solver asks for this, and a solver can't be written as text.
    /// </exception>
    public static bool All(Mask<SpreadsheetText> mask) =>
        throw new NotSupportedException("A spreadsheet text can't say what holds before the sheet is calculated.");

    /// <inheritdoc />
    public static SpreadsheetText Select(
        Mask<SpreadsheetText> where,
        SpreadsheetText then,
        SpreadsheetText otherwise
    ) => Call("IF", where.Bits, then, otherwise);

    /// <inheritdoc />
    public static SpreadsheetText Implicit<TLaw>(SpreadsheetText a, SpreadsheetText b)
        where TLaw : struct, IImplicitLaw => TLaw.Polish(TLaw.Near(a, b), a, b);

    /// <inheritdoc />
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static SpreadsheetText Step(SpreadsheetText value, Symbol symbol, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        ArgumentNullException.ThrowIfNull(source);
        return new(SpreadsheetNode.Step(value.Node, symbol, source));
    }

    private static SpreadsheetText Call(string function, params ReadOnlySpan<SpreadsheetText> arguments)
    {
        var nodes = new SpreadsheetNode[arguments.Length];
        for (int i = 0; i < nodes.Length; i++)
        {
            nodes[i] = arguments[i].Node;
        }

        return new(SpreadsheetNode.Call(function, nodes));
    }
}
