using System.Runtime.CompilerServices;
using FuelMath.Scalars;

namespace FuelMath.Formulas;

/// <summary>How an O-ring sits in its groove. SI units; fractions are pure numbers.</summary>
public static class SealFit
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    /// <summary>How far a ring is stretched over its seat: X = (seat - ring) / ring.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="seatDiameter">Diameter that the ring sits on, m.</param>
    /// <param name="insideDiameter">Inside diameter of the free ring, m; greater than zero.</param>
    /// <returns>The stretch; negative where the ring sits loose.</returns>
    /// <remarks>Source: [SAE-AS4716] appendix A.</remarks>
    [MethodImpl(Inline)]
    public static T Stretch<T>(T seatDiameter, T insideDiameter)
        where T : struct, IScalar<T> => T.Step((seatDiameter - insideDiameter) / insideDiameter, Symbols.Stretch);

    /// <summary>By which fraction stretching thins the cross-section of a ring.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="stretch">Stretch, to 0.25; nothing is thinned below zero.</param>
    /// <param name="slenderness">Inside diameter over cross-section of the free ring, greater than zero.</param>
    /// <returns>The reduction, 0 to 1.</returns>
    /// <remarks>
    /// Two straight-fitted parabolas in the stretch that meet at 3 %, for rings more than 2.95 cross-sections wide; another
    /// formula for narrower ones. It is more than constant volume gives, because a stretched section does not stay round.
    /// Source: [SAE-AS4716] appendix A.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T SectionReduction<T>(T stretch, T slenderness)
        where T : struct, IScalar<T>
    {
        T small = 0.0001 + (stretch * (1.06 - (10 * stretch)));
        T large = 0.0056 + (stretch * (0.59 - (0.46 * stretch)));
        T wide = T.Select(T.Less(T.Of(0.03), stretch), large, small);
        T percent = 100 * T.Max(stretch, T.Of(0));
        T narrow = percent / ((315 * T.Exp(-slenderness)) + 165 + percent);
        T either = T.Select(T.Less(T.Of(2.95), slenderness), wide, narrow);
        return T.Step(T.Select(T.Less(T.Of(0), stretch), either, T.Of(0)), Symbols.SectionReduction);
    }

    /// <summary>The squeeze of a section between two walls: S = 1 - room / section.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="room">Distance between the walls, m.</param>
    /// <param name="section">Cross-section of the ring as it sits, m; greater than zero.</param>
    /// <returns>The squeeze; zero or less where the ring does not touch both walls.</returns>
    /// <remarks>Source: [SAE-AS4716] appendix A.</remarks>
    [MethodImpl(Inline)]
    public static T Squeeze<T>(T room, T section)
        where T : struct, IScalar<T> => T.Step(1 - (room / section), Symbols.Squeeze);

    /// <summary>How much of a rectangular groove the ring fills: pi/4 section^2 / (room width).</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="section">Cross-section of the ring as it sits, m.</param>
    /// <param name="room">Depth of the groove with its gap, m; greater than zero.</param>
    /// <param name="width">Width of the groove, m; greater than zero.</param>
    /// <returns>The fill.</returns>
    /// <remarks>Source: [Definition] areas of a circle and a rectangle.</remarks>
    [MethodImpl(Inline)]
    public static T Fill<T>(T section, T room, T width)
        where T : struct, IScalar<T> => T.Step(Math.PI / 4 * section * section / (room * width), Symbols.GrooveFill);
}
