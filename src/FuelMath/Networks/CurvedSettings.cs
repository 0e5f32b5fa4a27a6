using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A round passage that is bent all along its length.</summary>
internal sealed class CurvedSettings(
    double length,
    double bore,
    double roughness,
    double lossCoefficient,
    double coilDiameter
) : RoundSettings(length, bore, roughness, lossCoefficient)
{
    /// <summary>Bore over the diameter of the curve of the center line.</summary>
    internal readonly double Curvature = bore / coilDiameter;

    /// <inheritdoc />
    internal override Traced? LossWorking(in LossInputs at) => LossWorking(at, Bore / Curvature);

    /// <summary>The greatest Reynolds number of the law.</summary>
    internal double GreatestReynolds => CurvedFriction.GreatestReynoldsTimesSquare / (Curvature * Curvature);

    /// <inheritdoc />
    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, CurvedPipeLaw<T>>(ends, parts);

    /// <inheritdoc />
    internal override void CheckTrespass(NetworkWork<Real> work, int link, double tolerance)
    {
        ref readonly CurvedPipeLaw<Real> law = ref work.Law<CurvedPipeLaw<Real>>(link);
        if (work.Trespass(link).Value > tolerance)
        {
            double reynolds = law.ReynoldsAt(work.Flow[link]).Value;
            throw new OutsideTableException(
                $"friction of curved pipe '{work.Plan.Links[link].Name:part}'",
                "Reynolds number",
                reynolds,
                0,
                GreatestReynolds,
                ""
            );
        }
    }
}
