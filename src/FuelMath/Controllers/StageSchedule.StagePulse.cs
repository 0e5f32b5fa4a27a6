using UnitsNet;

namespace FuelMath;

public sealed partial class StageSchedule
{
    /// <summary>One stage at a demand.</summary>
    public sealed class StagePulse
    {
        private readonly double mass;

        internal StagePulse(string name, Injector.PulseResult pulse, bool isShut, double mass) =>
            (Name, Pulse, IsShut, this.mass) = (name, pulse, isShut, mass);

        /// <summary>The name of the stage.</summary>
        public string Name { get; }

        /// <summary>The pulse of one of its injectors; of zero width when closed.</summary>
        public Injector.PulseResult Pulse { get; }

        /// <summary>Whether it stays closed.</summary>
        public bool IsShut { get; }

        /// <summary>The mass of all its injectors per chamber and cycle, in kg.</summary>
        public Mass MassPerCycle => SiUnits.Mass(mass);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Pulse}");
    }
}
