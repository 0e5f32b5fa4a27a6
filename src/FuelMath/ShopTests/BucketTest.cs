using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// The timed bucket test: the return is led into a container while the pumps run and the engine is stopped.
/// </summary>
/// <remarks>
/// Caution: fuel in the open. Work outside, no sparks, extinguisher at hand, a bonded metal container larger than the
/// expected volume, and someone at the switch.
/// </remarks>
/// <seealso href="../guide/shoptests.html">Shop tests: what should it read?</seealso>
public sealed class BucketTest
{
    private readonly FuelSystem system;
    private readonly OperatingPoint point;

    private BucketTest(FuelSystem system, OperatingPoint point, SystemState state, Duration time)
    {
        this.system = system;
        this.point = point;
        State = state;
        Time = time;
    }

    /// <summary>The state during the test.</summary>
    public SystemState State { get; }

    /// <summary>The time of collection.</summary>
    public Duration Time { get; }

    /// <summary>Flow into the bucket, in m³/s.</summary>
    public VolumeFlow ExpectedFlow => SiUnits.VolumeFlow(BucketCauses.Returned(State));

    /// <summary>The volume collected, in m³.</summary>
    public Volume ExpectedVolume => SiUnits.Volume(BucketCauses.Returned(State) * Time.InSi());

    /// <summary>The voltage at the pumps in the prediction; measure it there during the test.</summary>
    public ElectricPotential PumpVoltage => State.Pumps.MinBy(p => p.Voltage.InSi())!.Voltage;

    /// <summary>Predicts the test.</summary>
    /// <param name="system">A system with a pump and a return.</param>
    /// <param name="point">
    /// The conditions of the test. The engine is stopped: injectors closed and ambient pressure in the manifold,
    /// whatever speed, manifold pressure and command the point has.
    /// </param>
    /// <param name="time">The time of collection; greater than zero.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The system has no pump or no bypass regulator, so that nothing returns.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is not greater than zero.</exception>
    /// <exception cref="NoSolutionException">The system has no such state; the message says why.</exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    public static BucketTest Of(FuelSystem system, OperatingPoint point, Duration time)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(point);
        Guard.Positive(time, time.InSi());
        if (
            system.Network.Lines.All(l => !l.Part.IsPump)
            || system.Network.Lines.All(l => l.Part is not IRegulator { IsReducing: false })
        )
        {
            throw new RefusedArgumentException(
                RefusalCode.PartsLacking,
                $"Must have a pump and a bypass regulator, whose return is caught; '{system.Name:part}' has not.",
                nameof(system)
            );
        }

        OperatingPoint standing = Altered.Standing(point);
        return new(system, standing, system.Solve(standing), time);
    }

    /// <summary>
    /// Compares the collected volume alone: a difference has several possible causes, which it can't distinguish.
    /// </summary>
    /// <param name="measured">Volume in the bucket; not negative.</param>
    /// <param name="tolerance">The relative deviation that counts as agreement; greater than zero.</param>
    /// <returns>The comparison, with the causes that would explain a difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison Compare(Volume measured, Ratio tolerance) =>
        Compare(measured, tolerance, ShopComparison.AddedReadings.None);

    /// <summary>
    /// Compares the collected volume and additional readings, and ranks the causes by how well they explain all of
    /// them.
    /// </summary>
    /// <param name="measured">Volume in the bucket; not negative.</param>
    /// <param name="tolerance">The relative deviation that counts as agreement; greater than zero.</param>
    /// <param name="added">The pump's voltage and pressures, read during the test.</param>
    /// <returns>The comparison, with the causes that would explain a difference.</returns>
    /// <remarks>
    /// The size of each cause is that which explains the flow; where the flow agrees and an additional reading does
    /// not, that which explains the reading with the largest deviation.
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="added"/> is null.</exception>
    /// <exception cref="ArgumentException">A reading belongs to a node that the network does not have.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ShopComparison Compare(Volume measured, Ratio tolerance, ShopComparison.AddedReadings added)
    {
        ArgumentNullException.ThrowIfNull(added);
        double caught = Guard.NotNegative(measured, measured.InSi()) / Time.InSi();
        double allowed = Guard.Positive(tolerance, tolerance.InSi());
        double expected = BucketCauses.Returned(State);
        double deviation = (caught / expected) - 1;
        bool flowAgrees = Math.Abs(deviation) <= allowed;
        bool agrees = flowAgrees && !(added.Misfit(State) > 1);
        Func<SystemState, double> departure =
            flowAgrees && !added.IsEmpty ? added.Worst(State) : s => BucketCauses.Returned(s) - caught;
        return new(
            Show.LitersPerHour(expected),
            Show.LitersPerHour(caught),
            deviation,
            agrees,
            agrees ? [] : new BucketCauses(system, point, State, added, caught, allowed).Explaining(departure)
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{ExpectedVolume} in {Time}");
}
