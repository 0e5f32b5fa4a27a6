using UnitsNet;

namespace FuelMath;

public sealed partial class InjectorSizing
{
    /// <summary>The idle conditions that injectors must meter, by the engine's air.</summary>
    public sealed class IdleDemand
    {
        /// <summary>Creates a demand.</summary>
        /// <param name="lambda">The mixture at idle.</param>
        /// <param name="speed">Idle speed; greater than zero.</param>
        /// <param name="manifold">Absolute manifold pressure at idle; greater than zero.</param>
        /// <param name="charge">Temperature of the charge.</param>
        /// <param name="timer">The timer that sets the width.</param>
        /// <exception cref="ArgumentNullException"><paramref name="timer"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
        public IdleDemand(
            Lambda lambda,
            RotationalSpeed speed,
            AbsolutePressure manifold,
            Temperature charge,
            ControllerTimer timer
        )
        {
            ArgumentNullException.ThrowIfNull(timer);
            Guard.Positive(lambda.Si, nameof(lambda));
            Guard.Positive(speed, speed.InSi());
            Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
            Guard.Positive(charge, charge.InSi());
            (Lambda, Speed, Manifold, Charge, Timer) = (lambda, speed, manifold, charge, timer);
        }

        /// <summary>The mixture at idle.</summary>
        public Lambda Lambda { get; }

        /// <summary>Idle speed.</summary>
        public RotationalSpeed Speed { get; }

        /// <summary>Absolute manifold pressure at idle.</summary>
        public AbsolutePressure Manifold { get; }

        /// <summary>Temperature of the charge.</summary>
        public Temperature Charge { get; }

        /// <summary>The timer that sets the width.</summary>
        public ControllerTimer Timer { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Speed}, {Manifold}, {Lambda}");
    }
}
