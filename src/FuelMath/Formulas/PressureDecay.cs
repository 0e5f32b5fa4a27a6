using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A closed volume of liquid with some gas in it, and how its pressure falls when it leaks. SI units.</summary>
/// <remarks>
/// Liquid and walls release volume in proportion to the fall of pressure; trapped gas releases more as its pressure
/// falls. The gas is ideal and keeps the temperature of the liquid.
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public static class PressureDecay
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource ComplianceSource = new("White-2003", "section 1.8 (bulk modulus)");

    internal static readonly DataSource ReleasedVolumeSource = new("White-2003", "section 1.8 (bulk modulus)");

    internal static readonly DataSource LeakedVolumeSource = new("White-2003", "section 1.8 (bulk modulus)");

    internal static readonly DataSource LaminarFallTimeSource = new("Definition", "integration of C dp = -q dt");

    internal static readonly DataSource OrificeFallTimeSource = new("Definition", "integration of C dp = -q dt");

    internal static readonly DataSource MixedResidueSource = new(
        "Levenspiel-1999",
        "chapter 13 (mixed flow and plug flow)"
    );

    internal static readonly DataSource MixedExchangesSource = new(
        "Levenspiel-1999",
        "chapter 13 (mixed flow and plug flow)"
    );

    internal static readonly Symbol MixedResidueResult = new("xr", "", "share of the old fuel that is left");

    internal static readonly Symbol MixedExchangesResult = new(
        "ne",
        "",
        "volume pumped through over the volume flushed"
    );

    internal static readonly Symbol Yield = new("C", "m3/Pa", "compliance");

    internal static readonly Symbol Released = new("dV", "m3", "volume given back");

    internal static readonly Symbol Lost = new("Vl", "m3", "volume leaked");

    internal static readonly Symbol Tangent = new("u0", "", "tangent of an angle of the integral");

    internal static readonly Symbol HalfTangent = new("u", "", "tangent of half the angle before");

    internal static readonly Symbol Angle = new("phi", "", "angle of the integral");

    internal static readonly Symbol Time = new("t", "s", "time of fall");

    /// <summary>The compliance of a closed volume: C = V/K + s V + Vg/p.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³; greater than zero.</param>
    /// <param name="bulkModulus">Isothermal bulk modulus of the liquid, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa; zero for rigid walls.</param>
    /// <param name="gasVolume">Volume of trapped gas at the pressure, m³.</param>
    /// <param name="pressure">Absolute pressure, Pa; greater than zero.</param>
    /// <returns>Compliance, m³/Pa.</returns>
    /// <remarks>For a slow change, in which gas and liquid keep their temperature. Source: [White-2003] section 1.8 (bulk modulus); [Cengel-Boles-2015] ideal gas.</remarks>
    [MethodImpl(Inline)]
    public static T Compliance<T>(T volume, T bulkModulus, T swelling, T gasVolume, T pressure)
        where T : struct, IScalar<T> =>
        T.Step((volume * ((1 / bulkModulus) + swelling)) + (gasVolume / pressure), Yield, ComplianceSource);

    /// <summary>
    /// The volume that a closed volume releases between two pressures at one temperature: V (1/K + s)(p1 - p2) + G
    /// (1/p2 - 1/p1).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Isothermal bulk modulus of the liquid, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="gas">Amount of trapped gas as pressure times volume, Pa m³.</param>
    /// <param name="before">Absolute pressure before, Pa; greater than zero.</param>
    /// <param name="after">Absolute pressure after, Pa; greater than zero.</param>
    /// <returns>Volume of liquid that leaves, m³; negative when pressure rises.</returns>
    /// <remarks>Source: [White-2003] section 1.8 (bulk modulus); [Cengel-Boles-2015] ideal gas.</remarks>
    [MethodImpl(Inline)]
    public static T ReleasedVolume<T>(T volume, T bulkModulus, T swelling, T gas, T before, T after)
        where T : struct, IScalar<T> =>
        T.Step(
            (volume * ((1 / bulkModulus) + swelling) * (before - after)) + (gas * (before - after) / (before * after)),
            Released,
            ReleasedVolumeSource
        );

    /// <summary>The volume that leaked between two readings of pressure and temperature.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Isothermal bulk modulus of the liquid, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="expansion">Coefficient of volume expansion of the liquid less that of the walls, 1/K.</param>
    /// <param name="gas">Amount of trapped gas as pressure times volume at the first temperature, Pa m³.</param>
    /// <param name="before">Absolute pressure before, Pa; greater than zero.</param>
    /// <param name="temperatureBefore">Temperature before, K.</param>
    /// <param name="after">Absolute pressure after, Pa; greater than zero.</param>
    /// <param name="temperatureAfter">Temperature after, K.</param>
    /// <returns>Volume of liquid that left, m³.</returns>
    /// <remarks>
    /// V (1/K + s)(p1 - p2) + V b (T2 - T1) + G (T2/(T1 p2) - 1/p1): liquid and walls to first order, the gas exactly.
    /// Source: [White-2003] section 1.8 (bulk modulus); [Cengel-Boles-2015] ideal gas.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T LeakedVolume<T>(
        T volume,
        T bulkModulus,
        T swelling,
        T expansion,
        T gas,
        T before,
        T temperatureBefore,
        T after,
        T temperatureAfter
    )
        where T : struct, IScalar<T>
    {
        T warming = temperatureAfter - temperatureBefore;
        T gasGrowth = ((before - after) / (before * after)) + (warming / (temperatureBefore * after));
        return T.Step(
            (volume * ((((1 / bulkModulus) + swelling) * (before - after)) + (expansion * warming)))
                + (gas * gasGrowth),
            Lost,
            LeakedVolumeSource
        );
    }

    /// <summary>
    /// The time in which pressure falls through a laminar leak (a long narrow path), whose flow is proportional to the
    /// pressure across it: q = g (p - pa).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Isothermal bulk modulus of the liquid, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="gas">Amount of trapped gas as pressure times volume, Pa m³.</param>
    /// <param name="before">Absolute pressure before, Pa; above the one outside.</param>
    /// <param name="after">Absolute pressure after, Pa; above the one outside.</param>
    /// <param name="outside">Absolute pressure outside, Pa; greater than zero.</param>
    /// <param name="conductance">Flow for each unit of pressure, m³/(s Pa); greater than zero.</param>
    /// <returns>Time, s.</returns>
    /// <remarks>Exact: the integral of compliance over flow. Source: [Definition] integration of C dp = -q dt.</remarks>
    [MethodImpl(Inline)]
    public static T LaminarFallTime<T>(
        T volume,
        T bulkModulus,
        T swelling,
        T gas,
        T before,
        T after,
        T outside,
        T conductance
    )
        where T : struct, IScalar<T>
    {
        T stiff = volume * ((1 / bulkModulus) + swelling);
        T liquid = T.Log((before - outside) / (after - outside));
        T expanding =
            ((liquid - T.Log(before / after)) / (outside * outside)) - ((before - after) / (outside * before * after));
        return T.Step(((stiff * liquid) + (gas * expanding)) / conductance, Time, LaminarFallTimeSource);
    }

    /// <summary>
    /// The time in which pressure falls through a hole, whose flow is proportional to the square root of the pressure
    /// across it: q = k sqrt(p - pa).
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="volume">Volume of liquid, m³.</param>
    /// <param name="bulkModulus">Isothermal bulk modulus of the liquid, Pa; greater than zero.</param>
    /// <param name="swelling">Relative increase of the enclosed volume for each unit of pressure, 1/Pa.</param>
    /// <param name="gas">Amount of trapped gas as pressure times volume, Pa m³.</param>
    /// <param name="before">Absolute pressure before, Pa; above the one outside.</param>
    /// <param name="after">Absolute pressure after, Pa; above the one outside.</param>
    /// <param name="outside">Absolute pressure outside, Pa; greater than zero.</param>
    /// <param name="coefficient">Flow for the root of a unit of pressure, m³/(s sqrt(Pa)); greater than zero.</param>
    /// <returns>Time, s.</returns>
    /// <remarks>Exact: the integral of compliance over flow. Source: [Definition] integration of C dp = -q dt.</remarks>
    public static T OrificeFallTime<T>(
        T volume,
        T bulkModulus,
        T swelling,
        T gas,
        T before,
        T after,
        T outside,
        T coefficient
    )
        where T : struct, IScalar<T>
    {
        T first = T.Sqrt(before - outside);
        T last = T.Sqrt(after - outside);
        T root = T.Sqrt(outside);
        T angle = Arctangent(
            T.Step(root * (first - last) / (outside + (first * last)), Tangent, OrificeFallTimeSource)
        );
        T expanding = (((first / before) - (last / after)) / outside) + (angle / (outside * root));
        T stiff = volume * ((1 / bulkModulus) + swelling);
        return T.Step(((2 * stiff * (first - last)) + (gas * expanding)) / coefficient, Time, OrificeFallTimeSource);
    }

    /// <summary>The fraction of old fuel that is left when a well-mixed volume is flushed: exp(-n).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="exchanges">Volume pumped through over the volume that is flushed.</param>
    /// <returns>Share of the old fuel in what is there now.</returns>
    /// <remarks>
    /// For a well-stirred tank; a line with plug flow needs only one exchange. Source: [Levenspiel-1999] chapter 13
    /// (mixed flow and plug flow).
    /// </remarks>
    [MethodImpl(Inline)]
    public static T MixedResidue<T>(T exchanges)
        where T : struct, IScalar<T> => T.Step(T.Exp(-exchanges), MixedResidueResult, MixedResidueSource);

    /// <summary>
    /// The exchanges that leave a given fraction of old fuel in a well-mixed volume: the inverse of
    /// <see cref="MixedResidue"/>.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="residue">Share of the old fuel that may stay; above zero.</param>
    /// <returns>Volume to pump through over the volume that is flushed.</returns>
    /// <remarks>Source: [Levenspiel-1999] chapter 13 (mixed flow and plug flow).</remarks>
    [MethodImpl(Inline)]
    public static T MixedExchanges<T>(T residue)
        where T : struct, IScalar<T> => T.Step(-T.Log(residue), MixedExchangesResult, MixedExchangesSource);

    /// <summary>
    /// The arctangent of a number that is not negative, by halving the angle three times and a power series.
    /// </summary>
    private static T Arctangent<T>(T x)
        where T : struct, IScalar<T>
    {
        for (int halving = 0; halving < 3; halving++)
        {
            x = T.Step(x / (1 + T.Sqrt(1 + (x * x))), HalfTangent, OrificeFallTimeSource);
        }

        // Below tan(pi/16) = 0.199 the first term left out is x^25/25, below 2e-19.
        T square = x * x;
        T sum = T.Of(1.0 / 23);
        for (int n = 21; n > 0; n -= 2)
        {
            sum = (1.0 / n) - (square * sum);
        }

        return T.Step(8 * x * sum, Angle, OrificeFallTimeSource);
    }
}
