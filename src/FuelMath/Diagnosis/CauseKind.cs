using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A kind of cause: the one place that says which input it changes, how it is named, estimated and decided. The fit,
/// the ranking and the tests treat all kinds alike.
/// </summary>
internal abstract class CauseKind
{
    /// <summary>All kinds, in the order of <see cref="MixtureDiagnosis.Cause"/>.</summary>
    internal static ImmutableArray<CauseKind> All { get; } =
    [
        new NoErrorCause(),
        new InjectorFlowCause(),
        new DeadTimeCause(),
        new InjectorFlowAndDeadTimeCause(),
        new RailPressureCause(),
        new PressureReferenceCause(),
        new FuelDensityCause(),
        new StoichiometricRatioCause(),
        new AirModelCause(),
        AirModelSlopeCause.OverLoad(),
        AirModelSlopeCause.OverSpeed(),
        new OneInjectorFlowCause(),
        new OneInjectorLeakCause(),
    ];

    /// <summary>The kind of a cause.</summary>
    internal static CauseKind Of(MixtureDiagnosis.Cause cause) => All[(int)cause];

    internal abstract MixtureDiagnosis.Cause Cause { get; }

    internal abstract ImmutableArray<CauseParameter> Parameters { get; }

    /// <summary>Whether it concerns one chamber.</summary>
    internal virtual bool IsOfOneChamber => false;

    /// <summary>Whether it is one factor for all readings.</summary>
    internal virtual bool IsOneFactor => false;

    /// <summary>The measurement that decides it; null when there is none.</summary>
    internal virtual MixtureDiagnosis.DecidingTestKind? DecidedBy => null;

    /// <summary>What is missing where the readings do not show it.</summary>
    internal virtual string Missing => "changes none of these readings";

    /// <summary>The cause in words; the chamber is counted from 0, and -1 for a cause of all.</summary>
    internal abstract string NameFor(int chamber);

    /// <summary>Whether it contains another one as a special case.</summary>
    internal virtual bool Contains(CauseKind part) => part is NoErrorCause;

    /// <summary>The change of inputs by the parameters, in a state.</summary>
    internal abstract InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters)
        where T : struct, IScalar<T>;

    /// <summary>
    /// The range of the last parameter that is scanned before the fit; null where the logarithm is linear in the
    /// parameters.
    /// </summary>
    internal virtual (double Low, double High)? ScannedRange(CauseModel model) => null;

    /// <summary>A chamber in words; counted from 0.</summary>
    protected static string Chamber(int chamber) =>
        string.Create(CultureInfo.InvariantCulture, $"chamber {chamber + 1}");
}

/// <summary>Everything is as presumed.</summary>
internal sealed class NoErrorCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.NoError;

    internal override ImmutableArray<CauseParameter> Parameters => [];

    internal override string NameFor(int chamber) => "no error";

    internal override bool Contains(CauseKind part) => false;

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) => default;
}
