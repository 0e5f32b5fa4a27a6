using System.Collections.Immutable;

namespace FuelMath.Formulas;

/// <summary>Writes traced formulas as text, with brackets where they are needed.</summary>
internal sealed class WorkingWriter
{
    private const string ConstantFormat = "G9";
    private const string ResultFormat = "G6";

    private readonly Dictionary<TracedNode, string> labels = [];
    private readonly int? figures;

    /// <summary>Gives each input and each named step a label of its own.</summary>
    internal WorkingWriter(List<TracedNode> nodes, int? figures)
    {
        this.figures = figures;
        foreach (IGrouping<string, TracedNode> named in nodes.GroupBy(n => n.Symbol!.Name, StringComparer.Ordinal))
        {
            // An input that is given twice counts once.
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

    internal string Label(TracedNode node) => labels[node];

    /// <summary>The number of an input or a named step with its unit.</summary>
    internal string Quantity(TracedNode node, IFormatProvider provider) =>
        WithUnit(Number(node, provider), node.Symbol!.Unit);

    /// <summary>The number of an input as it was given, of anything else rounded.</summary>
    internal string Number(TracedNode node, IFormatProvider provider) =>
        node.Kind == TracedKind.Input && node.Unit is null
            ? Given(node.Value, provider)
            : Rounded(node.Value, provider);

    /// <summary>A constant or an input, with its digits as given.</summary>
    internal static string Given(double value, IFormatProvider provider) => value.ToString(ConstantFormat, provider);

    /// <summary>A result, rounded to the requested figures.</summary>
    internal string Rounded(double value, IFormatProvider provider) =>
        figures is { } count
            ? SignificantFigures.Write(value, count, provider)
            : value.ToString(ResultFormat, provider);

    internal static string WithUnit(string number, string unit) =>
        unit.Length == 0 || unit == "1" ? number : $"{number} {unit}";

    internal string Formula(TracedNode node, IFormatProvider provider, bool numbers) =>
        Write(node, provider, numbers).Text;

    internal ImmutableArray<string> Conditions(TracedNode node, IFormatProvider provider) =>
        [
            .. WorkingConditions
                .Of(node)
                .Select(c =>
                    $"{Formula(c.A!, provider, numbers: false)} {(c.Holds ? "<" : ">=")} {Formula(c.B!, provider, numbers: false)}"
                )
                .Distinct(StringComparer.Ordinal),
        ];

    private (string Text, WorkingRank Rank) Write(TracedNode node, IFormatProvider provider, bool numbers)
    {
        switch (node.Kind)
        {
            case TracedKind.Constant:
                return (node.Value.ToString(ConstantFormat, provider), WorkingRank.Atom);
            case TracedKind.Input:
            case TracedKind.Named:
                return (numbers ? Quantity(node, provider) : Label(node), WorkingRank.Atom);
            case TracedKind.Sum:
                return (
                    Join(WorkingRank.Sum, node.Text == "-" ? WorkingRank.Product : WorkingRank.Sum),
                    WorkingRank.Sum
                );
            case TracedKind.Product:
                return (
                    Join(WorkingRank.Product, node.Text == "/" ? WorkingRank.Power : WorkingRank.Product),
                    WorkingRank.Product
                );
            case TracedKind.Negative:
                return ($"-{Part(node.A!, WorkingRank.Product, notFirst: true)}", WorkingRank.Product);
            case TracedKind.Power:
                return (
                    $"{Part(node.A!, WorkingRank.Atom, notFirst: true, whole: true)}^{Exponent(node.B!.Value)}",
                    WorkingRank.Power
                );
            case TracedKind.Call when node.B is null:
                return ($"{node.Text}({Write(node.A!, provider, numbers).Text})", WorkingRank.Atom);
            case TracedKind.Call:
                string a = Write(node.A!, provider, numbers).Text;
                return ($"{node.Text}({a}; {Write(node.B, provider, numbers).Text})", WorkingRank.Atom);
            case TracedKind.Size:
                return ($"|{Write(node.A!, provider, numbers).Text}|", WorkingRank.Atom);
            case TracedKind.Chosen:
                return Write(node.A!, provider, numbers);
            default:
                throw new RefusedOperationException(
                    RefusalCode.ConditionInFormula,
                    "A condition is no part of a formula."
                );
        }

        string Join(WorkingRank left, WorkingRank right) =>
            $"{Part(node.A!, left, notFirst: false)} {node.Text} {Part(node.B!, right, notFirst: true, whole: right == WorkingRank.Power)}";

        string Exponent(double value)
        {
            string text = value.ToString(ConstantFormat, provider);
            return value < 0 ? $"({text})" : text;
        }

        // A part needs brackets where its precedence is lower than that of its place, where a sign would follow a sign,
        // and where a unit of several words would be separated.
        string Part(TracedNode part, WorkingRank place, bool notFirst, bool whole = false)
        {
            (string text, WorkingRank rank) = Write(part, provider, numbers);
            bool quantity = numbers && rank == WorkingRank.Atom && whole && HasUnit(part, place);
            return rank < place || (notFirst && text[0] == '-') || quantity ? $"({text})" : text;
        }
    }

    private static bool HasUnit(TracedNode node, WorkingRank place)
    {
        while (node.Kind == TracedKind.Chosen)
        {
            node = node.A!;
        }

        string unit = node.Symbol?.Unit ?? "";
        return place == WorkingRank.Atom ? unit.Length > 0 : unit.AsSpan().IndexOfAny(' ', '/') >= 0;
    }
}
