namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>The possible causes of an unintended mixture: one input of the prediction that differs.</summary>
    public enum Cause
    {
        /// <summary>No error: everything is as presumed.</summary>
        NoError,

        /// <summary>The static flow of all injectors, by one factor.</summary>
        InjectorFlow,

        /// <summary>The dead time of all injectors, by one difference.</summary>
        DeadTime,

        /// <summary>Static flow and dead time of all injectors: another kind of injector.</summary>
        InjectorFlowAndDeadTime,

        /// <summary>
        /// The pressure in the rail, by the same difference everywhere: it changes flow by the law of the rating and
        /// dead time by
        /// its table.
        /// </summary>
        RailPressure,

        /// <summary>
        /// The reference of the regulator: a fraction of the manifold's gauge pressure that the rail does not follow
        /// although presumed, or follows although presumed fixed. With the hose off it is 100 %.
        /// </summary>
        PressureReference,

        /// <summary>The density of the fuel, by one factor.</summary>
        FuelDensity,

        /// <summary>The stoichiometric ratio of the fuel, by one factor: another content of alcohol.</summary>
        StoichiometricRatio,

        /// <summary>The air model, by one factor.</summary>
        AirModel,

        /// <summary>The air model, by a factor whose logarithm is linear in manifold pressure.</summary>
        AirModelOverLoad,

        /// <summary>The air model, by a factor whose logarithm is linear in speed.</summary>
        AirModelOverSpeed,

        /// <summary>The static flow of the injectors of one chamber: lower or higher than the others.</summary>
        OneInjectorFlow,

        /// <summary>Continuous leakage of fuel into one chamber past a closed injector.</summary>
        OneInjectorLeak,
    }
}
