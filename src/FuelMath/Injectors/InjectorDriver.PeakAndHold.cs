using UnitsNet;

namespace FuelMath;

public abstract partial class InjectorDriver
{
    /// <summary>A driver that limits the current: to a peak that opens the injector, then to a hold current.</summary>
    public sealed class PeakAndHold : InjectorDriver
    {
        /// <summary>Describes the driver.</summary>
        /// <param name="peak">The peak current; greater than zero.</param>
        /// <param name="hold">The hold current; greater than zero, at most the peak.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public PeakAndHold(ElectricCurrent peak, ElectricCurrent hold)
            : base(0, Guard.Positive(peak, peak.InSi()), Guard.Positive(hold, hold.InSi()))
        {
            if (hold.InSi() > peak.InSi())
            {
                throw Guard.OutOfRange(hold, $"at most the peak, {peak:most}");
            }

            (Peak, Hold) = (peak, hold);
        }

        /// <summary>The peak current.</summary>
        public ElectricCurrent Peak { get; }

        /// <summary>The hold current.</summary>
        public ElectricCurrent Hold { get; }

        /// <summary>Formats the driver in words.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            FormattableString.Invariant($"peak {Peak.InSi():0.###} A and hold {Hold.InSi():0.###} A");
    }
}
