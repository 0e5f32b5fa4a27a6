namespace FuelMath;

/// <summary>The kinds of causes.</summary>
internal static class CauseKinds
{
    internal static int Parameters(MixtureDiagnosis.Cause cause) =>
        cause switch
        {
            MixtureDiagnosis.Cause.NoError => 0,
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime
            or MixtureDiagnosis.Cause.AirModelOverLoad
            or MixtureDiagnosis.Cause.AirModelOverSpeed => 2,
            _ => 1,
        };

    /// <summary>Whether it concerns one chamber.</summary>
    internal static bool IsOfOneChamber(MixtureDiagnosis.Cause cause) =>
        cause is MixtureDiagnosis.Cause.OneInjectorFlow or MixtureDiagnosis.Cause.OneInjectorLeak;

    internal static bool IsPressure(MixtureDiagnosis.Cause cause) =>
        cause is MixtureDiagnosis.Cause.RailPressure or MixtureDiagnosis.Cause.PressureReference;

    internal static bool IsInjector(MixtureDiagnosis.Cause cause) =>
        cause
            is MixtureDiagnosis.Cause.InjectorFlow
                or MixtureDiagnosis.Cause.DeadTime
                or MixtureDiagnosis.Cause.InjectorFlowAndDeadTime
        || IsOfOneChamber(cause);

    internal static bool IsFuel(MixtureDiagnosis.Cause cause) =>
        cause is MixtureDiagnosis.Cause.FuelDensity or MixtureDiagnosis.Cause.StoichiometricRatio;

    internal static bool IsShapeOfAir(MixtureDiagnosis.Cause cause) =>
        cause is MixtureDiagnosis.Cause.AirModelOverLoad or MixtureDiagnosis.Cause.AirModelOverSpeed;

    /// <summary>
    /// Whether one cause contains another as a special case: a factor on air, density or stoichiometric ratio acts as
    /// one on flow.
    /// </summary>
    internal static bool Contains(MixtureDiagnosis.Cause whole, MixtureDiagnosis.Cause part) =>
        part == MixtureDiagnosis.Cause.NoError
            ? whole != MixtureDiagnosis.Cause.NoError
            : whole switch
            {
                MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => part == MixtureDiagnosis.Cause.DeadTime
                    || IsFactor(part),
                MixtureDiagnosis.Cause.AirModelOverLoad or MixtureDiagnosis.Cause.AirModelOverSpeed => IsFactor(part),
                _ => false,
            };

    /// <summary>Whether it is one factor for all readings.</summary>
    internal static bool IsFactor(MixtureDiagnosis.Cause cause) =>
        cause is MixtureDiagnosis.Cause.InjectorFlow or MixtureDiagnosis.Cause.AirModel || IsFuel(cause);
}
