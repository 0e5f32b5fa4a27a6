namespace FuelMath;

/// <summary>The pulse widths that the controller gives: one for each stage, of each bank with a sensor of its own. In s; zero for a stage that rests.</summary>
internal sealed class CommandedWidths(SystemPath path, int stages)
{
    private readonly double[] widths = new double[path.BankCount * stages];

    /// <summary>All of them, bank by bank.</summary>
    internal double[] All => widths;

    /// <summary>Those of a bank, stage by stage.</summary>
    internal Span<double> OfBank(int bank) => widths.AsSpan(bank * stages, stages);

    /// <summary>That of the injector in a seat.</summary>
    internal double Of(int seat) => widths[(path.BankOf[seat] * stages) + path.Stages[seat]];

    /// <summary>The longest of a stage over all banks.</summary>
    internal double Longest(int stage)
    {
        double longest = widths[stage];
        for (int at = stage + stages; at < widths.Length; at += stages)
        {
            longest = Math.Max(longest, widths[at]);
        }

        return longest;
    }

    /// <summary>Gives all banks the widths of the first.</summary>
    internal void Spread()
    {
        for (int bank = 1; bank < path.BankCount; bank++)
        {
            OfBank(0).CopyTo(OfBank(bank));
        }
    }

    internal void Clear() => Array.Clear(widths);
}
