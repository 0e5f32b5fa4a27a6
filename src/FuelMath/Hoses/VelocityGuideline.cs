using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The greatest recommended velocity in a line: a guideline of the trade, not a law of physics.</summary>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed partial class VelocityGuideline
{
    /// <summary>Creates a guideline.</summary>
    /// <param name="suction">Greatest mean velocity ahead of a pump; greater than zero.</param>
    /// <param name="delivery">Greatest mean velocity behind it; not less than that ahead.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public VelocityGuideline(Speed suction, Speed delivery, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.Positive(suction, suction.InSi());
        if (!(Guard.Positive(delivery, delivery.InSi()) >= suction.InSi()))
        {
            throw Guard.OutOfRange(delivery, $"at least that ahead of the pump, {suction:least}");
        }

        (Suction, Delivery, Source) = (suction, delivery, source);
    }

    /// <summary>
    /// The default of a system's limits: 1.2 m/s ahead of a pump, 4 m/s behind. A rule of thumb, and every finding says
    /// so. Source: [Common-practice] no single work.
    /// </summary>
    public static VelocityGuideline CommonPractice { get; } =
        new(SiUnits.Speed(1.2), SiUnits.Speed(4), new DataSource("Common-practice", "rule of thumb for fuel lines"));

    /// <summary>
    /// The guideline of a textbook of oil hydraulics: 1.2 m/s (4 ft/s) ahead of a pump, 6.1 m/s (20 ft/s) behind.
    /// </summary>
    /// <remarks>Source: [Esposito-2009] chapter 10, for hydraulic oil, with other pumps and pressures.</remarks>
    public static VelocityGuideline OilHydraulics { get; } =
        new(SiUnits.Speed(1.2), SiUnits.Speed(6.1), new DataSource("Esposito-2009", "chapter 10, hydraulic oil"));

    /// <summary>Greatest mean velocity ahead of a pump.</summary>
    public Speed Suction { get; }

    /// <summary>Greatest mean velocity behind it.</summary>
    public Speed Delivery { get; }

    /// <summary>Where it comes from.</summary>
    public DataSource Source { get; }

    /// <summary>The greatest mean velocity on a side.</summary>
    /// <param name="side">The side.</param>
    /// <returns>The velocity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The side is not one of the two.</exception>
    public Speed On(LineSide side) =>
        side switch
        {
            LineSide.Suction => Suction,
            LineSide.Delivery => Delivery,
            _ => throw Guard.NoChoice(side),
        };

    /// <summary>The smallest bore in which a flow meets the guideline.</summary>
    /// <param name="flow">Volume flow; greater than zero.</param>
    /// <param name="side">The side of the pump.</param>
    /// <returns>The bore, in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Length LeastBore(VolumeFlow flow, LineSide side) =>
        SiUnits.Length(Math.Sqrt(4 / Math.PI * Guard.Positive(flow, flow.InSi()) / On(side).InSi()));

    /// <summary>Checks a hose against the guideline.</summary>
    /// <param name="hose">The hose.</param>
    /// <param name="flow">Volume flow; its direction does not matter.</param>
    /// <param name="side">The side of the pump.</param>
    /// <returns>One finding when the velocity is too high, else none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ImmutableArray<Finding> Check(Hose hose, VolumeFlow flow, LineSide side)
    {
        ArgumentNullException.ThrowIfNull(hose);
        Speed limit = On(side);
        double velocity = Math.Abs(hose.VelocityAt(flow).InSi());
        return velocity <= limit.InSi() * (1 + Guard.EdgeTolerance)
            ? []
            :
            [
                Finding.Of(
                    FindingCode.HoseVelocityHigh,
                    side == LineSide.Suction ? Severity.Warning : Severity.Note,
                    hose.Name,
                    $"Fuel runs fast in hose '{hose.Name}'",
                    Shown.MetersPerSecond(velocity),
                    Shown.MetersPerSecond(limit.InSi()),
                    Source,
                    side == LineSide.Suction
                        ? "A larger suction hose: pressure lost ahead of a pump makes vapor."
                        : "Pressure losses grow with its square; a larger bore costs little."
                ),
            ];
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"suction {Suction}, delivery {Delivery}");
}
