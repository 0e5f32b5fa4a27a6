using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// The dependence of a leak's flow on pressure, and the fall of pressure of a closed volume that follows.
/// </summary>
/// <remarks>The leak is to ambient air.</remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed class LeakPath
{
    private readonly Kind kind;
    private readonly double flow;
    private readonly double coefficient;

    private LeakPath(Kind kind, double flow, double coefficient)
    {
        this.kind = kind;
        this.flow = flow;
        this.coefficient = coefficient;
    }

    private enum Kind
    {
        Constant,
        Narrow,
        Hole,
    }

    /// <summary>The same flow at any pressure: a limit.</summary>
    /// <param name="flow">The flow; greater than zero.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow is not greater than zero.</exception>
    public static LeakPath Constant(VolumeFlow flow) =>
        new(Kind.Constant, Guard.Positive(flow, flow.InSi()), double.NaN);

    /// <summary>Flow in proportion to pressure: a long narrow path, between threads or past a seat.</summary>
    /// <param name="flow">The flow at the pressure; greater than zero.</param>
    /// <param name="at">The gauge pressure; greater than zero.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is not greater than zero.</exception>
    public static LeakPath Narrow(VolumeFlow flow, GaugePressure at)
    {
        double q = Guard.Positive(flow, flow.InSi());
        return new(Kind.Narrow, q, q / Guard.Positive(at.AboveAmbient, at.Si, nameof(at)));
    }

    /// <summary>Flow in proportion to the square root of the pressure: a hole.</summary>
    /// <param name="flow">The flow at the pressure; greater than zero.</param>
    /// <param name="at">The gauge pressure; greater than zero.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is not greater than zero.</exception>
    public static LeakPath Hole(VolumeFlow flow, GaugePressure at)
    {
        double q = Guard.Positive(flow, flow.InSi());
        return new(Kind.Hole, q, q / Math.Sqrt(Guard.Positive(at.AboveAmbient, at.Si, nameof(at))));
    }

    /// <summary>The flow at a pressure.</summary>
    /// <param name="pressure">Gauge pressure; not negative.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is negative.</exception>
    public VolumeFlow FlowAt(GaugePressure pressure)
    {
        double gauge = Guard.NotNegative(pressure.AboveAmbient, pressure.Si, nameof(pressure));
        return SiUnits.VolumeFlow(
            kind switch
            {
                Kind.Constant => flow,
                Kind.Narrow => coefficient * gauge,
                _ => coefficient * Math.Sqrt(gauge),
            }
        );
    }

    /// <summary>The time for the pressure of a closed volume to fall, at constant temperature.</summary>
    /// <param name="volume">The closed volume.</param>
    /// <param name="before">Gauge pressure before; above ambient.</param>
    /// <param name="after">Gauge pressure after; below the one before, and above the volume's floor.</param>
    /// <returns>The time, in s.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="volume"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The second pressure is not below the first.</exception>
    /// <exception cref="NoSolutionException">
    /// The pressure never falls that far; the message says where it stops.
    /// </exception>
    public Duration TimeToFall(ClosedVolume volume, GaugePressure before, GaugePressure after)
    {
        ArgumentNullException.ThrowIfNull(volume);
        if (!(after.Si < before.Si))
        {
            throw Guard.Outside(
                after,
                RefusalCode.OutOfRange,
                $"Must be below {before:below}, the pressure before; it was {after:value}."
            );
        }

        GaugePressure floor = volume.Floor;
        return after.Si > floor.Si
            ? SiUnits.Duration(Seconds(volume, before.Si + volume.Outside, after.Si + volume.Outside))
            : throw Guard.NoSolution(
                floor.Si > 0 ? RefusalCode.FuelBoils : RefusalCode.NotReached,
                "the time of a fall of pressure",
                floor.Si > 0
                    ? (RefusalText)
                        $"the pressure stops at {floor:above}, where the fuel boils, and {after:value} was asked for."
                    : $"the pressure stops at {floor:above}, the ambient pressure, and {after:value} was asked for."
            );
    }

    /// <summary>
    /// The pressure of a closed volume after a time, at constant temperature; it stops at the volume's floor.
    /// </summary>
    /// <param name="volume">The closed volume.</param>
    /// <param name="before">Gauge pressure at the start; above the floor.</param>
    /// <param name="time">The time; not negative.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="volume"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not above the floor or the time is negative.</exception>
    public GaugePressure PressureAfter(ClosedVolume volume, GaugePressure before, Duration time)
    {
        ArgumentNullException.ThrowIfNull(volume);
        double seconds = Guard.NotNegative(time, time.InSi());
        double floor = volume.Floor.Si;
        if (!(before.Si > floor))
        {
            throw Guard.Outside(
                before,
                RefusalCode.OutOfRange,
                $"Must be above {volume.Floor:above}, where the pressure stops; it was {before:value}."
            );
        }

        double first = before.Si + volume.Outside;
        double last = floor + volume.Outside;

        // A leak in proportion to pressure never reaches ambient: stop slightly above.
        double low = last + (1e-12 * first);
        return seconds >= Seconds(volume, first, low)
            ? new GaugePressure(floor)
            : new GaugePressure(Rising.Root(p => -Seconds(volume, first, p), -seconds, low, first) - volume.Outside);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{kind}: {SiUnits.VolumeFlow(flow)}");

    private double Seconds(ClosedVolume volume, double before, double after)
    {
        if (before == after)
        {
            return 0;
        }

        (Real liquid, Real modulus, Real swelling) = (new(volume.Liquid), new(volume.Modulus), new(volume.Swells));
        (Real gas, Real outside, Real size) = (new(volume.Gas), new(volume.Outside), new(coefficient));
        (Real first, Real last) = (new(before), new(after));
        return kind switch
        {
            Kind.Constant => volume.Released(before, after) / flow,
            Kind.Narrow => PressureDecay
                .LaminarFallTime(liquid, modulus, swelling, gas, first, last, outside, size)
                .Value,
            _ => PressureDecay.OrificeFallTime(liquid, modulus, swelling, gas, first, last, outside, size).Value,
        };
    }
}
