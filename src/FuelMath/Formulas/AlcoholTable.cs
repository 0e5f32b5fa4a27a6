using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>
/// Mixtures of ethanol and water, whose volume is less than the sum of the parts' volumes. Source: [OIML-R22] general
/// formula. SI units.
/// </summary>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public static class AlcoholTable
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource DensitySource = new("OIML-R22", "general formula");

    internal static readonly DataSource MixedVolumeSource = new("OIML-R22", "general formula");

    internal static readonly Symbol MixtureDensity = new("rhoew", "kg/m3", "density of ethanol and water");

    internal static readonly Symbol EthanolShare = new("we", "", "mass fraction of ethanol");

    internal static readonly Symbol MixtureVolume = new("Vew", "m3", "volume of ethanol and water mixed");

    /// <summary>Density of a mixture of ethanol and water.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="ethanolMassFraction">Mass fraction of ethanol, 0 to 1.</param>
    /// <param name="temperatureCelsius">Temperature, °C; -20 to 40, and not below the freezing point.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: [OIML-R22] general formula.</remarks>
    [MethodImpl(Inline)]
    public static T Density<T>(T ethanolMassFraction, T temperatureCelsius)
        where T : struct, IScalar<T>
    {
        T p = ethanolMassFraction;
        T d = temperatureCelsius - 20;
        T at20 = Polynomial(
            p,
            998.20123,
            -192.9769495,
            389.1238958,
            -1668.103923,
            13522.15441,
            -88292.78388,
            306287.4042,
            -613838.1234,
            747017.2998,
            -547846.1354,
            223446.0334,
            -39032.85426
        );
        T water =
            d * Polynomial(d, -0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11);
        T first =
            p
            * Polynomial(
                p,
                0.1693443461530087,
                -10.46914743455169,
                71.96353469546523,
                -704.7478054272792,
                3924.090430035045,
                -12101.64659068747,
                22486.46550400788,
                -26055.62982188164,
                18523.73922069467,
                -7420.201433430137,
                1285.617841998974
            );
        T second =
            p
            * Polynomial(
                p,
                -0.0119301300505701,
                0.2517399633803461,
                -2.170575700536993,
                13.53034988843029,
                -50.29988758547014,
                109.635566657757,
                -142.2753946421155,
                108.043594285623,
                -44.14153236817392,
                7.442971530188783
            );
        T third =
            p
            * Polynomial(
                p,
                -0.0006802995733503803,
                0.01876837790289664,
                -0.2002561813734156,
                1.02299296671922,
                -2.895696483903638,
                4.810060584300675,
                -4.672147440794683,
                2.458043105903461,
                -0.5411227621436812
            );
        T fourth =
            p
            * Polynomial(p, 4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06);
        T fifth = p * Polynomial(p, -2.788074354782409e-08, 1.345612883493354e-08);
        T mixed = d * (first + (d * (second + (d * (third + (d * (fourth + (d * fifth))))))));
        return T.Step(at20 + water + mixed, MixtureDensity, DensitySource);
    }

    /// <summary>
    /// Volume of a mixture of ethanol and water whose volumes were measured separately at the same temperature.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="ethanolVolume">Volume of ethanol, m³; not negative.</param>
    /// <param name="waterVolume">Volume of water, m³; not negative, and one of the two greater than zero.</param>
    /// <param name="temperatureCelsius">Temperature, °C; 0 to 40.</param>
    /// <returns>Volume, m³; smaller than the sum of the two.</returns>
    /// <remarks>Source: [OIML-R22] general formula; mass is kept.</remarks>
    [MethodImpl(Inline)]
    public static T MixedVolume<T>(T ethanolVolume, T waterVolume, T temperatureCelsius)
        where T : struct, IScalar<T>
    {
        T ethanol = ethanolVolume * Density(T.Of(1), temperatureCelsius);
        T water = waterVolume * Density(T.Of(0), temperatureCelsius);
        T mass = ethanol + water;
        T share = T.Step(ethanol / mass, EthanolShare, MixedVolumeSource);
        return T.Step(mass / Density(share, temperatureCelsius), MixtureVolume, MixedVolumeSource);
    }

    /// <summary>A polynomial by Horner's rule, from the constant term on.</summary>
    [MethodImpl(Inline)]
    private static T Polynomial<T>(T x, params ReadOnlySpan<double> coefficients)
        where T : struct, IScalar<T>
    {
        T sum = coefficients[^2] + (x * coefficients[^1]);
        for (int i = coefficients.Length - 3; i >= 0; i--)
        {
            sum = coefficients[i] + (x * sum);
        }

        return sum;
    }
}
