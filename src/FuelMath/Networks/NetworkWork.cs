using FuelMath.Formulas;
using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>
/// Everything that changes while a prepared network is solved, for one scalar: settings, pressures, flows. One thread at
/// a time; rented from <see cref="NetworkPlan.Rent{T}"/> and given back by disposing of it.
/// </summary>
/// <remarks>
/// <para>
/// All numbers are SI, pressures gauge. Set what differs from the description, <see cref="Solve"/>, read. A second
/// <see cref="Solve"/> on the same workspace may start from the first one's answer. Nothing is allocated.
/// </para>
/// <para>
/// The method: Newton on all links, flows eliminated, so that each iteration solves for one change of pressure a node.
/// After <see cref="FullSteps"/> iterations a point whose flows stopped settling takes shorter steps. A number that is
/// done stands still, so that a lane's result does not depend on its neighbors.
/// </para>
/// </remarks>
internal sealed class NetworkWork<T> : IDisposable
    where T : struct, IScalar<T>
{
    internal const int MostIterations = 200;

    /// <summary>Iterations before steps may be shortened.</summary>
    private const int FullSteps = 12;
    private const double ShortStep = 0.6;

    /// <summary>Flows have settled when none changes by more than this part of the greatest.</summary>
    private const double Settled = 1e-7;

    /// <summary>Nor, where nothing flows, by this part of the greatest flow that a cold start begins with.</summary>
    private const double SettledOfStart = 1e-9;

    /// <summary>A link's pressure is right within this, Pa, ...</summary>
    internal const double PressureTolerance = 1e-3;

    /// <summary>... and this part of the greatest pressure.</summary>
    internal const double RelativeTolerance = 1e-9;

    /// <summary>Mass balances within this part of the greatest flow.</summary>
    internal const double MassTolerance = 1e-9;

    /// <summary>x = 1/sqrt(f) of a friction factor of 0.024.</summary>
    private const double UsualRoot = 6.5;
    private const double Beyond = 1e100;

    private readonly WorkPool<T> pool;
    private readonly LinkGroup<T>[] groups;
    private readonly T[] head;
    private readonly T[] given;
    private T density;
    private T viscosity;
    private T startScale;
    private bool set;

    internal NetworkWork(NetworkPlan plan, WorkPool<T> pool)
    {
        Plan = plan;
        this.pool = pool;
        int nodes = plan.Nodes.Length;
        int links = plan.Links.Length;
        groups =
        [
            .. plan.Groups.Select(g =>
                LinkLaws.Group<T>(
                    g.Kind,
                    [.. g.Links.Select(plan.EndsOf)],
                    [.. g.Links.Select(i => plan.Links[i].Part)]
                )
            ),
        ];
        (Pressure, Right, Draw) = (new T[nodes], new T[nodes], new T[nodes]);
        (head, given) = (new T[nodes], new T[nodes]);
        (Flow, Free, FromUp, ToDown, Memory) = (new T[links], new T[links], new T[links], new T[links], new T[links]);
        Matrix = new T[plan.Order.Slots + 1];
        set = true;
        Reset();
    }

    internal NetworkPlan Plan { get; }

    // Pressures at elevation zero.
    internal readonly T[] Pressure;

    /// <summary>Volume flow of each link, m3/s, as the equations have it.</summary>
    internal readonly T[] Flow;

    /// <summary>The roots of implicit laws, one a link.</summary>
    internal readonly T[] Memory;
    internal readonly T[] Right;
    internal readonly T[] Matrix;
    internal readonly T[] Free;
    internal readonly T[] FromUp;
    internal readonly T[] ToDown;
    internal readonly T[] Draw;

    /// <summary>Iterations of the last solve.</summary>
    internal T Iterations { get; private set; }

    /// <summary>The worst error of pressure of the last solve, Pa: see <see cref="Stiff.JudgedByFlow"/>.</summary>
    internal T WorstError { get; private set; }

    /// <summary>Sets the fluid of all links: density in kg/m3, dynamic viscosity in Pa s.</summary>
    internal void SetFluid(T newDensity, T dynamicViscosity)
    {
        set = true;
        density = newDensity;
        viscosity = dynamicViscosity;
        NetworkNode[] nodes = Plan.Nodes;
        for (int i = 0; i < nodes.Length; i++)
        {
            head[i] = Hydrostatics.ColumnPressure(newDensity, Hydrostatics.StandardGravity, T.Of(nodes[i].ElevationSi));
            if (i >= Plan.Unknown)
            {
                Pressure[i] = given[i] + head[i];
            }
        }

        foreach (LinkGroup<T> group in groups)
        {
            group.Carry(this);
        }
    }

    /// <summary>Sets the pressure of a node of fixed pressure, Pa gauge.</summary>
    internal void SetPressure(int node, T gauge)
    {
        set = true;
        ArgumentOutOfRangeException.ThrowIfLessThan(node, Plan.Unknown);
        given[node] = gauge;
        Pressure[node] = gauge + head[node];
    }

    /// <summary>Sets where a warm start finds the pressure of a junction, Pa gauge.</summary>
    internal void SetUnknown(int node, T gauge) => Pressure[node] = gauge + head[node];

    /// <summary>Sets what is drawn at a junction, m3/s.</summary>
    internal void SetDraw(int node, T flow)
    {
        set = true;
        Draw[node] = flow;
    }

    /// <summary>Sets a link of capped injectors: C in m3/s per root of Pa, and the commanded flow in m3/s.</summary>
    internal void SetInjector(int link, T coefficient, T commanded)
    {
        set = true;
        Law<CappedLaw<T>>(link).Set(coefficient, commanded);
    }

    /// <summary>Sets a regulator's reference pressure, Pa gauge.</summary>
    internal void SetReference(int link, T gauge)
    {
        set = true;
        (int group, int index) = Plan.Place[link];
        if (groups[group] is LinkGroup<T, BypassLaw<T>> bypass)
        {
            bypass.Law(index).SetReference(gauge);
            bypass.Carry(this, index);
        }
        else
        {
            var reducing = (LinkGroup<T, ReducingLaw<T>>)groups[group];
            reducing.Law(index).SetReference(gauge);
            reducing.Carry(this, index);
        }
    }

    /// <summary>Sets a tabulated pump's curve of pressure rise (Pa) over flow (m3/s), with as many points as it had.</summary>
    internal void SetPump(int link, Curve curve)
    {
        set = true;
        ref PumpTableLaw<T> law = ref Law<PumpTableLaw<T>>(link);
        ReadOnlySpan<Piece> pieces = curve.Pieces;
        ArgumentOutOfRangeException.ThrowIfNotEqual(pieces.Length, law.Count);
        for (int i = 0; i < pieces.Length; i++)
        {
            Piece p = pieces[i];
            law.Set(i, T.Of(p.X0), T.Of(p.C0), T.Of(p.C1), T.Of(p.C2), T.Of(p.C3));
        }

        law.Finish();
    }

    /// <summary>The gauge pressure of a node, Pa.</summary>
    internal T PressureAt(int node) => Pressure[node] - head[node];

    /// <summary>The law of a link, to look at or to set.</summary>
    internal ref TLaw Law<TLaw>(int link)
        where TLaw : struct, ILinkLaw<T>
    {
        (int group, int index) = Plan.Place[link];
        return ref ((LinkGroup<T, TLaw>)groups[group]).Law(index);
    }

    /// <summary>What surrounds a link.</summary>
    internal Surroundings<T> Around(in Ends ends) => new(density, viscosity, head[ends.From], head[ends.To]);

    /// <summary>Solves the network.</summary>
    /// <param name="warm">Start from the pressures and flows that the workspace holds.</param>
    /// <returns>Where a solution was found. <see cref="Iterations"/> and <see cref="WorstError"/> say how.</returns>
    internal Mask<T> Solve(bool warm)
    {
        Start(warm);
        int unknown = Plan.Unknown;
        T[] right = Right;
        T[] pressure = Pressure;
        T one = T.Of(1);
        T none = T.Of(0);
        Mask<T> done = T.Less(one, none);
        Mask<T> lost = done;
        Mask<T> settled = done;
        T before = one;
        T limit = T.Of(PressureTolerance);
        Iterations = none;
        WorstError = none;
        for (int iteration = 0; iteration <= MostIterations; iteration++)
        {
            Array.Clear(Matrix);
            for (int i = 0; i < unknown; i++)
            {
                right[i] = -Draw[i];
            }

            T error = none;
            foreach (LinkGroup<T> group in groups)
            {
                error = group.Linearize(this, done, error);
            }

            WorstError = T.Select(done, WorstError, error);
            done |= settled & T.Less(error, limit);
            if (T.All(done | lost))
            {
                break;
            }

            Iterations = T.Select(done, Iterations, Iterations + 1);
            Plan.Order.Solve(Matrix, right);
            Array.Clear(right, unknown, right.Length - unknown);
            T greatest = none;
            for (int i = 0; i < unknown; i++)
            {
                T next = pressure[i] + right[i];
                pressure[i] = T.Select(done, pressure[i], next);
                greatest = T.Max(greatest, T.Abs(next));
            }

            limit = PressureTolerance + (RelativeTolerance * greatest);
            (T change, T scale) = Steps();
            settled = T.Less(change, (Settled * scale) + startScale);
            lost |= T.Less(T.Of(0.5), T.Select(T.Less(change, T.Of(Beyond)), none, one));
            Step(iteration, done, settled, change, before);
            before = change;
        }

        return done;
    }

    /// <summary>Whether an answer keeps what was asked: mass, one-way parts, and no pressure below vacuum.</summary>
    /// <remarks>Why it does not, a solve of that point in <see cref="Real"/> says.</remarks>
    internal Mask<T> Sound()
    {
        T greatest = T.Of(0);
        for (int e = 0; e < Flow.Length; e++)
        {
            greatest = T.Max(greatest, T.Abs(Flow[e]));
        }

        T lowest = T.Of(0);
        for (int i = 0; i < Plan.Unknown; i++)
        {
            lowest = T.Min(lowest, PressureAt(i));
        }

        T tolerance = FlowTolerance(greatest);
        return T.Less(Imbalances(), tolerance)
            & T.Less(Trespass(), tolerance)
            & T.Less(T.Of(NetworkVerdict.Vacuum), lowest);
    }

    /// <summary>How far a flow may be off, m3/s: a billionth of the greatest, or of what a cold start begins with.</summary>
    internal T FlowTolerance(T greatest) => (MassTolerance * greatest) + startScale;

    /// <summary>Writes what each junction gains into Right and gives the greatest, m3/s.</summary>
    internal T Imbalances()
    {
        for (int i = 0; i < Right.Length; i++)
        {
            Right[i] = -Draw[i];
        }

        for (int e = 0; e < Flow.Length; e++)
        {
            Right[Plan.From[e]] -= Flow[e];
            Right[Plan.To[e]] += Flow[e];
        }

        T worst = T.Of(0);
        for (int i = 0; i < Plan.Unknown; i++)
        {
            worst = T.Max(worst, T.Abs(Right[i]));
        }

        return worst;
    }

    /// <summary>By how much a tabulated pump that refuses to go beyond its data runs outside them, m3/s.</summary>
    /// <remarks>Zero inside, for a pump that extends, and for one that its check valve holds shut.</remarks>
    internal T OutsideData(int link)
    {
        T none = T.Of(0);
        if (Plan.Links[link].Part is not PumpTablePart { Extend: false })
        {
            return none;
        }

        ref PumpTableLaw<T> law = ref Law<PumpTableLaw<T>>(link);
        T slack = Internal.Guard.EdgeTolerance * (law.End - law.Begin);
        T flow = Flow[link];
        T outside = T.Max(flow - law.End, law.Begin - flow);
        return T.Select(T.Less(flow, none) | T.Less(outside, slack), none, outside);
    }

    /// <summary>The greatest flow through a part that does not let it through, m3/s.</summary>
    internal T Trespass()
    {
        T worst = T.Of(0);
        foreach (LinkGroup<T> group in groups)
        {
            worst = group.Trespass(this, worst);
        }

        return worst;
    }

    /// <summary>Takes back all settings that differ from the description.</summary>
    internal void Reset()
    {
        if (!set)
        {
            return;
        }

        foreach (LinkGroup<T> group in groups)
        {
            group.Load();
        }

        for (int i = 0; i < Plan.Nodes.Length; i++)
        {
            given[i] = T.Of(Plan.Nodes[i].PressureSi);
            Draw[i] = T.Of(Plan.Nodes[i].DrawSi);
        }

        SetFluid(T.Of(Plan.Density), T.Of(Plan.Viscosity));
        set = false;
    }

    /// <inheritdoc />
    public void Dispose() => pool.Return(this);

    private void Start(bool warm)
    {
        T greatest = T.Of(0);
        foreach (LinkGroup<T> group in groups)
        {
            greatest = group.Start(this, warm, greatest);
        }

        startScale = SettledOfStart * greatest;
        if (!warm)
        {
            Array.Fill(Memory, T.Of(UsualRoot));
            Array.Clear(Pressure, 0, Plan.Unknown);
        }
    }

    /// <summary>The flows that a full step would give, into Free; the greatest change and the greatest flow.</summary>
    private (T Change, T Scale) Steps()
    {
        T change = T.Of(0);
        T scale = T.Of(0);
        int[] from = Plan.From;
        int[] to = Plan.To;
        for (int e = 0; e < Flow.Length; e++)
        {
            T next = Free[e] + (FromUp[e] * Right[from[e]]) - (ToDown[e] * Right[to[e]]);
            change = T.Max(change, T.Abs(next - Flow[e]));
            scale = T.Max(scale, T.Abs(next));
            Free[e] = next;
        }

        return (change, scale);
    }

    private void Step(int iteration, Mask<T> done, Mask<T> settled, T change, T before)
    {
        T one = T.Of(1);
        T part = iteration < FullSteps ? one : T.Select(settled | T.Less(change, 0.3 * before), one, T.Of(ShortStep));
        for (int e = 0; e < Flow.Length; e++)
        {
            T flow = Flow[e];

            // A full step takes the new flow itself, so that mass balances to the last digit.
            T next =
                iteration < FullSteps
                    ? Free[e]
                    : T.Select(T.Less(part, one), flow + (part * (Free[e] - flow)), Free[e]);
            Flow[e] = T.Select(done, flow, next);
        }
    }
}
