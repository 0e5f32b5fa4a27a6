using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Heating value estimated from elemental composition, for fuels without a measured one. SI units.</summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class HeatingValue
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource HigherSource = new(
        "Channiwala-Parikh-2002",
        "unified correlation, without ash"
    );

    internal static readonly DataSource LowerSource = new("Definition", "water leaves as vapor");

    /// <summary>Heat of vaporization of water at 25 °C, J/kg. Source: [Cengel-Boles-2015] table A-4.</summary>
    private const double WaterVaporization = 2.442e6;

    /// <summary>Mass of water over mass of hydrogen burned. Source: [Definition] from the atomic weights.</summary>
    private const double WaterPerHydrogen = 8.937;

    internal static readonly Symbol HigherStep = new("HHV", "J/kg", "higher heating value");

    internal static readonly Symbol LowerStep = new("LHV", "J/kg", "lower heating value");

    /// <summary>Higher heating value by the unified correlation for liquid, solid and gaseous fuels.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="carbon">Mass fraction of carbon, 0 to 0.92.</param>
    /// <param name="hydrogen">Mass fraction of hydrogen, 0.004 to 0.25.</param>
    /// <param name="oxygen">Mass fraction of oxygen, 0 to 0.5.</param>
    /// <param name="nitrogen">Mass fraction of nitrogen, 0 to 0.06.</param>
    /// <param name="sulfur">Mass fraction of sulfur, 0 to 0.94.</param>
    /// <returns>J/kg; an estimate, whose authors give 1.45 % as its mean error.</returns>
    /// <remarks>Source: [Channiwala-Parikh-2002] unified correlation, without ash.</remarks>
    [MethodImpl(Inline)]
    public static T Higher<T>(T carbon, T hydrogen, T oxygen, T nitrogen, T sulfur)
        where T : struct, IScalar<T> =>
        T.Step(
            (34.91e6 * carbon) + (117.83e6 * hydrogen) + (10.05e6 * sulfur) - (10.34e6 * oxygen) - (1.51e6 * nitrogen),
            HigherStep,
            HigherSource
        );

    /// <summary>Lower heating value: the water of combustion leaves as vapor.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="higher">Higher heating value, J/kg.</param>
    /// <param name="hydrogen">Mass fraction of hydrogen, 0 to 1.</param>
    /// <returns>J/kg.</returns>
    /// <remarks>Source: [Definition] water leaves as vapor; [Cengel-Boles-2015] heat of vaporization at 25 °C.</remarks>
    [MethodImpl(Inline)]
    public static T Lower<T>(T higher, T hydrogen)
        where T : struct, IScalar<T> =>
        T.Step(higher - (WaterVaporization * WaterPerHydrogen * hydrogen), LowerStep, LowerSource);
}
