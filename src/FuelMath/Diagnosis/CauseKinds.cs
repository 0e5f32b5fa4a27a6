namespace FuelMath;

/// <summary>The kinds of causes.</summary>
internal static class CauseKinds
{
    internal static int Parameters(MixtureCause cause) =>
        cause switch
        {
            MixtureCause.NoError => 0,
            MixtureCause.InjectorFlowAndDeadTime or MixtureCause.AirModelOverLoad or MixtureCause.AirModelOverSpeed =>
                2,
            _ => 1,
        };

    /// <summary>Whether it concerns one chamber.</summary>
    internal static bool IsOfOneChamber(MixtureCause cause) =>
        cause is MixtureCause.OneInjectorFlow or MixtureCause.OneInjectorLeak;

    internal static bool IsPressure(MixtureCause cause) =>
        cause is MixtureCause.RailPressure or MixtureCause.PressureReference;

    internal static bool IsInjector(MixtureCause cause) =>
        cause is MixtureCause.InjectorFlow or MixtureCause.DeadTime or MixtureCause.InjectorFlowAndDeadTime
        || IsOfOneChamber(cause);

    internal static bool IsFuel(MixtureCause cause) =>
        cause is MixtureCause.FuelDensity or MixtureCause.StoichiometricRatio;

    internal static bool IsShapeOfAir(MixtureCause cause) =>
        cause is MixtureCause.AirModelOverLoad or MixtureCause.AirModelOverSpeed;

    /// <summary>
    /// Whether one cause contains another as a special case: a factor on air, density or stoichiometric ratio acts as
    /// one on flow.
    /// </summary>
    internal static bool Contains(MixtureCause whole, MixtureCause part) =>
        part == MixtureCause.NoError
            ? whole != MixtureCause.NoError
            : whole switch
            {
                MixtureCause.InjectorFlowAndDeadTime => part == MixtureCause.DeadTime || IsFactor(part),
                MixtureCause.AirModelOverLoad or MixtureCause.AirModelOverSpeed => IsFactor(part),
                _ => false,
            };

    /// <summary>Whether it is one factor for all readings.</summary>
    internal static bool IsFactor(MixtureCause cause) =>
        cause is MixtureCause.InjectorFlow or MixtureCause.AirModel || IsFuel(cause);
}
