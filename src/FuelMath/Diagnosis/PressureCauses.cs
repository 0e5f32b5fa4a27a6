using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// The pressure in the rail, by the same difference everywhere; the parameter is relative to the least one presumed.
/// </summary>
internal sealed class RailPressureCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.RailPressure;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Linear(
            new("e", "", "pressure error over the least pressure presumed"),
            _ => "rail pressure less the one presumed",
            (m, p) => SiUnits.Pressure(p * m.LeastPressure)
        ),
    ];

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Gauge;

    internal override string NameFor(int chamber) => "rail pressure";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Pressure = parameters[0] * model.LeastPressure };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => (-0.95, 3);
}

/// <summary>A share of the manifold's gauge pressure that the rail does not follow.</summary>
internal sealed class PressureReferenceCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.PressureReference;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Linear(
            new("s", "", "share of the manifold's gauge pressure that the rail misses"),
            _ => "share of the manifold's gauge pressure that the rail misses",
            (_, p) => SiUnits.Ratio(p)
        ),
    ];

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Gauge;

    internal override string Missing => "needs observations at a manifold pressure other than ambient";

    internal override string NameFor(int chamber) => "reference of the regulator";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Reference = parameters[0] };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => (-2, 2);
}
