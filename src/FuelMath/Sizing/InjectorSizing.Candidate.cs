using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class InjectorSizing
{
    /// <summary>An injector of a caller's list, judged at peak and idle.</summary>
    /// <remarks>Created by <see cref="InjectorSizing"/>.</remarks>
    public sealed class Candidate
    {
        internal Candidate(
            Injector injector,
            Ratio? peakDutyCycle,
            Power? powerAtLimit,
            IdleControl? idle,
            ImmutableArray<string> reasons
        ) =>
            (Injector, PeakDutyCycle, PowerAtLimit, Idle, Reasons) = (
                injector,
                peakDutyCycle,
                powerAtLimit,
                idle,
                reasons
            );

        /// <summary>The injector.</summary>
        public Injector Injector { get; }

        /// <summary>
        /// Duty cycle needed at the peak, above 100 % when it is too small; null when the peak is outside its data.
        /// </summary>
        public Ratio? PeakDutyCycle { get; }

        /// <summary>The power possible at the duty-cycle limit; null when the peak is outside its data.</summary>
        public Power? PowerAtLimit { get; }

        /// <summary>Its metering of idle; null when idle is outside its data.</summary>
        public IdleControl? Idle { get; }

        /// <summary>Whether it delivers the peak and meters idle.</summary>
        public bool IsAccepted => Reasons.IsEmpty;

        /// <summary>Why it is rejected; empty when it is accepted.</summary>
        public ImmutableArray<string> Reasons { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Injector}: {(IsAccepted ? "accepted" : "not accepted")}");
    }
}
