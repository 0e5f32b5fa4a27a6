using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FuelMath.Formulas;

/// <summary>
/// The working of a number: the inputs, then each named step with its formula and the inserted values.
/// </summary>
/// <remarks>
/// Where two different steps or inputs share a symbol, the working numbers them (<c>dp_1</c>, <c>dp_2</c>). An input that
/// was given in another unit is converted in a line of its own, and so is the result when another unit was asked for.
/// </remarks>
/// <seealso href="../guide/workings.html">Ways to a working</seealso>
public sealed partial class Working
{
    private static readonly Symbol Unnamed = new("result", "", "the result");

    private readonly TracedNode root;
    private readonly TracedUnit? unit;
    private readonly int? figures;

    internal Working(TracedNode root, TracedUnit? unit, int? figures)
    {
        this.root = root;
        this.figures = figures;
        this.unit = unit is { IsSi: true } ? null : unit;
        TracedNode last = root.Kind is TracedKind.Named or TracedKind.Input
            ? root
            : TracedNode.Named(root, Unnamed, null);
        var nodes = new List<TracedNode>();
        Collect(last, nodes, []);
        var writer = new WorkingWriter(nodes, figures);
        Inputs =
        [
            .. nodes.Where(n => n.Kind == TracedKind.Input).DistinctBy(writer.Label).Select(n => new Input(n, writer)),
        ];
        Lines = [.. nodes.Where(n => n.Kind == TracedKind.Named).Select(n => new Line(n, writer))];
        Conversion = this.unit is null ? null : UnitConversion.FromSi(last, this.unit, writer);
        Value = last.Value;
    }

    /// <summary>The inputs, in the order in which they are first used.</summary>
    public ImmutableArray<Input> Inputs { get; }

    /// <summary>The named steps in the order of calculation, each once; the last is the result.</summary>
    public ImmutableArray<Line> Lines { get; }

    /// <summary>The result converted to the unit that was asked for; null when that is the SI unit.</summary>
    public UnitConversion? Conversion { get; }

    /// <summary>The calculated number, in its SI unit.</summary>
    public double Value { get; }

    /// <summary>The SI unit of the result; empty for a pure number.</summary>
    internal string ResultUnit => Lines.IsEmpty ? Inputs[^1].Symbol.Unit : Lines[^1].Symbol.Unit;

    /// <summary>The same working with its result in a unit.</summary>
    internal Working EndingIn(TracedUnit wanted) => new(root, wanted, figures);

    /// <summary>Gives the same working with its numbers rounded to significant figures where they are shown.</summary>
    /// <param name="significantFigures">How many figures, 1 to 17; zeros at the end are kept, as they count.</param>
    /// <returns>The working; its values keep all their bits, and inputs are shown as given.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="significantFigures"/> is outside 1 to 17.</exception>
    public Working WithFigures(int significantFigures) => new(root, unit, Guard.InRange(significantFigures, 1, 17));

    /// <summary>Gives the whole working as text: inputs and their conversions, two lines for each step, the conversion of the result.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Lines of text.</returns>
    public string ToText(IFormatProvider provider)
    {
        var text = new StringBuilder();
        foreach (Input input in Inputs)
        {
            text.Append(input.ToText(provider)).Append('\n');
        }

        foreach (Input input in Inputs.Where(i => i.Conversion is not null))
        {
            text.Append(input.Conversion!.ToText(provider)).Append('\n');
        }

        foreach (Line line in Lines)
        {
            text.Append(line.ToText(provider)).Append('\n').Append("    ").Append(line.ToOrigin()).Append('\n');
        }

        if (Conversion is not null)
        {
            text.Append(Conversion.ToText(provider)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Gives the whole working as Markdown: a table of inputs, then a numbered list of conversions and steps.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Markdown without a heading.</returns>
    public string ToMarkdown(IFormatProvider provider)
    {
        var text = new StringBuilder();
        if (!Inputs.IsEmpty)
        {
            text.Append("| Symbol | Given | Meaning |\n|---|---|---|\n");
            foreach (Input input in Inputs)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| `{input.Label}` | {input.ToGiven(provider)} | {input.Symbol.Meaning} |\n"
                );
            }

            text.Append('\n');
        }

        foreach (Input input in Inputs.Where(i => i.Conversion is not null))
        {
            text.Append(CultureInfo.InvariantCulture, $"1. `{input.Conversion!.ToText(provider)}`\n");
        }

        foreach (Line line in Lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"1. `{line.ToText(provider)}`<br>{line.ToOrigin()}\n");
        }

        if (Conversion is not null)
        {
            text.Append(CultureInfo.InvariantCulture, $"1. `{Conversion.ToText(provider)}`\n");
        }

        return text.ToString();
    }

    /// <summary>Gives the whole working as lines of LaTeX, each a formula of its own without delimiters.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Inputs, conversions and steps in the order of <see cref="ToText"/>.</returns>
    public ImmutableArray<string> ToLatex(IFormatProvider provider) =>
        [
            .. Inputs.Select(i => i.ToLatex(provider)),
            .. Inputs.Where(i => i.Conversion is not null).Select(i => i.Conversion!.ToLatex(provider)),
            .. Lines.Select(l => l.ToLatex(provider)),
            .. Conversion is null ? (string[])[] : [Conversion.ToLatex(provider)],
        ];

    /// <summary>Gives the working as text in invariant culture.</summary>
    /// <returns>Lines of text.</returns>
    public override string ToString() => ToText(CultureInfo.InvariantCulture);

    private static void Collect(TracedNode node, List<TracedNode> into, HashSet<TracedNode> seen)
    {
        if (!seen.Add(node))
        {
            return;
        }

        if (node.A is { } a)
        {
            Collect(a, into, seen);
        }

        if (node.B is { } b)
        {
            Collect(b, into, seen);
        }

        if (node.Symbol is not null)
        {
            into.Add(node);
        }
    }
}
