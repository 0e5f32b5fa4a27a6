using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The effect of a wrong belief on the mixture. SI units.</summary>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public static class MixtureError
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource LambdaFactorSource = new("SAE-J1832", "the straight line with its time offset");

    internal static readonly DataSource MeanLambdaSource = new(
        "Heywood-1988",
        "section 3.4 (relative air/fuel ratio) for the sums"
    );

    internal static readonly Symbol Factor = new("k", "", "lambda over the lambda intended");

    /// <summary>Lambda over the intended lambda: k = a / (f sqrt(r)) x w / (w - dt).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airRatio">a: actual air over believed air; greater than zero.</param>
    /// <param name="flowRatio">f: static flow over believed flow, at the same pressure; greater than zero.</param>
    /// <param name="pressureRatio">r: differential pressure over the believed one; greater than zero.</param>
    /// <param name="effectiveWidth">w: commanded width minus the believed dead time, s; greater than the error.</param>
    /// <param name="deadTimeError">dt: dead time minus the believed dead time, s; either sign.</param>
    /// <returns>The factor: above 1 leaner than intended, below 1 richer.</returns>
    /// <remarks>
    /// In the linear range. Source: [SAE-J1832] the straight line with its time offset; [White-2003] section 6.12 for the
    /// root; [Heywood-1988] section 3.4 for lambda.
    /// </remarks>
    [MethodImpl(Inline)]
    public static T LambdaFactor<T>(T airRatio, T flowRatio, T pressureRatio, T effectiveWidth, T deadTimeError)
        where T : struct, IScalar<T> =>
        T.Step(
            airRatio / (flowRatio * T.Sqrt(pressureRatio)) * (effectiveWidth / (effectiveWidth - deadTimeError)),
            Factor,
            LambdaFactorSource
        );

    /// <summary>
    /// The mean lambda of cylinders with unequal air and fuel: total air over the air that the total fuel needs.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="airMasses">Air of each cylinder, kg; one or more.</param>
    /// <param name="fuelMasses">Fuel of each, kg; their sum greater than zero.</param>
    /// <param name="stoichiometricRatio">Stoichiometric ratio by mass; greater than zero.</param>
    /// <returns>Lambda as read by one sensor behind all of them.</returns>
    /// <remarks>
    /// A mean hides the leanest cylinder. With equal air it is <see cref="EngineAir.HarmonicMeanLambda"/>.
    /// Source: [Heywood-1988] section 3.4 (relative air/fuel ratio) for the sums.
    /// </remarks>
    /// <exception cref="ArgumentException">The spans are empty or differ in length.</exception>
    public static T MeanLambda<T>(ReadOnlySpan<T> airMasses, ReadOnlySpan<T> fuelMasses, T stoichiometricRatio)
        where T : struct, IScalar<T>
    {
        if (airMasses.IsEmpty || airMasses.Length != fuelMasses.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have as many fuel masses as air masses, {1:least} or more.",
                nameof(airMasses)
            );
        }

        (T air, T fuel) = (airMasses[0], fuelMasses[0]);
        for (int i = 1; i < airMasses.Length; i++)
        {
            air += airMasses[i];
            fuel += fuelMasses[i];
        }

        return Combustion.Lambda(air, fuel, stoichiometricRatio);
    }
}
