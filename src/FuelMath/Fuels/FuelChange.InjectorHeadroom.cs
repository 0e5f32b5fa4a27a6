using UnitsNet;

namespace FuelMath;

public sealed partial class FuelChange
{
    /// <summary>An injector after a change of fuel.</summary>
    public sealed class InjectorHeadroom
    {
        private readonly double width;
        private readonly double period;

        internal InjectorHeadroom(Duration pulseWidth, Duration deadTime, Duration period, double openTimeRatio)
        {
            this.period = Guard.Positive(period, period.InSi());
            double before = Guard.InRange(pulseWidth, pulseWidth.InSi(), 0, this.period, SiUnits.Duration);
            double dead = Guard.InRange(deadTime, deadTime.InSi(), 0, before, SiUnits.Duration);
            width = dead + ((before - dead) * openTimeRatio);
        }

        /// <summary>The pulse width it needs, dead time included; above the period it can't deliver.</summary>
        public Duration PulseWidth => SiUnits.Duration(width);

        /// <summary>Pulse width over period, dead time included; above 100 % it can't deliver.</summary>
        public Ratio DutyCycle => SiUnits.Ratio(width / period);

        /// <summary>The free fraction of the period; negative when the injector can't deliver.</summary>
        public Ratio Headroom => SiUnits.Ratio(1 - (width / period));

        /// <summary>Whether the pulse fits into the period.</summary>
        public bool IsEnough => width <= period;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{PulseWidth}, duty cycle {DutyCycle}, headroom {Headroom}");
    }
}
