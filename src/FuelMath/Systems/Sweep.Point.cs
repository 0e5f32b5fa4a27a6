using UnitsNet;

namespace FuelMath;

public sealed partial class Sweep
{
    /// <summary>One point of a sweep: a state, or a refusal with its reason; never both.</summary>
    public sealed class Point
    {
        internal Point(RotationalSpeed speed, AbsolutePressure manifold, SystemState? state, Exception? refusal)
        {
            Speed = speed;
            Manifold = manifold;
            State = state;
            Refusal = refusal;
        }

        /// <summary>The speed asked about.</summary>
        public RotationalSpeed Speed { get; }

        /// <summary>The manifold absolute pressure asked about.</summary>
        public AbsolutePressure Manifold { get; }

        /// <summary>The state; null when it was refused.</summary>
        public SystemState? State { get; }

        /// <summary>
        /// Why there is no state, with its numbers, an <see cref="IRefusal"/>; null when there is one.
        /// </summary>
        public Exception? Refusal { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"{Speed}, {Manifold}: {(State is null ? "refused" : "solved")}");
    }
}
