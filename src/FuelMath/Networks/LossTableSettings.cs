using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A measured loss over flow, and the fluid of the readings.</summary>
internal sealed class LossTableSettings(
    string name,
    Piece[] pieces,
    VolumeFlow like,
    double density,
    double kinematicViscosity
) : LawSettings
{
    /// <summary>One straight piece before the first point, one for each interval, one straight piece after the last.</summary>
    internal readonly Piece[] Pieces = pieces;

    /// <summary>kg/m³.</summary>
    internal readonly double Density = density;

    /// <summary>m²/s.</summary>
    internal readonly double KinematicViscosity = kinematicViscosity;

    /// <inheritdoc />
    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, LossTableLaw<T>>(ends, parts);

    /// <inheritdoc />
    internal override void CheckTrespass(NetworkWork<Real> work, int link, double tolerance) =>
        CheckFlow(work.Flow[link].Value, work.Law<LossTableLaw<Real>>(link).GreatestFlow.Value, tolerance);

    /// <summary>Refuses a flow beyond the last reading, converted to the fluid.</summary>
    /// <exception cref="OutsideTableException">It lies beyond.</exception>
    internal void CheckFlow(double flow, double greatest, double tolerance)
    {
        if (!(Math.Abs(flow) <= (greatest * (1 + Guard.EdgeTolerance)) + tolerance))
        {
            throw PartMath.Outside($"loss of '{name:part}'", like, Math.Abs(flow), 0, greatest);
        }
    }
}
