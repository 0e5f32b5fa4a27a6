namespace FuelMath.Beliefs;

/// <summary>What may be wrong when the mixture is not the one intended.</summary>
public enum BeliefCause
{
    /// <summary>Nothing: the controller was told the truth.</summary>
    Nothing,

    /// <summary>The static flow of the injectors: a constant factor.</summary>
    Flow,

    /// <summary>The dead time of the injectors: most at short pulses.</summary>
    DeadTime,

    /// <summary>Flow and dead time.</summary>
    FlowAndDeadTime,

    /// <summary>The differential pressure, by the same difference everywhere.</summary>
    Pressure,

    /// <summary>
    /// The reference of the regulator: a share of the manifold pressure that it does not follow, though the controller
    /// reckons with it, or the other way round.
    /// </summary>
    PressureReference,

    /// <summary>The air model, by a constant factor.</summary>
    Air,

    /// <summary>The air model, by a factor that runs straight over manifold pressure.</summary>
    AirOverLoad,

    /// <summary>The air model, by a factor that runs straight over speed.</summary>
    AirOverSpeed,
}
