using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The resolution of a controller's pulse width, and the error from rounding to it.</summary>
/// <remarks>
/// Rounded to the nearest step, a width is off by half a step at most. In the linear range the mass is off by half a step
/// over the effective width.
/// </remarks>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed class ControllerTimer
{
    private readonly double step;

    /// <summary>Creates a timer.</summary>
    /// <param name="step">Its step; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not greater than zero.</exception>
    public ControllerTimer(Duration step) => this.step = Guard.Positive(step, step.InSi());

    /// <summary>Its step, in s.</summary>
    public Duration Step => SiUnits.Duration(step);

    /// <summary>A width rounded to the timer's step.</summary>
    /// <param name="pulseWidth">The intended width; not negative.</param>
    /// <returns>The nearest whole number of steps, in s; halves are rounded up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    public Duration Rounded(Duration pulseWidth) =>
        SiUnits.Duration(Math.Floor((Guard.NotNegative(pulseWidth, pulseWidth.InSi()) / step) + 0.5) * step);

    /// <summary>The worst relative error of the mass.</summary>
    /// <param name="effectiveWidth">Width less dead time; greater than half a step.</param>
    /// <returns>The error, to either side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The effective width is half a step or less.</exception>
    public Ratio WorstMassErrorAt(Duration effectiveWidth) => SiUnits.Ratio(ErrorAt(effectiveWidth));

    /// <summary>Largest lambda from rounding, over the intended one.</summary>
    /// <param name="effectiveWidth">Width less dead time; greater than half a step.</param>
    /// <returns>The factor, above one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The effective width is half a step or less.</exception>
    public Ratio LeanestFactorAt(Duration effectiveWidth) => SiUnits.Ratio(1 / (1 - ErrorAt(effectiveWidth)));

    /// <summary>Smallest lambda from rounding, over the intended one.</summary>
    /// <param name="effectiveWidth">Width less dead time; greater than half a step.</param>
    /// <returns>The factor, below one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The effective width is half a step or less.</exception>
    public Ratio RichestFactorAt(Duration effectiveWidth) => SiUnits.Ratio(1 / (1 + ErrorAt(effectiveWidth)));

    /// <summary>The shortest effective width with a mass error within a limit.</summary>
    /// <param name="error">The relative error allowed; above 0 % and below 100 %.</param>
    /// <returns>The effective width, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error is outside its range.</exception>
    public Duration ShortestWidthFor(Ratio error)
    {
        return SiUnits.Duration(step / (2 * Guard.PositiveUpTo(error, error.InSi(), 1, SiUnits.Ratio)));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"steps of {Step}");

    private double ErrorAt(Duration effectiveWidth)
    {
        double width = effectiveWidth.InSi();
        return width > step / 2 && double.IsFinite(width)
            ? PulseTiming.WorstStepError(new Real(step), new Real(width)).Value
            : throw Guard.OutOfRange(effectiveWidth, $"longer than half a step, {SiUnits.Duration(step / 2):above}");
    }
}
