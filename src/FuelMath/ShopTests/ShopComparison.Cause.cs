using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class ShopComparison
{
    /// <summary>One cause that alone would explain a differing reading: its size, and how to verify it.</summary>
    public sealed class Cause
    {
        internal Cause(
            CauseKind kind,
            string what,
            string needed,
            double departure,
            string howToTell,
            SystemState? state,
            double? misfit
        )
        {
            Kind = kind;
            What = what;
            Needed = needed;
            Departure = SiUnits.Ratio(departure);
            HowToTell = howToTell;
            State = state;
            Misfit = misfit is { } m ? SiUnits.Ratio(m) : null;
        }

        /// <summary>The kind of cause.</summary>
        public CauseKind Kind { get; }

        /// <summary>The cause in words.</summary>
        public string What { get; }

        /// <summary>The size of the fault, with the expected value.</summary>
        public string Needed { get; }

        /// <summary>
        /// The size relative to the expected value. It says how large the fault would be, not how likely.
        /// </summary>
        public Ratio Departure { get; }

        /// <summary>The measurement that distinguishes it from the others, a sentence.</summary>
        public string HowToTell { get; }

        /// <summary>
        /// The state of the system with this one fault, for the readings of all gauges and meters. Null where none was
        /// solved.
        /// </summary>
        public SystemState? State { get; }

        /// <summary>
        /// The largest deviation of the additional readings from that state, relative to their tolerance; null without
        /// additional readings.
        /// </summary>
        public Ratio? Misfit { get; }

        /// <summary>Whether that state agrees with every additional reading; true where none was given.</summary>
        public bool ExplainsAll => Misfit is not { } misfit || misfit.InSi() <= 1;

        /// <summary>Gives cause and amount.</summary>
        /// <returns>The text.</returns>
        public override string ToString() => $"{What}: {Needed}. {HowToTell}";
    }
}
