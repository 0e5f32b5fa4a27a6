using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <content>How its answers are made, step by step.</content>
public sealed partial class Injector
{
    /// <summary>The working of the mass of one pulse: formula, inserted values, result, source.</summary>
    /// <param name="pulseWidth">Commanded width, dead time included; not negative.</param>
    /// <param name="period">Time from one pulse to the next; greater than zero.</param>
    /// <param name="differentialPressure">Rail less discharge pressure; not negative.</param>
    /// <param name="density">Density of the fuel at the injector; greater than zero.</param>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <returns>
    /// The working of <see cref="PulseResult.Mass"/>; dead time and short-pulse correction are read from their
    /// tables. Inputs are shown in their own units, and <see cref="WorkingUnits.In"/> sets that of the result.
    /// </returns>
    /// <exception cref="OutsideTableException">
    /// Voltage or pressure is outside the dead-time table, and it refuses.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Working DeliverWorking(
        Duration pulseWidth,
        Duration period,
        Pressure differentialPressure,
        Density density,
        ElectricPotential atInjector
    )
    {
        PulseResult pulse = Deliver(pulseWidth, period, differentialPressure, density, atInjector);
        return TracedMass(
                pulse,
                Rating.TracedMassFlow(differentialPressure, density),
                ReaderUnits.Input(Symbols.Width, pulseWidth, pulseWidth.InSi()),
                ReaderUnits.Input(Symbols.Period, period, period.InSi())
            )
            .ToWorking();
    }

    /// <summary>The mass of a pulse from a static flow with its own working, kg.</summary>
    internal Traced TracedMass(in PulseResult pulse, Traced flow, Traced width, Traced period)
    {
        if (pulse.IsHeldOpen)
        {
            return Traced.Step(flow * period, Symbols.PulseMass, HeldOpen);
        }

        Traced effective = Pulse.EffectiveWidth(
            width,
            ReaderUnits.Input(Symbols.DeadTime, pulse.DeadTime.InSi(), "ms")
        );
        double correction = Correction.SiAt(effective.Value);
        return Pulse.Mass(flow, effective, ReaderUnits.Input(CorrectionInput, correction, "ms"));
    }

    private static DataSource HeldOpen { get; } = new("Definition", "static flow for the whole period");

    private static Symbol CorrectionInput { get; } = new("c", "s", "short-pulse correction");
}
