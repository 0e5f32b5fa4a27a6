namespace FuelMath;

/// <summary>What may be wrong when the mixture is not the one intended: one input of the prediction that differs.</summary>
public enum MixtureCause
{
    /// <summary>Nothing: everything is as it was told.</summary>
    NoError,

    /// <summary>The static flow of all injectors, by one factor.</summary>
    InjectorFlow,

    /// <summary>The dead time of all injectors, by one difference.</summary>
    DeadTime,

    /// <summary>Static flow and dead time of all injectors: another kind of injector.</summary>
    InjectorFlowAndDeadTime,

    /// <summary>
    /// The pressure in the rail, by the same difference everywhere: it changes flow by the law of the rating and dead time by
    /// its table.
    /// </summary>
    RailPressure,

    /// <summary>
    /// The reference of the regulator: a share of the manifold's gauge pressure that the rail does not follow, though it was
    /// told to, or follows, though it was told fixed. A hose that is off is a share of 100 %.
    /// </summary>
    PressureReference,

    /// <summary>The density of the fuel, by one factor.</summary>
    FuelDensity,

    /// <summary>The stoichiometric ratio of the fuel, by one factor: another share of alcohol.</summary>
    StoichiometricRatio,

    /// <summary>The air model, by one factor.</summary>
    AirModel,

    /// <summary>The air model, by a factor whose logarithm runs straight over manifold pressure.</summary>
    AirModelOverLoad,

    /// <summary>The air model, by a factor whose logarithm runs straight over speed.</summary>
    AirModelOverSpeed,

    /// <summary>The static flow of the injectors of one chamber: weak, blocked, or more than the others.</summary>
    OneInjectorFlow,

    /// <summary>Fuel that leaks into one chamber past a shut injector, all the time.</summary>
    OneInjectorLeak,
}
