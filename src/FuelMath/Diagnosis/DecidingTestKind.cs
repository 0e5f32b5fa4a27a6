namespace FuelMath;

/// <summary>Tests that tell causes apart which observations cannot.</summary>
public enum DecidingTestKind
{
    /// <summary>A gauge on the rail, against manifold pressure.</summary>
    Gauge,

    /// <summary>The injectors on a bench: static flow, dead time and leakage.</summary>
    Bench,

    /// <summary>A sample of the fuel: density at its temperature, share of alcohol.</summary>
    FuelSample,

    /// <summary>Lambda of one chamber, in its own exhaust port.</summary>
    ChamberReading,

    /// <summary>Another base pressure, which the controller is told of.</summary>
    PressureStep,

    /// <summary>The same fuel in twice as many pulses.</summary>
    TwicePulses,

    /// <summary>A point with the load of one observation and the speed of another.</summary>
    AnotherPoint,

    /// <summary>The same observations again, several times, and their mean.</summary>
    MoreReadings,
}
