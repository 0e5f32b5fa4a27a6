using UnitsNet;

namespace FuelMath;

/// <summary>Where an engine is asked about, by the least that says it.</summary>
public sealed class BriefPoint
{
    /// <summary>Creates a point.</summary>
    /// <param name="name">What it is called; not blank.</param>
    /// <param name="speed">Crankshaft speed; greater than zero.</param>
    /// <param name="manifold">Manifold absolute pressure; greater than zero.</param>
    /// <param name="lambda">The lambda that is asked for.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
    public BriefPoint(string name, RotationalSpeed speed, AbsolutePressure manifold, Lambda lambda)
    {
        Name = Guard.Name(name);
        Guard.Positive(speed, speed.InSi());
        Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
        (Speed, Manifold, Lambda) = (speed, manifold, lambda);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Crankshaft speed.</summary>
    public RotationalSpeed Speed { get; }

    /// <summary>Manifold absolute pressure.</summary>
    public AbsolutePressure Manifold { get; }

    /// <summary>The lambda that is asked for.</summary>
    public Lambda Lambda { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Speed}, {Manifold}, {Lambda}");
}
