using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>How a vehicle that carries a network speeds up: it acts on the fluid like weight.</summary>
/// <remarks>
/// <para>
/// In the vehicle the pressure of still fluid falls along the acceleration by density x acceleration x distance, as it
/// falls upward by the weight of the column. Braking is a negative forward acceleration; in a left turn the vehicle
/// accelerates to the left. A free surface tilts: give a tank the pressure at the place where it is drawn from.
/// Source: [White-2003] section 2.9 (pressure distribution in rigid-body motion).
/// </para>
/// <para>The default value is rest.</para>
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public readonly struct VehicleAcceleration
{
    private readonly double forward;
    private readonly double left;
    private readonly double up;

    /// <summary>Creates an acceleration, beside that of free fall.</summary>
    /// <param name="forward">Forward; finite, negative when braking.</param>
    /// <param name="left">To the left; finite, negative in a right turn.</param>
    /// <param name="up">Upward; finite, zero on a level road.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public VehicleAcceleration(Acceleration forward, Acceleration left, Acceleration up)
    {
        this.forward = Guard.Finite(forward, forward.InSi());
        this.left = Guard.Finite(left, left.InSi());
        this.up = Guard.Finite(up, up.InSi());
    }

    /// <summary>Forward, in m/s².</summary>
    public Acceleration Forward => SiUnits.Acceleration(forward);

    /// <summary>To the left, in m/s².</summary>
    public Acceleration Left => SiUnits.Acceleration(left);

    /// <summary>Upward, in m/s².</summary>
    public Acceleration Up => SiUnits.Acceleration(up);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Forward} forward, {Left} left, {Up} up");

    internal bool IsRest => forward == 0 && left == 0 && up == 0;

    /// <summary>The elevation that gives a column at rest the pressure that this place has, m.</summary>
    internal double HeightOf(Network.Node node) =>
        node.ElevationSi
        + (
            ((forward * node.ForwardSi) + (left * node.LeftSi) + (up * node.ElevationSi)) / Hydrostatics.StandardGravity
        );
}
