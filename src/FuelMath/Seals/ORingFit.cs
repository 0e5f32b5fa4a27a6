using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Joints;

/// <summary>An O-ring in its groove: squeeze, stretch and fill, with their limits from tolerances.</summary>
/// <remarks>
/// <para>
/// Squeeze seals without pressure: a ring that only pressure presses against its walls leaks at start and at hot soak.
/// Stretching thins the section, which is included. The axial stack that holds the parts together is another check:
/// <see cref="AxialClosure"/>.
/// </para>
/// <para>
/// Caution: a calculated fit does not prove tightness, and no rubber resists every fuel. Ask the maker, and test the
/// joint.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SealExamples.cs" region="RailSeal" />
/// </example>
/// <seealso href="../guide/seals.html">Seals</seealso>
public sealed partial class ORingFit
{
    /// <summary>Computes the fit of a ring in a groove.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="gland">The groove.</param>
    /// <param name="state">How both have changed since they were measured.</param>
    /// <exception cref="ArgumentNullException">Ring or groove is null.</exception>
    public ORingFit(ORing ring, Gland gland, Conditions state)
    {
        ArgumentNullException.ThrowIfNull(ring);
        ArgumentNullException.ThrowIfNull(gland);
        (Ring, Gland, State) = (ring, gland, state);
        Squeeze = Of(m => SealFit.Squeeze(new Real(Room(m)), Section(m)).Value);
        Stretch = Of(m => StretchOf(m).Value);
        Fill = Of(FillOf);
        Oversize = Of(OversizeOf);
    }

    /// <summary>The ring.</summary>
    public ORing Ring { get; }

    /// <summary>The groove.</summary>
    public Gland Gland { get; }

    /// <summary>How both have changed since they were measured.</summary>
    public Conditions State { get; }

    /// <summary>The compression of the section, as a fraction of the section as installed.</summary>
    public TolerancedLength.Band<Ratio> Squeeze { get; }

    /// <summary>The stretch of the ring on its seat; negative where it sits loose.</summary>
    public TolerancedLength.Band<Ratio> Stretch { get; }

    /// <summary>
    /// The fraction of the groove that it fills, by volume: stretch and squeeze do not change a ring's volume, swelling
    /// does.
    /// </summary>
    public TolerancedLength.Band<Ratio> Fill { get; }

    /// <summary>
    /// The excess of its size over that of its seat or groove; negative where it is smaller. Radial: its inside
    /// diameter over the diameter that it sits on. Face: its outside diameter over that of the groove.
    /// </summary>
    public TolerancedLength.Band<Ratio> Oversize { get; }

    /// <summary>The squeeze on the side with the largest gap when the inner part is off center.</summary>
    /// <param name="offset">Distance of its axis from that of the outer part; not negative.</param>
    /// <returns>The squeeze there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The offset is negative or not finite.</exception>
    /// <exception cref="InvalidOperationException">It is a face gland, which has no center.</exception>
    public TolerancedLength.Band<Ratio> SqueezeOffCenter(Length offset)
    {
        double off = Guard.NotNegative(offset, offset.InSi());
        return Gland.Kind == Gland.GlandKind.Face
            ? throw new RefusedOperationException(
                RefusalCode.WrongKind,
                "A face gland has no center to stand off from."
            )
            : Of(m => SealFit.Squeeze(new Real(Room(m) + off), Section(m)).Value);
    }

    /// <summary>Checks the fit against limits.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>The findings, always with the question about the rubber.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is null.</exception>
    public ImmutableArray<Finding> Check(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return SealFindings.Of(this, limits);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"squeeze {Squeeze}, stretch {Stretch}, fill {Fill}");

    private TolerancedLength.Band<Ratio> Of(Func<double[], double> result) =>
        Spread.Of(result, Ring.InsideDiameter, Ring.CrossSection, Gland.Inner, Gland.Outer, Gland.Width).ToRatio();

    private double Room(double[] m) => Gland.Room(m[2], m[3]) * State.MetalFactor;

    private double FillOf(double[] m)
    {
        Real ring = SealFit.RingVolume(new Real(m[0] * State.RingFactor), new Real(m[1] * State.RingFactor));
        (double inner, double outer, double length) =
            Gland.Kind == Gland.GlandKind.Face ? (m[2], m[2] + (2 * m[4]), m[3]) : (m[2], m[3], m[4]);
        Real groove = SealFit.GrooveVolume(
            new Real(inner * State.MetalFactor),
            new Real(outer * State.MetalFactor),
            new Real(length * State.MetalFactor)
        );
        return SealFit.Fill(ring, groove).Value;
    }

    private double OversizeOf(double[] m)
    {
        (double ring, double seat) =
            Gland.Kind == Gland.GlandKind.Face ? (m[0] + (2 * m[1]), m[2] + (2 * m[4])) : (m[0], m[2]);
        return (ring * State.RingFactor / (seat * State.MetalFactor)) - 1;
    }

    private Real StretchOf(double[] m) =>
        SealFit.Stretch(new Real(m[2] * State.MetalFactor), new Real(m[0] * State.RingFactor));

    /// <summary>
    /// The section as installed: changed with the ring, thinned by stretch. A face groove does not stretch its ring.
    /// </summary>
    private Real Section(double[] m)
    {
        Real free = new(m[1] * State.RingFactor);
        return Gland.Kind == Gland.GlandKind.Face
            ? free
            : free * (1 - SealFit.SectionReduction(StretchOf(m), new Real(m[0] / m[1])));
    }
}
