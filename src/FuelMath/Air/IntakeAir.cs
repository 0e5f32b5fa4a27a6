using UnitsNet;

namespace FuelMath;

/// <summary>The air that an engine takes in at an operating point: around it, in the manifold, and in the charge.</summary>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class IntakeAir
{
    /// <summary>Describes dry air.</summary>
    /// <param name="manifold">Manifold absolute pressure; greater than zero.</param>
    /// <param name="ambient">Ambient absolute pressure, from which gauge pressures count; greater than zero.</param>
    /// <param name="charge">Temperature of the charge in the manifold.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
    public IntakeAir(AbsolutePressure manifold, AbsolutePressure ambient, Temperature charge)
    {
        Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
        Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient));
        Guard.Positive(charge, charge.InSi());
        (Manifold, Ambient, Charge) = (manifold, ambient, charge);
    }

    /// <summary>Manifold absolute pressure.</summary>
    public AbsolutePressure Manifold { get; private init; }

    /// <summary>Ambient absolute pressure, from which gauge pressures count.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>Temperature of the charge in the manifold.</summary>
    public Temperature Charge { get; }

    /// <summary>The humidity of the ambient air; null where the air is taken as dry.</summary>
    public Humidity? Humidity { get; private init; }

    /// <summary>Dry air in the charge over that of a dry charge, by pressure.</summary>
    internal double DryShare =>
        Humidity is { } humidity ? 1 - (humidity.VaporInCharge(Ambient, Manifold, Charge).Si / Manifold.Si) : 1;

    /// <summary>The same air with water vapor in it.</summary>
    /// <param name="humidity">The humidity of the ambient air.</param>
    /// <returns>The air.</returns>
    /// <remarks>
    /// Water takes the place of air that would burn fuel. A controller that nobody corrects does not know of it: its engine
    /// runs richer. One that holds lambda gives less fuel.
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="humidity"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The charge is below 0 °C, or ambient pressure is not above that of the water.
    /// </exception>
    public IntakeAir WithHumidity(Humidity humidity)
    {
        ArgumentNullException.ThrowIfNull(humidity);
        FuelMath.Humidity.CheckCharge(Charge, nameof(humidity));
        _ = humidity.ShareSi(Ambient, nameof(humidity));
        return new(Manifold, Ambient, Charge) { Humidity = humidity };
    }

    /// <summary>The same air at another manifold pressure.</summary>
    /// <param name="manifold">The other manifold absolute pressure; greater than zero.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not greater than zero.</exception>
    public IntakeAir WithManifold(AbsolutePressure manifold) => new(manifold, Ambient, Charge) { Humidity = Humidity };

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Manifold}, {Charge}");
}
