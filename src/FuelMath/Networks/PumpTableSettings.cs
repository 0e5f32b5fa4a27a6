using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A pump whose rise is given by pieces over flow.</summary>
/// <param name="pieces">The pieces.</param>
/// <param name="extend">Whether its curve goes on straight beyond them.</param>
/// <param name="like">A flow of the curve, in whose unit it is refused to go beyond.</param>
internal sealed class PumpTableSettings(Piece[] pieces, bool extend, VolumeFlow like) : PumpSettings
{
    /// <summary>One straight piece before the first point, one for each interval, one straight piece after the last.</summary>
    internal readonly Piece[] Pieces = pieces;
    internal readonly bool Extend = extend;

    /// <summary>The pieces, one after the other.</summary>
    internal override int SettingCount => PieceTable.NumbersOfAPiece * Pieces.Length;

    internal override Piece[] HumpedCurve { get; } =
        pieces.Skip(2).Zip(pieces.Skip(1), (next, last) => next.C0 >= last.C0).Contains(true) ? pieces : [];

    /// <summary>It gives the rise of its curve.</summary>
    /// <inheritdoc />
    internal override Traced? LossWorking(in LossInputs at) =>
        -PumpTableWorking.Rise(at.Settings.Length == 0 ? Pieces : PieceTable.Read(at.Settings), at.Flow);

    internal override void Write(Span<double> settings) => PieceTable.Write(Pieces, settings);

    internal override string? WhyUnlike(LawSettings network) =>
        network is not PumpTableSettings old ? "be a power law"
        : Extend != old.Extend ? "treat what lies beyond the ends of its points"
        : Pieces.Length > old.Pieces.Length ? $"have no more than {old.Pieces.Length - 1} points"
        : HumpedCurve.Length > 0 ? "have a curve that falls throughout"
        : null;

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, PumpTableLaw<T>>(ends, parts);

    internal override void CheckData(NetworkWork<Real> work, int link)
    {
        if (!(work.OutsideData(link).Value > 0))
        {
            return;
        }

        ref readonly PumpTableLaw<Real> law = ref work.Law<PumpTableLaw<Real>>(link);
        string name = work.Plan.Links[link].Name;
        throw PartMath.Outside($"pump '{name:part}'", like, work.Flow[link].Value, law.Begin.Value, law.End.Value);
    }

    /// <inheritdoc />
    internal override PumpSettings Set(int inParallel, int inSeries)
    {
        (double m, double n) = (inParallel, inSeries);
        return m * n == 1
            ? this
            : new PumpTableSettings(
                Array.ConvertAll(
                    Pieces,
                    p => new Piece(m * p.X0, n * p.C0, n * p.C1 / m, n * p.C2 / (m * m), n * p.C3 / (m * m * m))
                ),
                Extend,
                like
            );
    }
}
