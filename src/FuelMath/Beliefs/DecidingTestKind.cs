namespace FuelMath.Beliefs;

/// <summary>Tests that tell causes apart which observations cannot.</summary>
public enum DecidingTestKind
{
    /// <summary>A gauge on the rail, against manifold pressure.</summary>
    Gauge,

    /// <summary>The injectors on a bench: static flow and dead time.</summary>
    Bench,

    /// <summary>Another base pressure, which the controller is told of.</summary>
    PressureStep,

    /// <summary>The same fuel in twice as many pulses.</summary>
    TwicePulses,
}
