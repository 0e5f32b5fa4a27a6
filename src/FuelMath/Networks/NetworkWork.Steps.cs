using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using FuelMath.Formulas;

namespace FuelMath;

/// <content>
/// The step of each iteration. That of plain numbers is taken for several links or junctions at once, in the machine's
/// vectors, and what is left over one by one: the operations are the same, and so are the bits. A plain number takes no
/// step once it is done, so that these loops need not ask.
/// </content>
internal sealed partial class NetworkWork<T>
{
    /// <summary>The largest step of a flow, as a multiple of its law's scale or of the previous flow.</summary>
    private const double Reach = 5;
    private const double ReachOfLast = 4;

    /// <summary>Computes the flows of a full step into Free.</summary>
    private void NextFlows(out StepSizes<T> sizes)
    {
        sizes = default;
        int first = 0;
        if (typeof(T) == typeof(Real))
        {
            first = Vector512.IsHardwareAccelerated ? NextFlows<WideLane>(ref sizes) : NextFlows<Lane>(ref sizes);
        }

        NextFlows(first, ref sizes);
    }

    /// <summary>The same from a link on, one by one.</summary>
    /// <remarks>Not inlined, nor are the other steps: in one method their vectors would not find room in the registers.</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void NextFlows(int first, ref StepSizes<T> sizes)
    {
        StepSizes<T> all = sizes;
        T[] free = Free;
        T[] flow = Flow;
        T[] fromUp = FromUp;
        T[] toDown = ToDown;
        T[] rise = Right;
        int[] from = Plan.From;
        int[] to = Plan.To;
        for (int e = first; e < free.Length; e++)
        {
            free[e] = all.Next(flow[e], free[e], fromUp[e], rise[from[e]], toDown[e], rise[to[e]]);
        }

        sizes = all;
    }

    /// <returns>The first link that is left over.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int NextFlows<TLane>(ref StepSizes<T> sizes)
        where TLane : struct, ILane<TLane>
    {
        StepSizes<TLane> several = default;
        Span<double> free = Numbers(Free);
        ReadOnlySpan<double> flow = Numbers(Flow);
        ReadOnlySpan<double> fromUp = Numbers(FromUp);
        ReadOnlySpan<double> toDown = Numbers(ToDown);
        ReadOnlySpan<double> rise = Numbers(Right);
        ReadOnlySpan<int> from = Plan.From;
        ReadOnlySpan<int> to = Plan.To;
        int e = 0;
        for (; e + TLane.Count <= free.Length; e += TLane.Count)
        {
            TLane next = several.Next(
                TLane.Load(flow[e..]),
                TLane.Load(free[e..]),
                TLane.Load(fromUp[e..]),
                TLane.Gather(rise, from[e..]),
                TLane.Load(toDown[e..]),
                TLane.Gather(rise, to[e..])
            );
            TLane.Store(next, free[e..]);
        }

        sizes.Change = T.Of(TLane.Greatest(several.Change));
        sizes.Scale = T.Of(TLane.Greatest(several.Scale));
        sizes.OwnTerm = T.Of(TLane.Greatest(several.OwnTerm));
        sizes.PressureTerm = T.Of(TLane.Greatest(several.PressureTerm));
        return e;
    }

    /// <summary>Adds the changes to the unknown pressures of what is not done; returns the greatest pressure.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private T MovePressures(in Mask<T> done)
    {
        T greatest = T.Of(0);
        int first = 0;
        if (typeof(T) == typeof(Real))
        {
            first = Vector512.IsHardwareAccelerated
                ? MovePressures<WideLane>(ref greatest)
                : MovePressures<Lane>(ref greatest);
        }

        Mask<T> still = done;
        T[] pressure = Pressure;
        T[] rise = Right;
        int unknown = Plan.Unknown;
        for (int i = first; i < unknown; i++)
        {
            T next = pressure[i] + rise[i];
            pressure[i] = T.Select(still, pressure[i], next);
            greatest = T.MaxSize(greatest, next);
        }

        return greatest;
    }

    /// <returns>The first junction that is left over.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int MovePressures<TLane>(ref T greatest)
        where TLane : struct, ILane<TLane>
    {
        Span<double> pressure = Numbers(Pressure);
        ReadOnlySpan<double> rise = Numbers(Right);
        TLane most = TLane.Of(0);
        int i = 0;
        for (; i + TLane.Count <= Plan.Unknown; i += TLane.Count)
        {
            TLane next = TLane.Load(pressure[i..]) + TLane.Load(rise[i..]);
            TLane.Store(next, pressure[i..]);
            most = TLane.MaxSize(most, next);
        }

        greatest = T.Of(TLane.Greatest(most));
        return i;
    }

    /// <summary>
    /// A converged step takes the new flows themselves, so that mass balances to the last digit. Before that the change
    /// of each flow is limited by its law's scale: it is only the next point of linearization.
    /// </summary>
    /// <returns>Where every flow is the new one.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private Mask<T> Step(in Mask<T> done, in Mask<T> settled)
    {
        T missed = T.Of(0);
        int first = 0;
        if (typeof(T) == typeof(Real))
        {
            first = Vector512.IsHardwareAccelerated
                ? Step<WideLane>(T.All(settled), ref missed)
                : Step<Lane>(T.All(settled), ref missed);
        }

        (Mask<T> still, Mask<T> whole) = (done, settled);
        T[] flow = Flow;
        T[] free = Free;
        T[] scale = First;
        T start = startScale;
        for (int e = first; e < flow.Length; e++)
        {
            T next = free[e];
            T kept = Kept(next, flow[e], scale[e], start);
            missed = T.MaxSize(missed, next - kept);
            flow[e] = T.Select(still, flow[e], T.Select(whole, next, kept));
        }

        return T.Less(missed, T.Of(double.Epsilon));
    }

    /// <returns>The first link that is left over.</returns>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int Step<TLane>(bool settled, ref T missed)
        where TLane : struct, ILane<TLane>
    {
        Span<double> flow = Numbers(Flow);
        ReadOnlySpan<double> free = Numbers(Free);
        ReadOnlySpan<double> scale = Numbers(First);
        TLane start = TLane.Of(Unsafe.BitCast<T, double>(startScale));
        TLane most = TLane.Of(0);
        int e = 0;
        for (; e + TLane.Count <= flow.Length; e += TLane.Count)
        {
            TLane next = TLane.Load(free[e..]);
            TLane kept = Kept(next, TLane.Load(flow[e..]), TLane.Load(scale[e..]), start);
            most = TLane.MaxSize(most, next - kept);
            TLane.Store(settled ? next : kept, flow[e..]);
        }

        missed = T.Of(TLane.Greatest(most));
        return e;
    }

    /// <summary>A flow limited to the largest step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TNumber Kept<TNumber>(TNumber next, TNumber flow, TNumber first, TNumber startScale)
        where TNumber : struct, IScalar<TNumber>
    {
        TNumber reach = TNumber.Max(Reach * first, ReachOfLast * TNumber.Abs(flow)) + startScale;
        return TNumber.Max(-reach, TNumber.Min(reach, next));
    }

    private static Span<double> Numbers(T[] plain) => MemoryMarshal.Cast<T, double>(plain.AsSpan());
}
