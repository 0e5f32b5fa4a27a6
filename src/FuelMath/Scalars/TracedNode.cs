namespace FuelMath.Formulas;

/// <summary>One operation of a traced formula, with its operands.</summary>
internal sealed class TracedNode
{
    internal static readonly TracedNode Zero = Constant(0);

    private TracedNode(
        TracedKind kind,
        double value,
        TracedNode? a,
        TracedNode? b,
        Symbol? symbol,
        string text,
        DataSource? source = null,
        TracedUnit? unit = null,
        double given = 0
    )
    {
        Kind = kind;
        Value = value;
        A = a;
        B = b;
        Symbol = symbol;
        Text = text;
        Source = source;
        Unit = unit;
        Given = given;
    }

    internal TracedKind Kind { get; }

    /// <summary>The number; for a condition 1 where it holds, else 0.</summary>
    internal double Value { get; }

    internal TracedNode? A { get; }

    internal TracedNode? B { get; }

    /// <summary>The symbol of an input or of a named result.</summary>
    internal Symbol? Symbol { get; }

    /// <summary>The sign of an operation, or the name of a function.</summary>
    internal string Text { get; }

    /// <summary>Where the formula of a named result comes from.</summary>
    internal DataSource? Source { get; }

    /// <summary>The unit in which an input was given, when it was not the SI unit.</summary>
    internal TracedUnit? Unit { get; }

    /// <summary>The number of an input as it was given, in <see cref="Unit"/>.</summary>
    internal double Given { get; }

    internal bool Holds => Value != 0;

    private bool IsOne => Kind == TracedKind.Constant && Value == 1;

    private bool IsZero => Kind == TracedKind.Constant && Value == 0;

    internal static TracedNode Constant(double value) => new(TracedKind.Constant, value, null, null, null, "");

    internal static TracedNode Input(Symbol symbol, double value) =>
        new(TracedKind.Input, value, null, null, symbol, "");

    internal static TracedNode Input(Symbol symbol, double value, double given, TracedUnit unit) =>
        new(TracedKind.Input, value, null, null, symbol, "", null, unit, given);

    /// <summary>
    /// A result with its name. One that already has the name keeps it, and shows how it was selected.
    /// </summary>
    internal static TracedNode Named(TracedNode inner, Symbol symbol, DataSource? source)
    {
        if (inner.Kind == TracedKind.Named && inner.Symbol == symbol)
        {
            return inner;
        }

        DataSource? made = source;
        TracedNode formula = Unnamed(inner, symbol, ref made);
        return new(TracedKind.Named, inner.Value, formula, null, symbol, "", made);
    }

    internal static TracedNode Sum(string sign, TracedNode a, TracedNode b, double value)
    {
        // An addition of zero is not shown, nor a sign after a sign; zeros of two signs are kept, so that the bits are
        // those of the sum.
        return b.IsZero && Same(a.Value, value) ? a
            : a.IsZero && sign == "+" && Same(b.Value, value) ? b
            : sign == "-" && b.Kind == TracedKind.Negative ? Sum("+", a, b.A!, value)
            : new(TracedKind.Sum, value, a, b, null, sign);
    }

    internal static TracedNode Product(TracedNode a, TracedNode b, double value)
    {
        // A product of equal factors is shown as a power, and a factor of one not at all.
        return b.IsOne ? a
            : a.IsOne ? b
            : ReferenceEquals(a, b) ? Times(a, 2, value)
            : IsWholePower(a) && ReferenceEquals(a.A, b) ? Power(b, a.B!.Value + 1, value)
            : IsWholePower(b) && ReferenceEquals(b.A, a) ? Power(a, b.B!.Value + 1, value)
            : new(TracedKind.Product, value, a, b, null, "*");
    }

    internal static TracedNode Quotient(TracedNode a, TracedNode b, double value) =>
        b.IsOne ? a : new(TracedKind.Product, value, a, b, null, "/");

    internal static TracedNode Negative(TracedNode a) =>
        a.Kind == TracedKind.Negative ? a.A! : new(TracedKind.Negative, -a.Value, a, null, null, "-");

    internal static TracedNode Power(TracedNode a, double exponent, double value) =>
        new(TracedKind.Power, value, a, Constant(exponent), null, "^");

    internal static TracedNode Call(string name, TracedNode a, TracedNode? b, double value) =>
        new(TracedKind.Call, value, a, b, null, name);

    internal static TracedNode Size(TracedNode a, double value) => new(TracedKind.Size, value, a, null, null, "|");

    /// <summary>The selected side, and the condition that selected it.</summary>
    internal static TracedNode Chosen(TracedNode taken, TracedNode condition) =>
        new(TracedKind.Chosen, taken.Value, taken, condition, null, "");

    internal static TracedNode Less(TracedNode a, TracedNode b) =>
        new(TracedKind.Less, a.Value < b.Value ? 1 : 0, a, b, null, "<");

    internal static TracedNode Both(TracedNode a, TracedNode b) =>
        new(TracedKind.Both, a.Holds && b.Holds ? 1 : 0, a, b, null, "and");

    internal static TracedNode Either(TracedNode a, TracedNode b) =>
        new(TracedKind.Either, a.Holds || b.Holds ? 1 : 0, a, b, null, "or");

    /// <summary>The side selected between results of the same name, with its source.</summary>
    private static TracedNode Unnamed(TracedNode node, Symbol symbol, ref DataSource? source)
    {
        if (node.Kind == TracedKind.Chosen)
        {
            return Chosen(Unnamed(node.A!, symbol, ref source), node.B!);
        }

        if (node.Kind == TracedKind.Named && node.Symbol == symbol)
        {
            source = node.Source;
            return node.A!;
        }

        return node;
    }

    private static bool Same(double a, double b) =>
        BitConverter.DoubleToInt64Bits(a) == BitConverter.DoubleToInt64Bits(b);

    private static TracedNode Times(TracedNode a, double exponent, double value) =>
        IsWholePower(a) ? Power(a.A!, a.B!.Value * exponent, value) : Power(a, exponent, value);

    private static bool IsWholePower(TracedNode node) =>
        node.Kind == TracedKind.Power && double.IsInteger(node.B!.Value) && node.B.Value > 1;
}
