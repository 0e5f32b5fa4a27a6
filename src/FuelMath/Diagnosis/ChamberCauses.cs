using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The static flow of the injectors of one chamber.</summary>
internal sealed class OneInjectorFlowCause : CauseKind
{
    private const double MostFlow = 10;

    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.OneInjectorFlow;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Linear(
            new("c", "", "static flow of one chamber over the flow presumed, less one"),
            m => $"static flow of {Chamber(m.Chamber)} over the flow presumed",
            (_, p) => SiUnits.Ratio(p),
            zero: -1
        )
        {
            Lowest = _ => -1,
            Highest = _ => MostFlow - 1,
        },
    ];

    internal override bool IsOfOneChamber => true;

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Bench;

    internal override string NameFor(int chamber) => $"flow of the injector of {Chamber(chamber)}";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Chamber = model.Chamber, ChamberFlow = 1 + parameters[0] };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => (-0.95, 3);
}

/// <summary>Fuel that leaks into one chamber past a closed injector; the parameter is relative to its static flow.</summary>
internal sealed class OneInjectorLeakCause : CauseKind
{
    private const double MostLeak = 1;

    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.OneInjectorLeak;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Linear(
            new("k", "", "leak of one chamber over the static flow of its injector"),
            m => $"leak into {Chamber(m.Chamber)} at {Show.Bar(m.LeastPressure)}",
            (m, p) => SiUnits.MassFlow(p * m.StaticFlow)
        )
        {
            Lowest = _ => 0,
            Highest = _ => MostLeak,
        },
    ];

    internal override bool IsOfOneChamber => true;

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.Bench;

    internal override string NameFor(int chamber) => $"leak of the injector of {Chamber(chamber)}";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Chamber = model.Chamber, ChamberLeak = parameters[0] * model.StaticFlow };

    internal override (double Low, double High)? ScannedRange(CauseModel model) => (0, 0.5);
}
