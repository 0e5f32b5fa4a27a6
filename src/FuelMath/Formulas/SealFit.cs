using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The fit of an O-ring in its groove. SI units; fractions are pure numbers.</summary>
/// <seealso href="../guide/seals.html">Seals</seealso>
public static class SealFit
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource StretchSource = new("SAE-AS4716", "appendix A");

    internal static readonly DataSource SectionReductionSource = new("SAE-AS4716", "appendix A");

    internal static readonly DataSource SqueezeSource = new("SAE-AS4716", "appendix A");

    internal static readonly DataSource FillSource = new("Definition", "volumes");

    internal static readonly DataSource RingVolumeSource = new("Definition", "volume of a torus");

    internal static readonly DataSource GrooveVolumeSource = new("Definition", "volume of a hollow cylinder");

    // The rounded coefficients of the standard leave small steps between its pieces. To keep the result continuous, the
    // pieces change over where they meet. The parabolas, 0.0001 + 1.06 X - 10 X^2 and 0.0056 + 0.59 X - 0.46 X^2, are
    // equal where 9.54 X^2 - 0.47 X + 0.0055 = 0, of which this is the root near the 3 % that the standard names:
    // 0.030135. (The other root is 0.0191.)
    private static readonly double ParabolasMeet = (0.47 + Math.Sqrt((0.47 * 0.47) - (4 * 9.54 * 0.0055))) / (2 * 9.54);

    /// <summary>The stretch of a ring over its seat: X = (seat - ring) / ring.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="seatDiameter">Diameter that the ring sits on, m.</param>
    /// <param name="insideDiameter">Inside diameter of the free ring, m; greater than zero.</param>
    /// <returns>The stretch; negative where the ring sits loose.</returns>
    /// <remarks>Source: [SAE-AS4716] appendix A.</remarks>
    [MethodImpl(Inline)]
    public static T Stretch<T>(T seatDiameter, T insideDiameter)
        where T : struct, IScalar<T> =>
        T.Step((seatDiameter - insideDiameter) / insideDiameter, Symbols.Stretch, StretchSource);

    /// <summary>The fraction by which stretching thins the cross-section of a ring.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="stretch">Stretch, to 0.25; a ring that sits loose is not thinned.</param>
    /// <param name="slenderness">Inside diameter over cross-section of the free ring, greater than zero.</param>
    /// <returns>The reduction, 0 to 1.</returns>
    /// <remarks>
    /// For rings more than 2.95 cross-sections wide two parabolas in the stretch; another formula for narrower ones. It
    /// is more than constant volume gives, because a stretched section does not stay round.
    /// <para>
    /// Continuous in the stretch: the parabolas change over where they are equal, at 3.0135 %, and not at the 3 % of
    /// the standard, which moves the reduction by at most 0.000014 between the two. The first is 0.0001 at zero stretch
    /// and reaches zero at -0.0094 %. At 2.95 cross-sections the formulas of the standard differ by up to 0.008 (at 4 %
    /// of stretch a slender ring thins by 0.0285, a narrow one by 0.0216); that step is kept.
    /// </para>
    /// Source: [SAE-AS4716] appendix A.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T SectionReduction<T>(T stretch, T slenderness)
        where T : struct, IScalar<T>
    {
        T small = 0.0001 + (stretch * (1.06 - (10 * stretch)));
        T large = 0.0056 + (stretch * (0.59 - (0.46 * stretch)));
        T wide = T.Max(T.Select(T.Less(T.Of(ParabolasMeet), stretch), large, small), T.Of(0));
        T percent = 100 * T.Max(stretch, T.Of(0));
        T narrow = percent / ((315 * T.Exp(-slenderness)) + 165 + percent);
        return T.Step(
            T.Select(T.Less(T.Of(2.95), slenderness), wide, narrow),
            Symbols.SectionReduction,
            SectionReductionSource
        );
    }

    /// <summary>The squeeze of a section between two walls: S = 1 - room / section.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="room">Distance between the walls, m.</param>
    /// <param name="section">Cross-section of the ring as it sits, m; greater than zero.</param>
    /// <returns>The squeeze; zero or less where the ring does not touch both walls.</returns>
    /// <remarks>Source: [SAE-AS4716] appendix A.</remarks>
    [MethodImpl(Inline)]
    public static T Squeeze<T>(T room, T section)
        where T : struct, IScalar<T> => T.Step(1 - (room / section), Symbols.Squeeze, SqueezeSource);

    /// <summary>The volume of a ring: pi^2/4 W^2 (d + W).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="insideDiameter">Inside diameter d, m.</param>
    /// <param name="section">Cross-section W, m.</param>
    /// <returns>The volume, m³.</returns>
    /// <remarks>Stretching and squeezing do not change it. Source: [Definition] volume of a torus.</remarks>
    [MethodImpl(Inline)]
    public static T RingVolume<T>(T insideDiameter, T section)
        where T : struct, IScalar<T> =>
        T.Step(
            Math.PI * Math.PI / 4 * section * section * (insideDiameter + section),
            Symbols.RingVolume,
            RingVolumeSource
        );

    /// <summary>The volume between two diameters: pi/4 (do^2 - di^2) b.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="innerDiameter">Inner diameter di, m.</param>
    /// <param name="outerDiameter">Outer diameter do, m; more than the inner.</param>
    /// <param name="length">Length b along the axis, m.</param>
    /// <returns>The volume, m³.</returns>
    /// <remarks>Source: [Definition] volume of a hollow cylinder.</remarks>
    [MethodImpl(Inline)]
    public static T GrooveVolume<T>(T innerDiameter, T outerDiameter, T length)
        where T : struct, IScalar<T> =>
        T.Step(
            Math.PI / 4 * (outerDiameter - innerDiameter) * (outerDiameter + innerDiameter) * length,
            Symbols.GrooveVolume,
            GrooveVolumeSource
        );

    /// <summary>The fraction of its groove that a ring fills: its volume over that of the groove.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="ringVolume">Volume of the ring as it is now, swollen or warm, m³.</param>
    /// <param name="grooveVolume">Volume of the groove with the gap that closes it, m³; greater than zero.</param>
    /// <returns>The fill; at one the rubber, which does not compress, has no room left.</returns>
    /// <remarks>Source: [Definition] volumes.</remarks>
    [MethodImpl(Inline)]
    public static T Fill<T>(T ringVolume, T grooveVolume)
        where T : struct, IScalar<T> => T.Step(ringVolume / grooveVolume, Symbols.GrooveFill, FillSource);
}
