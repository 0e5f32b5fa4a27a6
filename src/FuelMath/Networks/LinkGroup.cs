using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The links of one law, covered by one virtual call.</summary>
internal abstract class LinkGroup<T>
    where T : struct, IScalar<T>
{
    /// <summary>Loads the settings of the descriptions.</summary>
    internal abstract void Load();

    /// <summary>Sets the fluid.</summary>
    internal abstract void Carry(NetworkWork<T> work);

    /// <summary>Sets one link.</summary>
    internal abstract void Set(NetworkWork<T> work, int index, ReadOnlySpan<T> settings);

    /// <summary>Sets each flow to its law's own scale, unless warm, and returns the greatest scale so far.</summary>
    internal abstract T Start(NetworkWork<T> work, bool warm, T greatest);

    /// <summary>The greatest usual flow over usual pressure so far, m³/s per Pa.</summary>
    internal abstract T GreatestYield(T greatest);

    /// <summary>Writes the linearized links into the equations.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="done">What stands still.</param>
    /// <param name="worst">The largest pressure residual so far, Pa.</param>
    internal abstract void Linearize(NetworkWork<T> work, in Mask<T> done, ref T worst);

    /// <summary>The equation of one link at a flow and two pressures; the workspace is unchanged.</summary>
    internal abstract Balance<T> At(NetworkWork<T> work, int index, T flow, T up, T down);

    /// <summary>The greatest flow so far outside the range of a part, m³/s.</summary>
    internal abstract T Trespass(NetworkWork<T> work, T worst);

    /// <summary>The same of one link.</summary>
    internal abstract T TrespassOf(NetworkWork<T> work, int index);

    /// <inheritdoc cref="ILinkLaw{TLaw, T}.OutsideData" />
    internal abstract T OutsideData(NetworkWork<T> work, int index);

    /// <inheritdoc cref="ILinkLaw{TLaw, T}.Condition" />
    internal abstract T Condition(NetworkWork<T> work, int index, T noFlow);
}

/// <inheritdoc />
internal class LinkGroup<T, TLaw> : LinkGroup<T>
    where T : struct, IScalar<T>
    where TLaw : struct, ILinkLaw<TLaw, T>
{
    private readonly Ends[] ends;
    private readonly LawSettings[] parts;
    private readonly TLaw[] laws;

    // Cached values of costly laws at a state from which many points start.
    private readonly (Dual<T> Loss, T Memory)[] known;
    private object? knownAt;

    internal LinkGroup(Ends[] ends, LawSettings[] parts)
    {
        this.ends = ends;
        this.parts = parts;
        laws = AlignedArrays.Of<TLaw>(ends.Length, Unsafe.SizeOf<T>());
        known = TLaw.IsCostly ? AlignedArrays.Of<(Dual<T>, T)>(ends.Length, Unsafe.SizeOf<T>()) : [];
    }

    private protected ReadOnlySpan<Ends> AllEnds => ends;

    private protected ReadOnlySpan<TLaw> Laws => laws;

    /// <summary>Whether a law has changed since this was last set to false.</summary>
    private protected bool HasChanged { get; set; } = true;

    /// <summary>The law of one link, for reading.</summary>
    internal ref readonly TLaw Law(int index) => ref laws[index];

    /// <inheritdoc />
    internal override void Load()
    {
        HasChanged = true;
        for (int i = 0; i < laws.Length; i++)
        {
            laws[i].Load(parts[i]);
        }
    }

    /// <inheritdoc />
    internal override void Carry(NetworkWork<T> work)
    {
        (knownAt, HasChanged) = (null, true);
        for (int i = 0; i < laws.Length; i++)
        {
            laws[i].Carry(parts[i], work.Around(ends[i]));
        }
    }

    /// <inheritdoc />
    internal override void Set(NetworkWork<T> work, int index, ReadOnlySpan<T> settings)
    {
        ref T flow = ref work.Flow[ends[index].Link];
        flow = TLaw.Set(ref laws[index], settings, flow);
        Carry(work, index);
    }

    /// <summary>Sets the fluid for one link, after one of its settings has changed.</summary>
    private void Carry(NetworkWork<T> work, int index)
    {
        HasChanged = true;
        laws[index].Carry(parts[index], work.Around(ends[index]));
    }

    /// <inheritdoc />
    internal override T Start(NetworkWork<T> work, bool warm, T greatest)
    {
        for (int i = 0; i < laws.Length; i++)
        {
            T first = laws[i].FirstFlow;
            work.First[ends[i].Link] = first;
            if (!warm)
            {
                work.Flow[ends[i].Link] = first;
            }

            greatest = T.Max(greatest, first);
        }

        return greatest;
    }

    /// <inheritdoc />
    internal override T GreatestYield(T greatest)
    {
        for (int i = 0; i < laws.Length; i++)
        {
            greatest = T.Max(greatest, 1 / laws[i].UsualSlope);
        }

        return greatest;
    }

    /// <remarks>
    /// Not inlined: with several laws in one method the compiler runs out of registers, and a batch takes up to twice
    /// as long.
    /// </remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal override void Linearize(NetworkWork<T> work, in Mask<T> done, ref T worst)
    {
        if (TLaw.IsCostly && work.Origin is { } origin)
        {
            Know(work, origin);
            LinearizeKnown(work, ref worst);
            return;
        }

        Mask<T> still = done;
        T[] pressure = work.Pressure;
        T[] flows = work.Flow;
        T[] memories = work.Memory;
        T reverse = work.Reverse;
        T error = worst;
        T plain = work.WorstPlain;
        Ends[] all = ends;
        for (int i = 0; i < all.Length; i++)
        {
            ref readonly Ends e = ref all[i];
            T flow = flows[e.Link];
            T up = pressure[e.From];
            T down = pressure[e.To];
            T memory = memories[e.Link];
            Balance<T> balance = laws[i].At(Dual<T>.Variable(flow), up, down, reverse, ref memory);
            memories[e.Link] = typeof(T) == typeof(Real) ? memory : T.Select(still, memories[e.Link], memory);
            Write(work, in e, laws[i].UsualSlope, flow, up, down, in balance, ref error, ref plain);
        }

        work.WorstPlain = plain;
        worst = error;
    }

    /// <summary>The same at the starting state of the workspace, with the cached values of the laws.</summary>
    /// <remarks>Not inlined: it would take the place of the laws above, whose operators then become calls.</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void LinearizeKnown(NetworkWork<T> work, ref T worst)
    {
        T error = worst;
        T plain = work.WorstPlain;
        for (int i = 0; i < ends.Length; i++)
        {
            ref readonly Ends e = ref ends[i];
            work.Memory[e.Link] = known[i].Memory;
            Balance<T> balance = new(known[i].Loss);
            Write(
                work,
                in e,
                laws[i].UsualSlope,
                work.Flow[e.Link],
                work.Pressure[e.From],
                work.Pressure[e.To],
                in balance,
                ref error,
                ref plain
            );
        }

        work.WorstPlain = plain;
        worst = error;
    }

    /// <summary>Computes the values of the laws at the starting state of the workspace, unless cached.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Know(NetworkWork<T> work, object origin)
    {
        if (ReferenceEquals(origin, knownAt))
        {
            return;
        }

        T none = T.Of(0);
        for (int i = 0; i < ends.Length; i++)
        {
            T memory = work.Memory[ends[i].Link];
            Dual<T> flow = Dual<T>.Variable(work.Flow[ends[i].Link]);
            known[i] = (laws[i].At(flow, none, none, none, ref memory).Loss, memory);
        }

        knownAt = origin;
    }

    /// <summary>Writes a linearized link into the equations.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Write(
        NetworkWork<T> work,
        in Ends e,
        T usual,
        T flow,
        T up,
        T down,
        in Balance<T> balance,
        ref T worst,
        ref T plain
    )
    {
        var link = new LinearLink<T>(
            in balance,
            flow,
            up,
            down,
            TLaw.LeastSlope * usual,
            work.Drag * usual,
            ref worst,
            ref plain
        );
        work.Take(in e, link.Free, link.FromUp, link.ToDown, link.Error);
    }

    /// <inheritdoc />
    internal override Balance<T> At(NetworkWork<T> work, int index, T flow, T up, T down)
    {
        T memory = work.Memory[ends[index].Link];
        return laws[index].At(Dual<T>.Variable(flow), up, down, T.Of(Stiff.Reverse), ref memory);
    }

    /// <inheritdoc />
    internal override T Trespass(NetworkWork<T> work, T worst)
    {
        for (int i = 0; i < laws.Length; i++)
        {
            worst = T.MaxSize(worst, TrespassOf(work, i));
        }

        return worst;
    }

    /// <inheritdoc />
    internal override T TrespassOf(NetworkWork<T> work, int index) =>
        TLaw.Trespass(ref laws[index], work.Flow[ends[index].Link]);

    /// <inheritdoc />
    internal override T OutsideData(NetworkWork<T> work, int index) =>
        TLaw.OutsideData(ref laws[index], work.Flow[ends[index].Link]);

    /// <inheritdoc />
    internal override T Condition(NetworkWork<T> work, int index, T noFlow)
    {
        ref readonly Ends e = ref ends[index];
        return TLaw.Condition(ref laws[index], work.Flow[e.Link], work.Pressure[e.From], work.Pressure[e.To], noFlow);
    }
}
