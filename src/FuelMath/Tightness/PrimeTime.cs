using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>The time for a pump to fill a dry line and bring it to pressure.</summary>
/// <remarks>
/// A dry pump that is not self-priming delivers nothing, and no pump should run dry: the time counts from a flooded
/// inlet.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed class PrimeTime
{
    private PrimeTime(double fill, double least, double most)
    {
        FillTime = SiUnits.Duration(fill);
        PressurizeAtLeast = SiUnits.Duration(least);
        PressurizeAtMost = SiUnits.Duration(most);
    }

    /// <summary>Time until the line is full, in s.</summary>
    public Duration FillTime { get; }

    /// <summary>
    /// Lower bound of the time from full to pressure: free flow of the pump to the end, and adiabatic compression of
    /// fuel and gas, as within tens of milliseconds; in s.
    /// </summary>
    public Duration PressurizeAtLeast { get; }

    /// <summary>
    /// Upper bound of the time from full to pressure: the pump's flow at that pressure from the start, and isothermal
    /// compression; in s. The pump's run-up is not included.
    /// </summary>
    public Duration PressurizeAtMost { get; }

    /// <summary>Computes the times.</summary>
    /// <param name="empty">Volume to fill; not negative.</param>
    /// <param name="volume">The line once full, with the gas that stays in it.</param>
    /// <param name="target">The gauge pressure to reach; greater than zero.</param>
    /// <param name="freeFlow">The pump's flow at zero pressure rise; greater than zero.</param>
    /// <param name="flowAtTarget">The pump's flow at that pressure; greater than zero, and not above the free flow.</param>
    /// <returns>The times; a pump whose flow falls with pressure lies between the bounds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="volume"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static PrimeTime Of(
        Volume empty,
        ClosedVolume volume,
        GaugePressure target,
        VolumeFlow freeFlow,
        VolumeFlow flowAtTarget
    )
    {
        ArgumentNullException.ThrowIfNull(volume);
        double dry = Guard.NotNegative(empty, empty.InSi());
        double free = Guard.Positive(freeFlow, freeFlow.InSi());
        double held = Guard.Positive(flowAtTarget, flowAtTarget.InSi());
        if (held > free)
        {
            throw Guard.OutOfRange(flowAtTarget, $"at most {freeFlow:most}, the free flow");
        }

        Guard.Positive(target.AboveAmbient, target.Si, nameof(target));
        return new(
            dry / free,
            QuickCompression.PressedIn(volume, target.Si, keepsHeat: true) / free,
            QuickCompression.PressedIn(volume, target.Si, keepsHeat: false) / held
        );
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{FillTime} to fill, {PressurizeAtLeast} to {PressurizeAtMost} to pressurize");
}
