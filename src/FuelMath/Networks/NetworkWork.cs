using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Everything that changes while a prepared network is solved, for one scalar: settings, pressures, flows. One thread
/// at a time; rented from <see cref="NetworkPlan.Rent{T}"/> and returned by disposing of it.
/// </summary>
/// <remarks>
/// All numbers are SI, pressures gauge. Set what differs from the description, call <see cref="Solve(bool)"/>, check
/// <see cref="Sound"/> and <see cref="OutsideData"/>, then read. A second <see cref="Solve(bool)"/> on the same workspace may
/// be a warm start from the first. Nothing is allocated. For a lane that is not sound, a solve in <see cref="Real"/>
/// and <see cref="NetworkVerdict.State"/> give the reason.
/// </remarks>
internal sealed partial class NetworkWork<T> : IDisposable
    where T : struct, IScalar<T>
{
    private readonly WorkPool<T> pool;
    private readonly LinkGroup<T>[] groups;
    private readonly T[] head;
    private readonly T[] height;
    private readonly T[] given;
    private T density;
    private T viscosity;
    private T startScale;
    private bool set;
    private object? origin;

    /// <summary>Makes a workspace.</summary>
    /// <param name="plan">The network.</param>
    /// <param name="pool">Where it goes when it is disposed of.</param>
    /// <param name="linkByLink">Whether each law is computed for one link at a time, to compare with.</param>
    internal NetworkWork(NetworkPlan plan, WorkPool<T> pool, bool linkByLink = false)
    {
        Plan = plan;
        this.pool = pool;
        int nodes = plan.Nodes.Length;
        int links = plan.Links.Length;
        groups = [.. plan.Groups.Select(g => GroupOf(plan, g, linkByLink))];
        (Pressure, Right, Draw) = (Room(nodes), Room(nodes), Room(nodes));
        (head, given, height) = (Room(nodes), Room(nodes), Room(nodes));
        (Flow, Free, FromUp, ToDown, Memory) = (Room(links), Room(links), Room(links), Room(links), Room(links));
        (First, Error, lastChange) = (Room(links), Room(links), Room(links));
        (pressureBefore, flowBefore, memoryBefore) = (Room(nodes), Room(links), Room(links));
        Matrix = Room(plan.Order.Slots + 1);
        Settings = Room(plan.MostSettings);
        Notes = new StateNotes(plan);
        set = true;
        Reset();
    }

    internal NetworkPlan Plan { get; }

    // Pressures at elevation zero.
    internal readonly T[] Pressure;

    /// <summary>Volume flow of each link in the equations, m³/s.</summary>
    internal readonly T[] Flow;

    /// <summary>The roots of implicit laws, one for each link.</summary>
    internal readonly T[] Memory;
    internal readonly T[] Right;
    internal readonly T[] Matrix;
    internal readonly T[] Free;
    internal readonly T[] FromUp;
    internal readonly T[] ToDown;
    internal readonly T[] Draw;

    /// <summary>Room for the settings of any link.</summary>
    internal readonly T[] Settings;

    /// <summary>Each law's own scale of flow.</summary>
    internal readonly T[] First;

    /// <summary>The contribution of each link to <see cref="WorstError"/>.</summary>
    internal readonly T[] Error;

    /// <summary>The largest pressure residual of the present linearization, closed parts included, Pa.</summary>
    internal T WorstPlain;

    /// <summary>
    /// The state from which all flows and roots were just copied, until they change; else null. It allows values of
    /// laws to be reused for the next points that start there.
    /// </summary>
    internal object? Origin => origin;

    /// <summary>Marks all flows and roots as just copied from a state.</summary>
    internal void StartsAt(object state) => origin = state;

    /// <summary>The notes of the last verdict.</summary>
    internal StateNotes Notes { get; }

    /// <summary>Iterations of the last solve.</summary>
    internal T Iterations { get; private set; }

    /// <summary>The gauge pressure below which there is none, Pa: at sea level, unless it is set.</summary>
    internal T Vacuum { get; private set; }

    /// <summary>Sets the ambient pressure, Pa absolute, of which no pressure can be further below.</summary>
    internal void SetAmbient(T pressure)
    {
        set = true;
        Vacuum = -pressure;
    }

    /// <summary>The flow that counts as zero where nothing flows.</summary>
    internal T StartScale => startScale;

    /// <summary>Copies the results of another workspace.</summary>
    internal void TakeOver(T iterations, T scale) => (Iterations, startScale) = (iterations, scale);

    /// <summary>The largest pressure residual of the last solve, Pa: see <see cref="Stiff.JudgedByFlow"/>.</summary>
    internal T WorstError { get; private set; }

    /// <summary>Sets the height of a node, m, which takes effect with the next <see cref="SetFluid"/>.</summary>
    internal void SetHeight(int node, T meters)
    {
        set = true;
        height[node] = meters;
    }

    /// <summary>Sets the fluid of all links: density in kg/m³, dynamic viscosity in Pa s.</summary>
    internal void SetFluid(T newDensity, T dynamicViscosity)
    {
        set = true;
        density = newDensity;
        viscosity = dynamicViscosity;
        for (int i = 0; i < head.Length; i++)
        {
            head[i] = Hydrostatics.ColumnPressure(newDensity, Hydrostatics.StandardGravity, height[i]);
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

    /// <summary>Sets the pressure of a junction for a warm start, Pa gauge.</summary>
    internal void SetUnknown(int node, T gauge) => Pressure[node] = gauge + head[node];

    /// <summary>Sets what is drawn at a junction, m³/s.</summary>
    internal void SetDraw(int node, T flow)
    {
        set = true;
        Draw[node] = flow;
    }

    /// <summary>Sets a link: the settings of its law, in the law's order.</summary>
    internal void Set(int link, ReadOnlySpan<T> settings)
    {
        set = true;
        (int group, int index) = Plan.Place[link];
        groups[group].Set(this, index, settings);
    }

    private static T[] Room(int count) => AlignedArrays.Of<T>(count, Unsafe.SizeOf<T>());

    private static LinkGroup<T> GroupOf(NetworkPlan plan, int[] links, bool linkByLink)
    {
        Ends[] ends = [.. links.Select(plan.EndsOf)];
        LawSettings[] parts = [.. links.Select(i => plan.Links[i].Law)];
        return linkByLink ? parts[0].Group<T>(ends, parts) : parts[0].FastestGroup<T>(ends, parts);
    }

    /// <summary>The same settings for all lanes.</summary>
    internal void Set(int link, double[] settings)
    {
        Span<T> alike = Settings.AsSpan(0, settings.Length);
        for (int k = 0; k < alike.Length; k++)
        {
            alike[k] = T.Of(settings[k]);
        }

        Set(link, (ReadOnlySpan<T>)alike);
    }

    /// <summary>The gauge pressure of a node, Pa.</summary>
    internal T PressureAt(int node) => Pressure[node] - head[node];

    /// <summary>The law of a link.</summary>
    internal ref readonly TLaw Law<TLaw>(int link)
        where TLaw : struct, ILinkLaw<TLaw, T>
    {
        (int group, int index) = Plan.Place[link];
        return ref ((LinkGroup<T, TLaw>)groups[group]).Law(index);
    }

    /// <summary>The equation of a link at a flow and two pressures, Pa at elevation zero.</summary>
    internal Balance<T> BalanceAt(int link, T flow, T up, T down)
    {
        (int group, int index) = Plan.Place[link];
        return groups[group].At(this, index, flow, up, down);
    }

    /// <summary>The pressure residual of a link at a flow, Pa, and the slope of its law there, Pa s/m³.</summary>
    internal (T Pressure, T Slope) SurplusAt(int link, T flow)
    {
        T up = Pressure[Plan.From[link]];
        T down = Pressure[Plan.To[link]];
        Balance<T> law = BalanceAt(link, flow, up, down);
        return ((law.Up * up) - (law.Down * down) - law.Loss.Number, law.Loss.Rate);
    }

    /// <summary>The surroundings of a link.</summary>
    internal Surroundings<T> Around(in Ends ends) => new(density, viscosity, head[ends.From], head[ends.To]);

    /// <summary>Resets all settings that differ from the description.</summary>
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

        foreach ((int link, double[] settings) in Plan.Given)
        {
            Set(link, settings);
        }

        for (int i = 0; i < Plan.Nodes.Length; i++)
        {
            given[i] = T.Of(Plan.Nodes[i].PressureSi);
            Draw[i] = T.Of(Plan.Nodes[i].DrawSi);
            height[i] = T.Of(Plan.Nodes[i].ElevationSi);
        }

        SetFluid(T.Of(Plan.Density), T.Of(Plan.Viscosity));
        Vacuum = T.Of(NetworkVerdict.Vacuum);
        set = false;
    }

    /// <inheritdoc />
    public void Dispose() => pool.Return(this);
}
