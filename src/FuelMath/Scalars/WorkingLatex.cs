using System.Collections.Immutable;

namespace FuelMath.Formulas;

/// <summary>Writes traced formulas as LaTeX, with brackets where they are needed.</summary>
internal sealed class WorkingLatex(WorkingWriter writer, IFormatProvider provider)
{
    internal string Formula(TracedNode node, bool numbers) => Write(node, numbers).Text;

    internal string Result(TracedNode node) => Latex.Quantity(writer.Rounded(node.Value, provider), node.Symbol!.Unit);

    internal ImmutableArray<string> Conditions(TracedNode node) =>
        [
            .. WorkingConditions
                .Of(node)
                .Select(c =>
                    $@"{Formula(c.A!, numbers: false)} {(c.Holds ? "<" : @"\ge")} {Formula(c.B!, numbers: false)}"
                )
                .Distinct(StringComparer.Ordinal),
        ];

    private (string Text, WorkingRank Rank) Write(TracedNode node, bool numbers)
    {
        switch (node.Kind)
        {
            case TracedKind.Constant:
                return (Latex.Number(WorkingWriter.Given(node.Value, provider)), WorkingRank.Atom);
            case TracedKind.Input:
            case TracedKind.Named:
                return (
                    numbers
                        ? Latex.Quantity(writer.Number(node, provider), node.Symbol!.Unit)
                        : Latex.Symbol(writer.Label(node)),
                    WorkingRank.Atom
                );
            case TracedKind.Sum:
                return (
                    $"{Part(node.A!, WorkingRank.Sum, false)} {node.Text} {Part(node.B!, node.Text == "-" ? WorkingRank.Product : WorkingRank.Sum, true)}",
                    WorkingRank.Sum
                );
            case TracedKind.Product when node.Text == "/":
                return (
                    $@"\frac{{{Write(node.A!, numbers).Text}}}{{{Write(node.B!, numbers).Text}}}",
                    WorkingRank.Product
                );
            case TracedKind.Product:
                return (
                    $@"{Part(node.A!, WorkingRank.Product, false)} \cdot {Part(node.B!, WorkingRank.Product, true)}",
                    WorkingRank.Product
                );
            case TracedKind.Negative:
                return ($"-{Part(node.A!, WorkingRank.Product, true)}", WorkingRank.Product);
            case TracedKind.Power:
                string exponent = Latex.Number(WorkingWriter.Given(node.B!.Value, provider));
                return ($"{Base(node.A!)}^{{{exponent}}}", WorkingRank.Power);
            case TracedKind.Call when node.Text == "sqrt":
                return ($@"\sqrt{{{Write(node.A!, numbers).Text}}}", WorkingRank.Atom);
            case TracedKind.Call when node.B is null:
                return ($@"\{node.Text}\left({Write(node.A!, numbers).Text}\right)", WorkingRank.Atom);
            case TracedKind.Call:
                string a = Write(node.A!, numbers).Text;
                string b = Write(node.B, numbers).Text;
                return ($@"\operatorname{{{node.Text}}}\left({a};\ {b}\right)", WorkingRank.Atom);
            case TracedKind.Size:
                return ($@"\left|{Write(node.A!, numbers).Text}\right|", WorkingRank.Atom);
            case TracedKind.Chosen:
                return Write(node.A!, numbers);
            default:
                throw new RefusedOperationException(
                    RefusalCode.ConditionInFormula,
                    "A condition is no part of a formula."
                );
        }

        // A part needs brackets where its precedence is lower than that of its place, and where a sign would follow a
        // sign.
        string Part(TracedNode part, WorkingRank place, bool notFirst)
        {
            (string text, WorkingRank rank) = Write(part, numbers);
            return rank < place || (notFirst && text[0] == '-') ? Bracketed(text) : text;
        }

        // A number with a unit or a sign is bracketed before it is raised to a power; a subscript stays with its
        // symbol.
        string Base(TracedNode part)
        {
            (string text, WorkingRank rank) = Write(part, numbers);
            bool quantity = numbers && rank == WorkingRank.Atom && text.Contains(' ', StringComparison.Ordinal);
            return rank < WorkingRank.Atom || text[0] == '-' || quantity ? Bracketed(text) : $"{{{text}}}";
        }
    }

    private static string Bracketed(string text) => $@"\left({text}\right)";
}
