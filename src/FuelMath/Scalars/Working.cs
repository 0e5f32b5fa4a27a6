using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FuelMath.Scalars;

/// <summary>How a number was made: the inputs, then each named step with its formula and the numbers put in.</summary>
/// <remarks>
/// Where two different steps or inputs share a symbol, the working numbers them (<c>dp_1</c>, <c>dp_2</c>). Instances are
/// immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class Working
{
    private static readonly Symbol Unnamed = new("result", "", "the result", null);

    internal Working(TracedNode root)
    {
        TracedNode last = root.Kind is TracedKind.Named or TracedKind.Input ? root : TracedNode.Named(root, Unnamed);
        var nodes = new List<TracedNode>();
        Collect(last, nodes, []);
        var writer = new WorkingWriter(nodes);
        Inputs =
        [
            .. nodes
                .Where(n => n.Kind == TracedKind.Input)
                .DistinctBy(writer.Label)
                .Select(n => new WorkingInput(n, writer)),
        ];
        Lines = [.. nodes.Where(n => n.Kind == TracedKind.Named).Select(n => new WorkingLine(n, writer))];
        Value = last.Value;
    }

    /// <summary>The inputs, in the order in which they are first used.</summary>
    public ImmutableArray<WorkingInput> Inputs { get; }

    /// <summary>The named steps, first things first, each once; the last is the result.</summary>
    public ImmutableArray<WorkingLine> Lines { get; }

    /// <summary>The number that was worked out, in its SI unit.</summary>
    public double Value { get; }

    /// <summary>Gives the whole working as text: inputs, then two lines for each step.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Lines of text.</returns>
    public string ToText(IFormatProvider provider)
    {
        var text = new StringBuilder();
        foreach (WorkingInput input in Inputs)
        {
            text.Append(input.ToText(provider)).Append('\n');
        }

        foreach (WorkingLine line in Lines)
        {
            text.Append(line.ToText(provider)).Append('\n').Append("    ").Append(line.Symbol.Meaning);
            if (line.Symbol.Source is { } source)
            {
                text.Append("; ").Append(source);
            }

            text.Append('\n');
        }

        return text.ToString();
    }

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
