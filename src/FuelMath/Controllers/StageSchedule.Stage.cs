using UnitsNet;

namespace FuelMath;

public sealed partial class StageSchedule
{
    /// <summary>A stage of a schedule: its injectors and their supply.</summary>
    public sealed class Stage
    {
        /// <summary>Creates a stage.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="injector">The injector; all of the stage are equal.</param>
        /// <param name="injectorsPerChamber">Injectors of the stage that feed one chamber, 1 to 8.</param>
        /// <param name="differentialPressure">Rail less discharge pressure; greater than zero.</param>
        /// <param name="density">Density of the fuel at the injectors; greater than zero.</param>
        /// <param name="atInjector">Voltage at the injectors; greater than zero.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="injector"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Stage(
            string name,
            Injector injector,
            int injectorsPerChamber,
            Pressure differentialPressure,
            Density density,
            ElectricPotential atInjector
        )
        {
            Name = Guard.Name(name);
            ArgumentNullException.ThrowIfNull(injector);
            Injector = injector;
            InjectorsPerChamber = Guard.InRange(injectorsPerChamber, 1, 8, part: name);
            PulsesPerCycle = 1;
            Guard.Positive(differentialPressure, differentialPressure.InSi(), part: name);
            Guard.Positive(density, density.InSi(), part: name);
            Guard.Positive(atInjector, atInjector.InSi(), part: name);
            (DifferentialPressure, Density, AtInjector) = (differentialPressure, density, atInjector);
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The injector.</summary>
        public Injector Injector { get; }

        /// <summary>Injectors of the stage that feed one chamber.</summary>
        public int InjectorsPerChamber { get; }

        /// <summary>Pulses in one working cycle of a chamber.</summary>
        public int PulsesPerCycle { get; private init; }

        /// <summary>Rail less discharge pressure.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>Density of the fuel at the injectors.</summary>
        public Density Density { get; }

        /// <summary>Voltage at the injectors.</summary>
        public ElectricPotential AtInjector { get; }

        /// <summary>The same stage with several pulses in a cycle; one otherwise.</summary>
        /// <param name="pulsesPerCycle">Pulses in one working cycle of a chamber, 1 to 8.</param>
        /// <returns>A new stage.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The number is outside what is allowed.</exception>
        public Stage WithPulsesPerCycle(int pulsesPerCycle) =>
            new(Name, Injector, InjectorsPerChamber, DifferentialPressure, Density, AtInjector)
            {
                PulsesPerCycle = Guard.InRange(pulsesPerCycle, 1, 8, part: Name),
            };

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {InjectorsPerChamber} of {Injector} a chamber");

        internal StageModel ModelFor(double cycle)
        {
            var model = new StageModel(
                [Injector],
                cycle / PulsesPerCycle,
                (double)InjectorsPerChamber * PulsesPerCycle
            );
            model.Set([DifferentialPressure.InSi()], Density.InSi(), AtInjector.InSi(), true);
            return model;
        }
    }
}
