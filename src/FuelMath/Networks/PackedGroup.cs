using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A group of plain numbers whose law is computed for several links at once, in the machine's vectors.</summary>
/// <typeparam name="TOne">The law over plain numbers.</typeparam>
/// <typeparam name="TLane">The vector.</typeparam>
/// <typeparam name="TSeveral">The same law over it.</typeparam>
/// <remarks>
/// The laws stay plain numbers for settings and verdicts, and are transposed when one has changed. The last vector is
/// filled up with copies of the last link.
/// </remarks>
internal sealed class PackedGroup<TOne, TLane, TSeveral> : LinkGroup<Real, TOne>
    where TOne : struct, ILinkLaw<TOne, Real>
    where TLane : struct, ILane<TLane>
    where TSeveral : struct, ILinkLaw<TSeveral, TLane>
{
    private readonly TSeveral[] packed;
    private readonly int[] link;
    private readonly int[] from;
    private readonly int[] to;
    private readonly TLane[] flow;
    private readonly TLane[] up;
    private readonly TLane[] down;
    private readonly TLane[] memory;
    private readonly LinearLink<TLane>[] linear;

    internal PackedGroup(Ends[] ends, LawSettings[] parts)
        : base(ends, parts)
    {
        int vectors = (ends.Length + TLane.Count - 1) / TLane.Count;
        Ends[] filled = [.. ends, .. Enumerable.Repeat(ends[^1], (vectors * TLane.Count) - ends.Length)];
        (link, from, to) = (
            [.. filled.Select(e => e.Link)],
            [.. filled.Select(e => e.From)],
            [.. filled.Select(e => e.To)]
        );
        packed = new TSeveral[vectors];
        (flow, up, down, memory) = (new TLane[vectors], new TLane[vectors], new TLane[vectors], new TLane[vectors]);
        linear = new LinearLink<TLane>[vectors];
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal override void Linearize(NetworkWork<Real> work, in Mask<Real> done, ref Real worst)
    {
        if (HasChanged)
        {
            Pack();
        }

        Gather(work);
        worst = Evaluate(work, worst);
        Scatter(work);
    }

    private void Gather(NetworkWork<Real> work)
    {
        Real[] flows = work.Flow;
        Real[] memories = work.Memory;
        Real[] pressures = work.Pressure;
        Span<double> q = Numbers(flow);
        Span<double> m = Numbers(memory);
        Span<double> u = Numbers(up);
        Span<double> d = Numbers(down);
        int[] links = link;
        int[] starts = from;
        int[] ends = to;
        for (int i = 0; i < links.Length; i++)
        {
            q[i] = flows[links[i]].Number;
            m[i] = memories[links[i]].Number;
            u[i] = pressures[starts[i]].Number;
            d[i] = pressures[ends[i]].Number;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private Real Evaluate(NetworkWork<Real> work, Real worst)
    {
        var reverse = TLane.Of(work.Reverse.Number);
        double drag = work.Drag.Number;
        var most = TLane.Of(worst.Number);
        var plain = TLane.Of(work.WorstPlain.Number);
        for (int i = 0; i < packed.Length; i++)
        {
            TLane q = flow[i];
            TLane usual = packed[i].UsualSlope;
            Balance<TLane> balance = packed[i].At(Dual<TLane>.Variable(q), up[i], down[i], reverse, ref memory[i]);
            linear[i] = new(
                in balance,
                q,
                up[i],
                down[i],
                TSeveral.LeastSlope * usual,
                drag * usual,
                ref most,
                ref plain
            );
        }

        work.WorstPlain = new(TLane.Greatest(plain));
        return new(TLane.Greatest(most));
    }

    private void Scatter(NetworkWork<Real> work)
    {
        ReadOnlySpan<Ends> ends = AllEnds;
        ReadOnlySpan<double> memories = Numbers(memory);
        ReadOnlySpan<double> numbers = Numbers(linear);
        Real[] kept = work.Memory;
        for (int i = 0; i < ends.Length; i++)
        {
            ref readonly Ends e = ref ends[i];
            kept[e.Link] = new(memories[i]);
            int place = ((i / TLane.Count) * 4 * TLane.Count) + (i % TLane.Count);
            work.Take(
                in e,
                new(numbers[place]),
                new(numbers[place + TLane.Count]),
                new(numbers[place + (2 * TLane.Count)]),
                new(numbers[place + (3 * TLane.Count)])
            );
        }
    }

    /// <summary>Transposes the laws: both are nothing but numbers, the same in the same order.</summary>
    private void Pack()
    {
        int count = Laws.Length;
        ReadOnlySpan<double> ones = MemoryMarshal.Cast<TOne, double>(Laws);
        Span<double> several = Numbers<TSeveral>(packed);
        int numbers = ones.Length / count;
        for (int i = 0; i < link.Length; i++)
        {
            ReadOnlySpan<double> one = ones.Slice(Math.Min(i, count - 1) * numbers, numbers);
            int place = (i / TLane.Count * TLane.Count * numbers) + (i % TLane.Count);
            for (int k = 0; k < one.Length; k++)
            {
                several[place + (k * TLane.Count)] = one[k];
            }
        }

        HasChanged = false;
    }

    private static Span<double> Numbers<TNumbers>(TNumbers[] of)
        where TNumbers : struct => MemoryMarshal.Cast<TNumbers, double>(of.AsSpan());
}
