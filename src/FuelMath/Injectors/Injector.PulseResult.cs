using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class Injector
{
    /// <summary>One pulse of an injector: the command, the mass delivered, and the values in between.</summary>
    /// <remarks>Created by an <see cref="Injector"/>. The default value is no pulse and has no duty cycle.</remarks>
    public readonly struct PulseResult
    {
        private readonly double width;
        private readonly double period;
        private readonly double deadTime;
        private readonly double effectiveWidth;
        private readonly double staticMassFlow;
        private readonly double mass;

        internal PulseResult(
            double width,
            double period,
            double deadTime,
            double effectiveWidth,
            double staticMassFlow,
            double mass,
            bool isHeldOpen,
            bool isRepeatable
        )
        {
            (this.width, this.period, this.deadTime, this.effectiveWidth) = (width, period, deadTime, effectiveWidth);
            (this.staticMassFlow, this.mass) = (staticMassFlow, mass);
            (IsHeldOpen, IsRepeatable) = (isHeldOpen, isRepeatable);
        }

        /// <summary>The commanded width, dead time included, in s.</summary>
        public Duration PulseWidth => SiUnits.Duration(width);

        /// <summary>Time from one pulse to the next, in s.</summary>
        public Duration Period => SiUnits.Duration(period);

        /// <summary>Dead time at the injector's voltage and differential pressure, in s.</summary>
        public Duration DeadTime => SiUnits.Duration(deadTime);

        /// <summary>Pulse width less dead time, not below zero, in s.</summary>
        public Duration EffectiveWidth => SiUnits.Duration(effectiveWidth);

        /// <summary>
        /// Pulse width over period, dead time included. Above one where the command is longer than the period.
        /// </summary>
        public Ratio DutyCycle => SiUnits.Ratio(Pulse.DutyCycle(new Real(width), new Real(period)).Value);

        /// <summary>The static mass flow, held open, in kg/s.</summary>
        public MassFlow StaticMassFlow => SiUnits.MassFlow(staticMassFlow);

        /// <summary>The mass delivered in one period, in kg.</summary>
        public Mass Mass => SiUnits.Mass(mass);

        /// <summary>
        /// Whether it stays open from one pulse to the next, because the time off is shorter than its closing time: it
        /// then
        /// delivers its static flow for the whole period, whatever the width.
        /// </summary>
        public bool IsHeldOpen { get; }

        /// <summary>Whether the pulse is zero or long enough for repeatable delivery.</summary>
        public bool IsRepeatable { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Mass} in {PulseWidth}");

        internal double MassSi => mass;
    }
}
