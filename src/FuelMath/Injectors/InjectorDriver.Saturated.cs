using UnitsNet;

namespace FuelMath;

public abstract partial class InjectorDriver
{
    /// <summary>A driver that connects the coil to the supply: its resistance, and that of a ballast resistor, limit the current.</summary>
    public sealed class Saturated : InjectorDriver
    {
        private Saturated(double ballast)
            : base(ballast, double.PositiveInfinity, double.PositiveInfinity) { }

        /// <summary>A driver with a ballast resistor in series with the coil.</summary>
        /// <param name="ballast">Its resistance; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="ballast"/> is not greater than zero.</exception>
        public Saturated(ElectricResistance ballast)
            : this(Guard.Positive(ballast, ballast.InSi())) { }

        /// <summary>A driver without a ballast resistor.</summary>
        public static Saturated WithoutBallast { get; } = new(0);

        /// <summary>Resistance in series with the coil, in ohm; zero without a ballast resistor.</summary>
        public ElectricResistance Ballast => SiUnits.ElectricResistance(BallastSi);

        /// <summary>Formats the driver in words.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            BallastSi == 0 ? "saturated" : FormattableString.Invariant($"saturated with {BallastSi:0.###} ohm ballast");
    }
}
