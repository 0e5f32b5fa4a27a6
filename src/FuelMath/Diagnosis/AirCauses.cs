using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The air model, by one factor.</summary>
internal sealed class AirModelCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.AirModel;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Factor(
            new("ln a", "", "logarithm of air over the air reckoned with"),
            "air over the air that the controller reckons with"
        ),
    ];

    internal override bool IsOneFactor => true;

    internal override string NameFor(int chamber) => "air model";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Air = T.Exp(parameters[0]) };
}

/// <summary>The air model, by a factor whose logarithm is linear in manifold pressure or in speed.</summary>
internal sealed class AirModelSlopeCause : CauseKind
{
    private readonly string over;
    private readonly Func<ObservedState, double> axis;
    private readonly Func<CauseModel, (double Low, double High)> range;

    private AirModelSlopeCause(
        MixtureDiagnosis.Cause cause,
        string over,
        string quantity,
        Func<ObservedState, double> axis,
        Func<CauseModel, (double Low, double High)> range
    )
    {
        (Cause, this.over, this.axis, this.range) = (cause, over, axis, range);
        Missing = $"needs observations at different {quantity}s";
        Parameters =
        [
            new CauseParameter.Factor(
                new("ln a0", "", "the same at the low end"),
                $"air over the air reckoned with at the lowest {quantity}"
            ),
            new CauseParameter.Factor(
                new("ln a1", "", "the same at the high end"),
                $"air over the air reckoned with at the highest {quantity}"
            ),
        ];
    }

    internal override MixtureDiagnosis.Cause Cause { get; }

    internal override ImmutableArray<CauseParameter> Parameters { get; }

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.AnotherPoint;

    internal override string Missing { get; }

    internal static AirModelSlopeCause OverLoad() =>
        new(MixtureDiagnosis.Cause.AirModelOverLoad, "load", "manifold pressure", s => s.Manifold, m => m.Load);

    internal static AirModelSlopeCause OverSpeed() =>
        new(MixtureDiagnosis.Cause.AirModelOverSpeed, "speed", "speed", s => s.Speed, m => m.Speed);

    internal override string NameFor(int chamber) => $"air model over {over}";

    internal override bool Contains(CauseKind part) => part is NoErrorCause || part.IsOneFactor;

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters)
    {
        (double low, double high) = range(model);
        double share = high > low ? (axis(state) - low) / (high - low) : 0;
        return new() { Air = T.Exp(((1 - share) * parameters[0]) + (share * parameters[1])) };
    }
}
