namespace FuelMath.Scalars;

/// <summary>One operation of a traced formula, with what it was made of. Immutable.</summary>
internal sealed class TracedNode
{
    internal static readonly TracedNode Zero = Constant(0);

    private TracedNode(TracedKind kind, double value, TracedNode? a, TracedNode? b, Symbol? symbol, string text)
    {
        Kind = kind;
        Value = value;
        A = a;
        B = b;
        Symbol = symbol;
        Text = text;
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

    internal bool Holds => Value != 0;

    internal static TracedNode Constant(double value) => new(TracedKind.Constant, value, null, null, null, "");

    internal static TracedNode Input(Symbol symbol, double value) =>
        new(TracedKind.Input, value, null, null, symbol, "");

    /// <summary>A result with its name. One that has the name already keeps it, and shows how it was chosen.</summary>
    internal static TracedNode Named(TracedNode inner, Symbol symbol) =>
        inner.Symbol == symbol && inner.Kind == TracedKind.Named
            ? inner
            : new(TracedKind.Named, inner.Value, Unnamed(inner, symbol), null, symbol, "");

    internal static TracedNode Sum(string sign, TracedNode a, TracedNode b, double value) =>
        new(TracedKind.Sum, value, a, b, null, sign);

    internal static TracedNode Product(TracedNode a, TracedNode b, double value)
    {
        // A product of equal factors is shown as a power.
        return ReferenceEquals(a, b) ? Times(a, 2, value)
            : IsWholePower(a) && ReferenceEquals(a.A, b) ? Power(b, a.B!.Value + 1, value)
            : IsWholePower(b) && ReferenceEquals(b.A, a) ? Power(a, b.B!.Value + 1, value)
            : new(TracedKind.Product, value, a, b, null, "*");
    }

    internal static TracedNode Quotient(TracedNode a, TracedNode b, double value) =>
        new(TracedKind.Product, value, a, b, null, "/");

    internal static TracedNode Negative(TracedNode a) => new(TracedKind.Negative, -a.Value, a, null, null, "-");

    internal static TracedNode Power(TracedNode a, double exponent, double value) =>
        new(TracedKind.Power, value, a, Constant(exponent), null, "^");

    internal static TracedNode Call(string name, TracedNode a, TracedNode? b, double value) =>
        new(TracedKind.Call, value, a, b, null, name);

    internal static TracedNode Size(TracedNode a, double value) => new(TracedKind.Size, value, a, null, null, "|");

    /// <summary>What was taken, and the condition by which.</summary>
    internal static TracedNode Chosen(TracedNode taken, TracedNode condition) =>
        new(TracedKind.Chosen, taken.Value, taken, condition, null, "");

    internal static TracedNode Less(TracedNode a, TracedNode b) =>
        new(TracedKind.Less, a.Value < b.Value ? 1 : 0, a, b, null, "<");

    internal static TracedNode Both(TracedNode a, TracedNode b) =>
        new(TracedKind.Both, a.Holds && b.Holds ? 1 : 0, a, b, null, "and");

    internal static TracedNode Either(TracedNode a, TracedNode b) =>
        new(TracedKind.Either, a.Holds || b.Holds ? 1 : 0, a, b, null, "or");

    private static TracedNode Unnamed(TracedNode node, Symbol symbol) =>
        node.Kind == TracedKind.Chosen ? Chosen(Unnamed(node.A!, symbol), node.B!)
        : node.Kind == TracedKind.Named && node.Symbol == symbol ? node.A!
        : node;

    private static TracedNode Times(TracedNode a, double exponent, double value) =>
        IsWholePower(a) ? Power(a.A!, a.B!.Value * exponent, value) : Power(a, exponent, value);

    private static bool IsWholePower(TracedNode node) =>
        node.Kind == TracedKind.Power && double.IsInteger(node.B!.Value) && node.B.Value > 1;
}
