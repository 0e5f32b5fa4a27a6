namespace FuelMath;

public sealed partial class Limits
{
    /// <summary>Which of the <see cref="Limits"/>.</summary>
    public enum Kind
    {
        /// <summary>Largest duty cycle of an injector; a ratio.</summary>
        DutyCycle,

        /// <summary>Least bypassed flow over the flow drawn; a ratio.</summary>
        PumpReserve,

        /// <summary>
        /// Largest deviation of injector differential pressure from the controller's belief; a ratio.
        /// </summary>
        PressureDeviation,

        /// <summary>Largest deviation of a chamber's lambda to the lean side; a ratio.</summary>
        MixtureDeviation,

        /// <summary>Largest voltage drop between source and pump or injector; a voltage.</summary>
        VoltageDrop,

        /// <summary>Largest mean velocity on the pressure side; a speed.</summary>
        FeedVelocity,

        /// <summary>Largest mean velocity ahead of a pump; a speed.</summary>
        SuctionVelocity,

        /// <summary>Least difference between absolute pressure and vapor pressure; a pressure difference.</summary>
        VaporMargin,

        /// <summary>Least factor on the fuel that the controller's correction applies; a ratio.</summary>
        LowestCorrection,

        /// <summary>Greatest factor on the fuel that the controller's correction applies; a ratio.</summary>
        HighestCorrection,
    }
}
