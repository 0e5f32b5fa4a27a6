using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The density of the fuel, by one factor.</summary>
internal sealed class FuelDensityCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.FuelDensity;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Factor(
            new("ln d", "", "logarithm of fuel density over the density presumed"),
            "fuel density over the density presumed"
        ),
    ];

    internal override bool IsOneFactor => true;

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.FuelSample;

    internal override string NameFor(int chamber) => "fuel density";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Density = T.Exp(parameters[0]) };
}

/// <summary>The stoichiometric ratio of the fuel, by one factor: another content of alcohol.</summary>
internal sealed class StoichiometricRatioCause : CauseKind
{
    internal override MixtureDiagnosis.Cause Cause => MixtureDiagnosis.Cause.StoichiometricRatio;

    internal override ImmutableArray<CauseParameter> Parameters { get; } =
    [
        new CauseParameter.Factor(
            new("ln r", "", "logarithm of the stoichiometric ratio over the one presumed"),
            "stoichiometric ratio over the one presumed"
        ),
    ];

    internal override bool IsOneFactor => true;

    internal override MixtureDiagnosis.DecidingTestKind? DecidedBy => MixtureDiagnosis.DecidingTestKind.FuelSample;

    internal override string NameFor(int chamber) => "stoichiometric ratio of the fuel";

    internal override InputChange<T> Change<T>(CauseModel model, ObservedState state, T[] parameters) =>
        new() { Stoichiometric = T.Exp(parameters[0]) };
}
