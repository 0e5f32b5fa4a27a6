using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>What a regulator holds: a pressure above its reference.</summary>
    public sealed class RegulatorSetting
    {
        /// <summary>Describes what a regulator holds.</summary>
        /// <param name="setDifferentialPressure">The pressure that it holds above its reference; greater than zero.</param>
        /// <param name="reference">Its reference.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
        public RegulatorSetting(Pressure setDifferentialPressure, RegulatorReference reference)
        {
            Guard.Positive(setDifferentialPressure, setDifferentialPressure.InSi());
            (SetDifferentialPressure, Reference) = (setDifferentialPressure, Guard.Known(reference));
        }

        /// <summary>The pressure that it holds above its reference.</summary>
        public Pressure SetDifferentialPressure { get; }

        /// <summary>Its reference.</summary>
        public RegulatorReference Reference { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{SetDifferentialPressure} above {Reference}");
    }
}
