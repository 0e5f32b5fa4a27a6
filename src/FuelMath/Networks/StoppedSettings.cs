using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A pump that stands still.</summary>
internal sealed class StoppedSettings : LawSettings
{
    internal override bool IsOneWay => true;

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, StoppedLaw<T>>(ends, parts);

    internal override double FilledTo(NetworkWork<Real> work, int link, double ahead) => double.NegativeInfinity;

    internal override double ErrorIn(NetworkWork<Real> work, int link, double noFlow) => 0;
}
