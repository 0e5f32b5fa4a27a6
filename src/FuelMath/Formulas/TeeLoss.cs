using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>
/// Loss coefficients of tees and wyes for the velocity of the combined flow in the run. Run and combined leg have one
/// bore.
/// </summary>
/// <remarks>
/// A coefficient may be negative: the faster stream drags the slower one along. The branch leaves or joins at 30 to 90
/// degrees; 90 is a tee. Source: [TP-410] chapter 2 with its errata, as the open library fluids states it.
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static class TeeLoss
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource DividingBranchSource = new(
        "TP-410",
        "chapter 2, tees and wyes, as the open library fluids states it"
    );

    internal static readonly DataSource DividingRunSource = new(
        "TP-410",
        "chapter 2, tees and wyes, as the open library fluids states it"
    );

    internal static readonly DataSource CombiningBranchSource = new(
        "TP-410",
        "chapter 2, tees and wyes, as the open library fluids states it"
    );

    internal static readonly DataSource CombiningRunSource = new(
        "TP-410",
        "chapter 2, tees and wyes, as the open library fluids states it"
    );

    /// <summary>
    /// From this angle on a branch counts as that of a tee; between 60 and 75 degrees no formula is right.
    /// </summary>
    private const double LeastTeeAngle = 75;

    /// <summary>Dividing flow, from the combined leg into the branch.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="share">Flow of the branch over combined flow, 0 to 1.</param>
    /// <param name="areaRatio">Area of the branch over area of the run, greater than 0 to 1.</param>
    /// <param name="degrees">Angle between branch and run, degrees, 30 to 90.</param>
    /// <returns>The loss coefficient for the combined velocity.</returns>
    /// <remarks>Source: [TP-410] chapter 2, tees and wyes, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T DividingBranch<T>(T share, T areaRatio, double degrees)
        where T : struct, IScalar<T>
    {
        T speed = share / areaRatio;
        T turned = 1 + (speed * speed) - (2 * Cosine(degrees) * speed);
        if (degrees >= 60)
        {
            // Branches of two thirds of the run's bore and more have a smaller loss.
            Mask<T> wide = T.Less(T.Of(4.0 / 9), areaRatio);
            turned = T.Select(wide, 1 + (0.3 * speed * speed), turned);
        }

        return T.Step(
            DividingFactor(share, areaRatio, degrees) * turned,
            Symbols.LossCoefficient,
            DividingBranchSource
        );
    }

    /// <summary>Dividing flow, along the run.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="share">Flow of the branch over combined flow, 0 to 1.</param>
    /// <param name="areaRatio">Area of the branch over area of the run, greater than 0 to 1.</param>
    /// <returns>The loss coefficient for the combined velocity.</returns>
    /// <remarks>Source: [TP-410] chapter 2, tees and wyes, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T DividingRun<T>(T share, T areaRatio)
        where T : struct, IScalar<T>
    {
        T rise = (2 * share) - 1;
        T wide = T.Select(T.Less(T.Of(0.5), share), 0.3 * rise, 2.0 * rise);
        T factor = T.Select(T.Less(T.Of(0.4), areaRatio), wide, T.Of(0.4));
        return T.Step(factor * share * share, Symbols.LossCoefficient, DividingRunSource);
    }

    /// <summary>Combining flow, from the branch into the combined leg.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="share">Flow of the branch over combined flow, 0 to 1.</param>
    /// <param name="areaRatio">Area of the branch over area of the run, greater than 0 to 1.</param>
    /// <param name="degrees">Angle between branch and run, degrees, 30 to 90.</param>
    /// <returns>The loss coefficient for the combined velocity.</returns>
    /// <remarks>Source: [TP-410] chapter 2, tees and wyes, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T CombiningBranch<T>(T share, T areaRatio, double degrees)
        where T : struct, IScalar<T>
    {
        T speed = share / areaRatio;
        T rest = 1 - share;
        T wide = T.Select(T.Less(T.Of(0.4), share), T.Of(0.55), 0.9 * rest);
        T factor = T.Select(T.Less(T.Of(0.35), areaRatio), wide, T.Of(1));
        T sum = 1 + (speed * speed) - (2 * rest * rest) - (MixingFactor(degrees) * share * speed);
        return T.Step(factor * sum, Symbols.LossCoefficient, CombiningBranchSource);
    }

    /// <summary>Combining flow, along the run.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="share">Flow of the branch over combined flow, 0 to 1.</param>
    /// <param name="areaRatio">Area of the branch over area of the run, greater than 0 to 1.</param>
    /// <param name="degrees">Angle between branch and run, degrees, 30 to 90.</param>
    /// <returns>The loss coefficient for the combined velocity.</returns>
    /// <remarks>Source: [TP-410] chapter 2, tees and wyes, as the open library fluids states it.</remarks>
    [MethodImpl(Inline)]
    public static T CombiningRun<T>(T share, T areaRatio, double degrees)
        where T : struct, IScalar<T>
    {
        T rest = 1 - share;
        T sum =
            degrees >= LeastTeeAngle
                ? share * (1.55 - share)
                : 1 - (rest * rest) - (MixingFactor(degrees) * share * share / areaRatio);
        return T.Step(sum, Symbols.LossCoefficient, CombiningRunSource);
    }

    /// <summary>The factor G of dividing flow.</summary>
    [MethodImpl(Inline)]
    private static T DividingFactor<T>(T share, T areaRatio, double degrees)
        where T : struct, IScalar<T>
    {
        if (degrees >= LeastTeeAngle)
        {
            return T.Select(T.Less(T.Of(2.0 / 3), areaRatio), 1 + (0.3 * share * share), T.Of(1));
        }

        T narrow = T.Select(T.Less(T.Of(0.4), share), T.Of(0.85), 1.1 - (0.7 * share));
        T wide = T.Select(T.Less(T.Of(0.6), share), T.Of(0.6), 1 - (0.6 * share));
        return T.Select(T.Less(T.Of(0.35), areaRatio), wide, narrow);
    }

    private static double Cosine(double degrees) => degrees == 90 ? 0 : Math.Cos(degrees * Math.PI / 180);

    /// <summary>The factor F by angle: 1.74 at 30 degrees, 1.41 at 45, 1 at 60, 0 at 90, linear between.</summary>
    private static double MixingFactor(double degrees) =>
        degrees <= 45 ? 1.74 - (0.33 * (degrees - 30) / 15)
        : degrees <= 60 ? 1.41 - (0.41 * (degrees - 45) / 15)
        : 1 - ((degrees - 60) / 30);
}
