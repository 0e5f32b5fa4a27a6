using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

public sealed partial class Tank
{
    /// <summary>One step of filling a tank.</summary>
    public sealed class FillStep
    {
        internal FillStep(Liquid liquid, Volume volume, Tank after)
        {
            Liquid = liquid;
            Volume = volume;
            After = after;
        }

        /// <summary>The liquid added.</summary>
        public Liquid Liquid { get; }

        /// <summary>The volume added, at the temperature at which it is measured.</summary>
        public Volume Volume { get; }

        /// <summary>The tank after this step.</summary>
        public Tank After { get; }

        /// <summary>Formats the step, invariant culture.</summary>
        /// <returns>The text.</returns>
        public override string ToString() => $"add {Guard.Show(Volume, VolumeUnit.Liter)} of {Liquid}: {After}";
    }
}
