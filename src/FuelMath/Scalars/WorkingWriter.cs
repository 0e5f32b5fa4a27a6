using System.Collections.Immutable;

namespace FuelMath.Scalars;

/// <summary>Writes traced formulas as text, with brackets where they are needed.</summary>
internal sealed class WorkingWriter
{
    private const string ConstantFormat = "G9";
    private const string ResultFormat = "G6";

    private readonly Dictionary<TracedNode, string> labels = [];

    /// <summary>Gives each input and each named step a label of its own.</summary>
    internal WorkingWriter(List<TracedNode> nodes)
    {
        foreach (IGrouping<string, TracedNode> named in nodes.GroupBy(n => n.Symbol!.Name, StringComparer.Ordinal))
        {
            // The same input, given twice, is one.
            var distinct = named.GroupBy(n => n.Kind == TracedKind.Input ? (object)(n.Symbol, n.Value) : n).ToList();
            for (int i = 0; i < distinct.Count; i++)
            {
                foreach (TracedNode node in distinct[i])
                {
                    labels[node] =
                        distinct.Count == 1 ? named.Key : FormattableString.Invariant($"{named.Key}_{i + 1}");
                }
            }
        }
    }

    private enum Rank
    {
        Sum,
        Product,
        Power,
        Atom,
    }

    internal string Label(TracedNode node) => labels[node];

    /// <summary>The number of an input or a named step with its unit.</summary>
    internal static string Quantity(TracedNode node, IFormatProvider provider)
    {
        string number = node.Value.ToString(node.Kind == TracedKind.Input ? ConstantFormat : ResultFormat, provider);
        return node.Symbol!.Unit.Length == 0 ? number : $"{number} {node.Symbol.Unit}";
    }

    internal string Formula(TracedNode node, IFormatProvider provider, bool numbers) =>
        Write(node, provider, numbers).Text;

    internal ImmutableArray<string> Conditions(TracedNode node, IFormatProvider provider)
    {
        var facts = new List<string>();
        Choices(node, facts, provider, []);
        return [.. facts.Distinct(StringComparer.Ordinal)];
    }

    private (string Text, Rank Rank) Write(TracedNode node, IFormatProvider provider, bool numbers)
    {
        switch (node.Kind)
        {
            case TracedKind.Constant:
                return (node.Value.ToString(ConstantFormat, provider), Rank.Atom);
            case TracedKind.Input:
            case TracedKind.Named:
                return (numbers ? Quantity(node, provider) : Label(node), Rank.Atom);
            case TracedKind.Sum:
                return (Join(Rank.Sum, node.Text == "-" ? Rank.Product : Rank.Sum), Rank.Sum);
            case TracedKind.Product:
                return (Join(Rank.Product, node.Text == "/" ? Rank.Power : Rank.Product), Rank.Product);
            case TracedKind.Negative:
                return ($"-{Part(node.A!, Rank.Product, notFirst: true)}", Rank.Product);
            case TracedKind.Power:
                return (
                    $"{Part(node.A!, Rank.Atom, notFirst: true, whole: true)}^{Exponent(node.B!.Value)}",
                    Rank.Power
                );
            case TracedKind.Call when node.B is null:
                return ($"{node.Text}({Write(node.A!, provider, numbers).Text})", Rank.Atom);
            case TracedKind.Call:
                string a = Write(node.A!, provider, numbers).Text;
                return ($"{node.Text}({a}; {Write(node.B, provider, numbers).Text})", Rank.Atom);
            case TracedKind.Size:
                return ($"|{Write(node.A!, provider, numbers).Text}|", Rank.Atom);
            case TracedKind.Chosen:
                return Write(node.A!, provider, numbers);
            default:
                throw new InvalidOperationException("A condition is no part of a formula.");
        }

        string Join(Rank left, Rank right) =>
            $"{Part(node.A!, left, notFirst: false)} {node.Text} {Part(node.B!, right, notFirst: true, whole: right == Rank.Power)}";

        string Exponent(double value)
        {
            string text = value.ToString(ConstantFormat, provider);
            return value < 0 ? $"({text})" : text;
        }

        // A part needs brackets where it binds weaker than its place, where a sign would follow a sign, and where a unit
        // of several words would be torn apart.
        string Part(TracedNode part, Rank place, bool notFirst, bool whole = false)
        {
            (string text, Rank rank) = Write(part, provider, numbers);
            bool quantity = numbers && rank == Rank.Atom && whole && HasUnit(part, place);
            return rank < place || (notFirst && text[0] == '-') || quantity ? $"({text})" : text;
        }
    }

    private static bool HasUnit(TracedNode node, Rank place)
    {
        while (node.Kind == TracedKind.Chosen)
        {
            node = node.A!;
        }

        string unit = node.Symbol?.Unit ?? "";
        return place == Rank.Atom ? unit.Length > 0 : unit.AsSpan().IndexOfAny(' ', '/') >= 0;
    }

    /// <summary>The choices inside one step's formula, not inside the steps it uses.</summary>
    private void Choices(TracedNode node, List<string> into, IFormatProvider provider, HashSet<TracedNode> seen)
    {
        if (node.Symbol is not null || !seen.Add(node))
        {
            return;
        }

        if (node.Kind == TracedKind.Chosen)
        {
            Facts(node.B!, into, provider);
            Choices(node.A!, into, provider, seen);
            return;
        }

        if (node.A is { } a)
        {
            Choices(a, into, provider, seen);
        }

        if (node.B is { } b)
        {
            Choices(b, into, provider, seen);
        }
    }

    private void Facts(TracedNode condition, List<string> into, IFormatProvider provider)
    {
        if (condition.Kind == TracedKind.Less)
        {
            string a = Formula(condition.A!, provider, numbers: false);
            string b = Formula(condition.B!, provider, numbers: false);
            into.Add($"{a} {(condition.Holds ? "<" : ">=")} {b}");
            return;
        }

        // Of two joined conditions, those that decided: both when both had to hold, else the ones with the outcome.
        foreach (TracedNode? part in (TracedNode?[])[condition.A, condition.B])
        {
            if (part is not null && part.Holds == condition.Holds)
            {
                Facts(part, into, provider);
            }
        }
    }
}
