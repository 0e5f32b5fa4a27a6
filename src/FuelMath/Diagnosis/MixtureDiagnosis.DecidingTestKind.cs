namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>Tests that distinguish causes which observations can't.</summary>
    public enum DecidingTestKind
    {
        /// <summary>A gauge on the rail, against manifold pressure.</summary>
        Gauge,

        /// <summary>The injectors on a bench: static flow, dead time and leakage.</summary>
        Bench,

        /// <summary>A sample of the fuel: density at its temperature, content of alcohol.</summary>
        FuelSample,

        /// <summary>Lambda of one chamber, in its own exhaust port.</summary>
        ChamberReading,

        /// <summary>Another base pressure, also entered in the controller.</summary>
        PressureStep,

        /// <summary>The same fuel in twice as many pulses.</summary>
        TwicePulses,

        /// <summary>A point with the load of one observation and the speed of another.</summary>
        AnotherPoint,

        /// <summary>The same observations again, several times, and their mean.</summary>
        MoreReadings,
    }
}
