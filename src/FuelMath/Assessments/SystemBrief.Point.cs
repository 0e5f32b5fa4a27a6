using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>An operating point of a brief: speed, manifold pressure and lambda.</summary>
    public sealed class Point
    {
        /// <summary>Creates a point.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="speed">Crankshaft speed; greater than zero.</param>
        /// <param name="manifold">Manifold absolute pressure; greater than zero.</param>
        /// <param name="lambda">The requested lambda.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
        public Point(string name, RotationalSpeed speed, AbsolutePressure manifold, Lambda lambda)
        {
            Name = Guard.Name(name);
            Guard.Positive(speed, speed.InSi(), part: name);
            Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold), part: name);
            (Speed, Manifold, Lambda) = (speed, manifold, lambda);
        }

        /// <summary>The name.</summary>
        public string Name { get; }

        /// <summary>Crankshaft speed.</summary>
        public RotationalSpeed Speed { get; }

        /// <summary>Manifold absolute pressure.</summary>
        public AbsolutePressure Manifold { get; }

        /// <summary>The requested lambda.</summary>
        public Lambda Lambda { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Speed}, {Manifold}, {Lambda}");
    }
}
