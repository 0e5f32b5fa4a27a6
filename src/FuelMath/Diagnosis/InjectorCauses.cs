using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The static flow of all injectors, by one factor.</summary>
internal sealed class InjectorFlowCause : CauseKind
{
    internal static CauseParameter Flow { get; } =
        new CauseParameter.Factor(
            new("ln f", "", "logarithm of static flow over the flow presumed"),
            "static flow over the flow presumed"
        );

    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.InjectorFlow;

    internal override ImmutableArray<CauseParameter> Parameters { get; } = [Flow];

    internal override bool IsOneFactor => true;

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Bench;

    internal override string NameFor(int chamber) => "injector flow";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Flow = T.Exp(parameters[0]) };
}

/// <summary>The dead time of all injectors, by one difference.</summary>
internal sealed class DeadTimeCause : CauseKind
{
    /// <summary>In ms; no dead time is below zero.</summary>
    internal static CauseParameter Difference { get; } =
        new CauseParameter.Linear(
            new("dt", "ms", "dead time less the one presumed"),
            _ => "dead time less the one presumed",
            (_, p) => SiUnits.Duration(p * 1e-3)
        )
        {
            Lowest = m => -m.LeastDeadTime * 1e3,
        };

    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.DeadTime;

    internal override ImmutableArray<CauseParameter> Parameters { get; } = [Difference];

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Bench;

    internal override string NameFor(int chamber) => "dead time";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { DeadTime = parameters[0] * 1e-3 };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => Possible(model);

    /// <summary>The differences, in ms, that leave every effective width positive.</summary>
    internal static (double Low, double High) Possible(CauseModel model)
    {
        double longest = model.Readings.Min(r => r.Widths.Max()) * 1e3;
        return (-longest, longest);
    }
}

/// <summary>Static flow and dead time of all injectors: another kind of injector.</summary>
internal sealed class InjectorFlowAndDeadTimeCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.InjectorFlowAndDeadTime;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [InjectorFlowCause.Flow, DeadTimeCause.Difference];

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Bench;

    internal override string Missing => "needs observations at different pulse widths";

    internal override string NameFor(int chamber) => "injector flow and dead time";

    internal override bool Contains(CauseKind part) => part is DeadTimeCause or NoErrorCause || part.IsOneFactor;

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Flow = T.Exp(parameters[0]), DeadTime = parameters[1] * 1e-3 };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => DeadTimeCause.Possible(model);
}
