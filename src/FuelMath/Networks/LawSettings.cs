using System.Runtime.Intrinsics;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A law with its settings, in plain SI numbers: what a part tells the solver.</summary>
/// <remarks>
/// A new law answers here whatever is asked of it, so that nothing outside looks at which law it is. What is said of a
/// workspace is asked by <see cref="Real"/> alone, after a solve. As written here the answers are those of an open
/// passage.
/// </remarks>
internal abstract class LawSettings
{
    /// <summary>What two parts must have alike to be of one law: those of one law share a group.</summary>
    internal virtual object Law => GetType();

    /// <summary>A group of this law, for any scalar. Asked once for each group of a workspace, never in a solve.</summary>
    internal abstract LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts)
        where T : struct, IScalar<T>;

    /// <summary>The same; plain numbers are computed for several links at once where that pays.</summary>
    internal LinkGroup<T> FastestGroup<T>(Ends[] ends, LawSettings[] parts)
        where T : struct, IScalar<T> =>
        typeof(T) != typeof(Real) || ends.Length < PackedFrom ? Group<T>(ends, parts)
        : Vector512.IsHardwareAccelerated ? (LinkGroup<T>)(object)Packed<WideLane>(ends, parts)
        : (LinkGroup<T>)(object)Packed<Lane>(ends, parts);

    /// <summary>From how many links of plain numbers on it pays to compute several at once; never if it can't be.</summary>
    private protected virtual int PackedFrom => int.MaxValue;

    /// <summary>A group of this law that computes several links at once.</summary>
    private protected virtual LinkGroup<Real> Packed<TLane>(Ends[] ends, LawSettings[] parts)
        where TLane : struct, ILane<TLane> => Group<Real>(ends, parts);

    /// <summary>The same with a check valve in each part or without.</summary>
    private protected static LinkGroup<Real> PackedOf<TOne, TLane, TSeveral>(
        Ends[] ends,
        LawSettings[] parts,
        bool oneWay
    )
        where TOne : struct, ILinkLaw<TOne, Real>
        where TLane : struct, ILane<TLane>
        where TSeveral : struct, ILinkLaw<TSeveral, TLane> =>
        oneWay
            ? new PackedGroup<OneWayLaw<Real, TOne>, TLane, OneWayLaw<TLane, TSeveral>>(ends, parts)
            : new PackedGroup<TOne, TLane, TSeveral>(ends, parts);

    /// <summary>A group of a law, with a check valve in each part or without.</summary>
    private protected static LinkGroup<T> GroupOf<T, TLaw>(Ends[] ends, LawSettings[] parts, bool oneWay)
        where T : struct, IScalar<T>
        where TLaw : struct, ILinkLaw<TLaw, T> =>
        oneWay ? new LinkGroup<T, OneWayLaw<T, TLaw>>(ends, parts) : new LinkGroup<T, TLaw>(ends, parts);

    /// <summary>How many numbers of it may be set from point to point: what <see cref="ILinkLaw{TLaw, T}.Set"/> takes.</summary>
    internal virtual int SettingCount => 0;

    /// <summary>What these numbers are for.</summary>
    internal virtual SettingKind Settable => SettingKind.None;

    /// <summary>Writes its own settings, as many as it has.</summary>
    internal virtual void Write(Span<double> settings) { }

    /// <summary>Whether it lets nothing through backwards.</summary>
    internal virtual bool IsOneWay => false;

    /// <summary>Whether it surely joins its ends, while something flows where it is one-way.</summary>
    internal virtual bool Joins => true;

    /// <summary>Whether it is a pump that runs.</summary>
    internal virtual bool IsPump => false;

    /// <summary>Whether it sprays into a space: a node of fixed pressure, whose height does not matter.</summary>
    internal virtual bool NeedsSpace => false;

    /// <summary>Whether a higher pressure behind it opens it further.</summary>
    internal virtual bool IsOpenedFromBehind => false;

    /// <summary>The curve of a pump whose rise does not fall throughout, so that it may meet a network in several points; else empty.</summary>
    internal virtual Piece[] HumpedCurve => [];

    /// <summary>The node whose pressure it holds whatever flows; -1 where there is none.</summary>
    /// <param name="from">Its upstream node.</param>
    /// <param name="to">Its downstream node.</param>
    internal virtual int FlatlyHeld(int from, int to) => -1;

    /// <summary>To what it fills a place behind it while nothing flows, Pa; minus infinity where it fills nothing.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">Its place.</param>
    /// <param name="ahead">The pressure ahead of it, at elevation zero, Pa.</param>
    /// <remarks>That is where its law just opens, asked at the greatest pressure that it could fill to by itself.</remarks>
    internal virtual double FilledTo(NetworkWork<Real> work, int link, double ahead)
    {
        Balance<Real> still = work.BalanceAt(link, default, new Real(ahead), new Real(ahead));
        return still.Down.Value > 0
            ? ((still.Up.Value * ahead) - still.Loss.Number.Value) / still.Down.Value
            : double.NegativeInfinity;
    }

    /// <summary>By how much the pressures at its ends miss what its law says, Pa; none where they hold it shut.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">Its place.</param>
    /// <param name="noFlow">A flow that counts as none, m³/s.</param>
    internal virtual double ErrorIn(NetworkWork<Real> work, int link, double noFlow)
    {
        if (!work.IsOpen(link, noFlow))
        {
            return Math.Max(0, work.SurplusAt(link, default).Pressure.Value);
        }

        (Real pressure, Real slope) = work.SurplusAt(link, work.Flow[link]);
        return Math.Abs(pressure.Value) * Math.Min(1, Stiff.JudgedByFlow / Math.Max(slope.Value, double.Epsilon));
    }

    /// <summary>The pressure that it takes from what flows in it, step by step; null where its law has no steps to show.</summary>
    internal virtual Traced? LossWorking(in LossInputs at) => null;

    /// <summary>Refuses a flow for which its law was never measured; asked where it said that a flow trespasses.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">Its place.</param>
    /// <param name="tolerance">By how much a flow may be off, m³/s.</param>
    /// <exception cref="OutsideTableException">It was not.</exception>
    internal virtual void CheckTrespass(NetworkWork<Real> work, int link, double tolerance) { }

    /// <summary>Refuses a state outside its data, once all else holds.</summary>
    /// <exception cref="OutsideTableException">It lies outside.</exception>
    internal virtual void CheckData(NetworkWork<Real> work, int link) { }
}
