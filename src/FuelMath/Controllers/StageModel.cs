using System.Diagnostics;
using MathNet.Numerics.RootFinding;

namespace FuelMath;

/// <summary>One stage at given pressures, density and voltage: mean fuel mass for a chamber in one cycle by pulse width.</summary>
/// <remarks>
/// Used twice: with the fitted injectors, and with the believed injector. All injectors of a stage get one width; their
/// masses differ. Belongs to one solve; <see cref="Set"/> before anything else.
/// </remarks>
internal sealed class StageModel
{
    /// <summary>Secant steps tried before a search: in the linear range the first one is exact.</summary>
    private const int StraightSteps = 4;

    /// <summary>Relative tolerance of the mass.</summary>
    private const double Near = 1e-14;

    private readonly Injector[] injectors;
    private readonly double[] flows;
    private readonly double[] deadTimes;
    private readonly double pulsesPerChamber;
    private double[] scales = [];
    private bool isShifted;
    private double longer;

    /// <param name="injectors">The injectors.</param>
    /// <param name="period">Time between two pulses of one injector, s.</param>
    /// <param name="pulsesPerChamber">Pulses per chamber and cycle from the stage, over all its injectors.</param>
    internal StageModel(Injector[] injectors, double period, double pulsesPerChamber)
    {
        this.injectors = injectors;
        this.pulsesPerChamber = pulsesPerChamber;
        flows = new double[injectors.Length];
        deadTimes = new double[injectors.Length];
        Period = period;
    }

    internal double Period { get; private set; }

    /// <summary>The smallest repeatable pulse of all of them, even if longer than the period.</summary>
    internal double SmallestPulseSi { get; private set; }

    /// <summary>The smallest repeatable pulse of all of them; no longer than the period.</summary>
    internal double SmallestWidth { get; private set; }

    /// <summary>The longest pulse after which all of them still close.</summary>
    internal double LargestWidth { get; private set; }

    /// <summary>The longest dead time of its injectors, s.</summary>
    internal double LongestDeadTime { get; private set; }

    /// <summary>Begins a solve: another period, and injectors as they are described.</summary>
    /// <param name="period">Time between two pulses of one injector, s.</param>
    internal void Begin(double period) => (Period, isShifted, longer) = (period, false, 0);

    /// <summary>Sets deviations of the injectors from their description.</summary>
    /// <param name="flowScales">The factor on the static flow of each.</param>
    /// <param name="deadTime">The addition to the dead time of all, s.</param>
    internal void Shift(ReadOnlySpan<double> flowScales, double deadTime)
    {
        scales = scales.Length == 0 ? new double[injectors.Length] : scales;
        flowScales.CopyTo(scales);
        (isShifted, longer) = (true, deadTime);
    }

    /// <summary>Sets given or final conditions: data that do not reach them refuse.</summary>
    /// <param name="differentialPressures">Pressure across each injector, Pa, greater than zero.</param>
    /// <param name="density">Fuel density, kg/m³.</param>
    /// <param name="volts">Voltage at the injectors, V.</param>
    /// <param name="pulsed">
    /// Whether they are pulsed: if closed or held open, their dead time is unused and set to zero.
    /// </param>
    /// <exception cref="OutsideTableException">The data of an injector do not reach the conditions.</exception>
    internal void Set(ReadOnlySpan<double> differentialPressures, double density, double volts, bool pulsed)
    {
        for (int i = 0; i < injectors.Length; i++)
        {
            Judge(i, differentialPressures[i], volts, pulsed);
        }

        Guess(differentialPressures, density, volts, pulsed);
    }

    /// <summary>Sets conditions of a solver's iterate: data that do not reach them are held at their ends.</summary>
    /// <param name="differentialPressures">Pressure across each injector, Pa, greater than zero.</param>
    /// <param name="density">Fuel density, kg/m³.</param>
    /// <param name="volts">Voltage at the injectors, V.</param>
    /// <param name="pulsed">As for <see cref="Set"/>.</param>
    internal void Guess(ReadOnlySpan<double> differentialPressures, double density, double volts, bool pulsed)
    {
        double smallest = 0;
        double closing = 0;
        double longest = 0;
        for (int i = 0; i < injectors.Length; i++)
        {
            Injector injector = injectors[i];
            double pressure = differentialPressures[i];
            deadTimes[i] = pulsed ? Math.Max(injector.DeadTime.HeldAt(volts, pressure) + longer, 0) : 0;
            flows[i] = injector.Rating.HeldMassFlow(pressure, density) * (isShifted ? scales[i] : 1);
            longest = Math.Max(longest, deadTimes[i]);
            smallest = Math.Max(smallest, deadTimes[i] + injector.LeastEffectiveWidthSi);
            closing = Math.Max(closing, injector.ClosingTime.InSi());
        }

        LongestDeadTime = longest;
        SmallestPulseSi = smallest;
        SmallestWidth = Math.Min(smallest, Period);
        LargestWidth = Math.Max(Period - closing, SmallestWidth);
    }

    /// <summary>Refuses conditions that the data of an injector do not reach.</summary>
    /// <param name="index">The index of the injector.</param>
    /// <param name="pascals">Pressure across it, Pa, greater than zero.</param>
    /// <param name="volts">Voltage at it, V.</param>
    /// <param name="pulsed">As for <see cref="Set"/>.</param>
    /// <exception cref="OutsideTableException">The data do not reach the conditions.</exception>
    /// <exception cref="NoSolutionException">No voltage is left, or its dead time would be negative.</exception>
    internal void Judge(int index, double pascals, double volts, bool pulsed)
    {
        Injector injector = injectors[index];
        _ = injector.Rating.Exponent?.Checked(SiUnits.Pressure(pascals), pascals);
        if (!pulsed)
        {
            return;
        }

        if (!(volts > 0))
        {
            throw Guard.NoSolution(
                RefusalCode.NoVoltageLeft,
                $"the pulse of injector '{injector.Name:part}'",
                $"no voltage is left at it: {Amount.Volts(volts):value}."
            );
        }

        if (!injector.DeadTime.Reaches(volts, pascals))
        {
            _ = injector.DeadTime.SiAt(SiUnits.ElectricPotential(volts), SiUnits.Pressure(pascals));
        }

        if (longer < 0 && injector.DeadTime.HeldAt(volts, pascals) + longer is var dead and < 0)
        {
            throw Guard.NoSolution(
                RefusalCode.EstimateNegative,
                $"the pulse of injector '{injector.Name:part}'",
                $"its dead time must not be negative; it was {Amount.Milliseconds(dead):value}."
            );
        }
    }

    /// <summary>Mass flow of an injector that is held open, kg/s.</summary>
    internal double StaticMassFlow(int injector) => flows[injector];

    /// <summary>Mean fuel mass for a chamber in one cycle, kg.</summary>
    internal double MassAt(double width)
    {
        double sum = 0;
        for (int i = 0; i < injectors.Length; i++)
        {
            sum += Pulse(i, width).MassSi;
        }

        return sum / injectors.Length * pulsesPerChamber;
    }

    internal Injector.PulseResult Pulse(int injector, double width) =>
        injectors[injector].PulseAt(width, Period, flows[injector], deadTimes[injector]);

    /// <summary>
    /// The width for a mean mass. Below the smallest pulse it is the smallest, beyond the longest the whole period;
    /// both show in the result.
    /// </summary>
    internal double WidthFor(double mass)
    {
        (double low, double high) = (SmallestWidth, LargestWidth);
        (double least, double most) = (MassAt(low), MassAt(high));
        if (!(mass <= Guard.Largest && most <= Guard.Largest && high <= Guard.Largest))
        {
            throw Guard.NoSolution(
                RefusalCode.OutOfRange,
                "a pulse width",
                $"the fuel and the longest pulse must be at most {Guard.Largest:most} kg and s."
            );
        }

        if (mass <= least)
        {
            return low;
        }

        if (mass > most)
        {
            return Period;
        }

        // From the long end, where mass is linear in width: a secant to the last point.
        for (int i = 0; i < StraightSteps && most > least; i++)
        {
            double width = high - ((most - mass) * (high - low) / (most - least));
            double found = MassAt(width);
            if (Math.Abs(found - mass) <= Near * mass)
            {
                return width;
            }

            (low, least) = (width, found);
            if (width >= high)
            {
                break;
            }
        }

        // Numbers of order one: relative width against relative mass.
        double start = SmallestWidth;
        double span = LargestWidth - SmallestWidth;
        return Brent.TryFindRoot(x => (MassAt(start + (span * x)) / mass) - 1, 0, 1, Near, 100, out double root)
            ? start + (span * root)
            : throw new UnreachableException("A mass between those at the ends has a width between the ends.");
    }
}
