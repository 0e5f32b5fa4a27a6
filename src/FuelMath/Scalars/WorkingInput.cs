using System.Globalization;

namespace FuelMath.Scalars;

/// <summary>An input of a working.</summary>
/// <remarks>Instances are immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class WorkingInput
{
    private readonly WorkingWriter writer;
    private readonly TracedNode node;

    internal WorkingInput(TracedNode node, WorkingWriter writer)
    {
        this.node = node;
        this.writer = writer;
    }

    /// <summary>What it is.</summary>
    public Symbol Symbol => node.Symbol!;

    /// <summary>What the working calls it: the symbol's name, numbered where two share one.</summary>
    public string Label => writer.Label(node);

    /// <summary>The number, in the symbol's unit.</summary>
    public double Value => node.Value;

    /// <summary>Gives the input as text, for example <c>D = 0.008 m (inner diameter)</c>.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>One line of text.</returns>
    public string ToText(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return $"{Label} = {WorkingWriter.Quantity(node, provider)} ({Symbol.Meaning})";
    }

    /// <summary>Gives the input as text in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => ToText(CultureInfo.InvariantCulture);
}
