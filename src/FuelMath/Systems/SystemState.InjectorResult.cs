using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class SystemState
{
    /// <summary>One injector at an operating point.</summary>
    public sealed class InjectorResult
    {
        internal InjectorResult(
            string stage,
            InjectorStage.Seat seat,
            Pressure differentialPressure,
            ElectricPotential voltage,
            Injector.PulseResult pulse,
            VolumeFlow meanFlow,
            bool isShut
        )
        {
            Stage = stage;
            Seat = seat;
            DifferentialPressure = differentialPressure;
            Voltage = voltage;
            Pulse = pulse;
            MeanFlow = meanFlow;
            IsShut = isShut;
        }

        /// <summary>The stage it belongs to.</summary>
        public string Stage { get; }

        /// <summary>Its place.</summary>
        public InjectorStage.Seat Seat { get; }

        /// <summary>Pressure at its node minus the pressure that it discharges to.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>
        /// Mean voltage at its terminals while it opens, which determines its dead time: with its own coil's current in
        /// the
        /// wires, and that of others whose pulses overlap. With all open, that behind the current of all coils; at fuel cut
        /// the supply's.
        /// </summary>
        public ElectricPotential Voltage { get; }

        /// <summary>
        /// Its pulse: width, dead time (zero where nothing is pulsed: fuel cut, all open), duty cycle, mass.
        /// </summary>
        public Injector.PulseResult Pulse { get; }

        /// <summary>Mean volume flow.</summary>
        public VolumeFlow MeanFlow { get; }

        /// <summary>Whether it is commanded shut.</summary>
        public bool IsShut { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"{Stage}, chamber {Seat.Chamber}: {MeanFlow} at {DifferentialPressure}");

        /// <summary>Working of the mass of a pulse, from a pressure that was computed.</summary>
        /// <param name="rail">Gauge pressure at its node, Pa.</param>
        /// <param name="density">kg/m³.</param>
        /// <param name="railInState">The same pressure as the solved state has it, Pa.</param>
        /// <exception cref="InvalidOperationException">No fuel can pass it.</exception>
        internal Working DeliveryWorking(Traced rail, Traced density, double railInState)
        {
            double across = DifferentialPressure.InSi();
            if (!(across > 0))
            {
                throw new RefusedOperationException(
                    RefusalCode.NoFuelPasses,
                    $"The pressure at '{Seat.Node:node}' is not above the pressure that its injector sprays against: no fuel can pass."
                );
            }

            Traced difference = Traced.Step(
                rail - ReaderUnits.Input(SpraysAgainst, railInState - across, "bar"),
                Symbols.DifferentialPressure,
                Tip
            );
            return Seat
                .Injector.TracedMass(
                    Pulse,
                    Seat.Injector.Rating.TracedMassFlow(difference, density),
                    ReaderUnits.Input(Symbols.Width, Pulse.PulseWidth.InSi(), "ms"),
                    ReaderUnits.Input(Symbols.Period, Pulse.Period.InSi(), "ms")
                )
                .ToWorking();
        }

        private static Symbol SpraysAgainst { get; } =
            new("pd", "Pa", "pressure that the injector sprays against, over ambient");

        private static DataSource Tip { get; } = new("Definition", "pressure ahead of the tip less pressure behind it");
    }
}
