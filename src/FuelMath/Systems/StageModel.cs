using System.Diagnostics;
using FuelMath.Injectors;
using FuelMath.Internal;
using MathNet.Numerics.RootFinding;

namespace FuelMath.Systems;

/// <summary>One stage at given pressures, density and voltage: mean fuel mass for a chamber in one cycle by pulse width.</summary>
/// <remarks>
/// Used twice: with the fitted injectors, and with the one injector that the controller believes in. All injectors of a
/// stage get one width; their masses differ.
/// </remarks>
internal readonly struct StageModel
{
    private readonly Injector[] injectors;
    private readonly double[] differentialPressures;
    private readonly double density;
    private readonly double volts;
    private readonly double massesPerChamber;

    /// <param name="injectors">The injectors.</param>
    /// <param name="differentialPressures">Pressure across each, Pa, greater than zero.</param>
    /// <param name="density">Fuel density, kg/m3.</param>
    /// <param name="volts">Voltage at the injectors, V.</param>
    /// <param name="period">Time between two pulses of one injector, s.</param>
    /// <param name="massesPerChamber">Pulses that a chamber gets from the stage in one cycle, over all its injectors.</param>
    internal StageModel(
        Injector[] injectors,
        double[] differentialPressures,
        double density,
        double volts,
        double period,
        double massesPerChamber
    )
    {
        this.injectors = injectors;
        this.differentialPressures = differentialPressures;
        this.density = density;
        this.volts = volts;
        this.massesPerChamber = massesPerChamber;
        Period = period;
        double smallest = 0;
        double closing = 0;
        for (int i = 0; i < injectors.Length; i++)
        {
            Injector injector = injectors[i];
            double dead = injector
                .DeadTime.At(SiUnits.ElectricPotential(volts), SiUnits.Pressure(differentialPressures[i]))
                .InSi();
            smallest = Math.Max(smallest, dead + injector.LeastEffectiveWidthSi);
            closing = Math.Max(closing, injector.ClosingTime.InSi());
        }

        SmallestWidth = Math.Min(smallest, period);
        LargestWidth = Math.Max(period - closing, SmallestWidth);
    }

    internal double Period { get; }

    /// <summary>The smallest pulse that all of them repeat.</summary>
    internal double SmallestWidth { get; }

    /// <summary>The longest pulse after which all of them still close.</summary>
    internal double LargestWidth { get; }

    /// <summary>Mean fuel mass for a chamber in one cycle, kg.</summary>
    internal double MassAt(double width)
    {
        double sum = 0;
        for (int i = 0; i < injectors.Length; i++)
        {
            sum += Pulse(i, width).MassSi;
        }

        return sum / injectors.Length * massesPerChamber;
    }

    internal InjectorPulse Pulse(int injector, double width) =>
        injectors[injector]
            .Deliver(
                SiUnits.Duration(width),
                SiUnits.Duration(Period),
                SiUnits.Pressure(differentialPressures[injector]),
                SiUnits.Density(density),
                SiUnits.ElectricPotential(volts)
            );

    /// <summary>
    /// The width for a mean mass. Below the smallest pulse it stays at the smallest, beyond the longest it is the
    /// whole period: both are visible in the result.
    /// </summary>
    internal double WidthFor(double mass)
    {
        double low = MassAt(SmallestWidth);
        if (mass <= low)
        {
            return SmallestWidth;
        }

        double high = MassAt(LargestWidth);
        if (mass > high)
        {
            return Period;
        }

        // Numbers of order one: share of the span of widths against share of the mass.
        (double start, double span) = (SmallestWidth, LargestWidth - SmallestWidth);
        StageModel self = this;
        return Brent.TryFindRoot(x => (self.MassAt(start + (span * x)) / mass) - 1, 0, 1, 1e-14, 100, out double root)
            ? start + (span * root)
            : throw new UnreachableException("A mass between those at the ends has a width between the ends.");
    }
}
