using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The departure of an injector from its straight line at short pulses: a time added to the effective width, zero in
/// the linear range.
/// </summary>
/// <remarks>
/// <para>
/// The mass of a pulse is static flow times (effective width + correction), so the correction scales with static flow.
/// It starts at zero for no effective width and ends at zero where the linear range begins; between the points it is a
/// shape-preserving cubic. The total is never negative.
/// </para>
/// <para>
/// Real injectors may be non-monotonic: in some range a longer pulse delivers less. From <see cref="RisesFrom"/> on a
/// longer pulse always delivers more; only there is a mass converted to a width.
/// </para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed class ShortPulseCorrection
{
    private readonly Curve? curve;
    private readonly double linearFrom;
    private readonly double risesFrom;

    // Set in the copy that belongs to an injector, and never after.
    private string? injector;

    /// <summary>Builds a correction from points.</summary>
    /// <param name="effectiveWidths">
    /// One or more effective widths (pulse width less dead time), rising, greater than zero. The last one is where the
    /// linear range begins. Copied.
    /// </param>
    /// <param name="corrections">
    /// The correction at each width; the last is zero, and none subtracts more than its effective width. Copied.
    /// </param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    public ShortPulseCorrection(
        IEnumerable<Duration> effectiveWidths,
        IEnumerable<Duration> corrections,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(effectiveWidths);
        ArgumentNullException.ThrowIfNull(corrections);
        ArgumentNullException.ThrowIfNull(source);
        (EffectiveWidths, Corrections, Source) = ([.. effectiveWidths], [.. corrections], source);
        double[] x = [0, .. EffectiveWidths.Select(w => Guard.Positive(w, w.InSi(), nameof(effectiveWidths)))];
        double[] y = [0, .. Corrections.Select(c => Guard.Finite(c, c.InSi(), nameof(corrections)))];
        Guard.AtLeast(1, EffectiveWidths.Length, "A short-pulse correction", nameof(effectiveWidths));
        Guard.StrictlyRising(x.AsSpan(1), "Effective width", nameof(effectiveWidths));
        CheckCorrections(x, y, nameof(corrections));
        linearFrom = x[^1];
        curve = new Curve("Short-pulse correction", "effective width (s)", x, y, OutsideRange.HoldEnds);
        risesFrom = RisingBranch.Start(curve);
    }

    private ShortPulseCorrection() =>
        (EffectiveWidths, Corrections, Source) = ([], [], new DataSource("Definition", "no correction"));

    /// <summary>No correction: linear from zero.</summary>
    public static ShortPulseCorrection None { get; } = new();

    /// <summary>The effective widths of the points; empty for none.</summary>
    public ImmutableArray<Duration> EffectiveWidths { get; }

    /// <summary>The corrections of the points; empty for none.</summary>
    public ImmutableArray<Duration> Corrections { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>The effective width from which the injector is linear, in s.</summary>
    public Duration LinearFrom => SiUnits.Duration(linearFrom);

    /// <summary>The effective width from which a longer pulse always delivers more, in s.</summary>
    public Duration RisesFrom => SiUnits.Duration(risesFrom);

    internal double RisesFromSi => risesFrom;

    /// <summary>The correction at an effective width.</summary>
    /// <param name="effectiveWidth">Pulse width less dead time; not negative.</param>
    /// <returns>The time to add to it, in s; zero in the linear range.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effectiveWidth"/> is negative.</exception>
    public Duration At(Duration effectiveWidth) =>
        SiUnits.Duration(SiAt(Guard.NotNegative(effectiveWidth, effectiveWidth.InSi(), part: injector)));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{EffectiveWidths.Length} points");

    /// <summary>The same correction of an injector, which its refusals name; <see cref="None"/> stays the same for all.</summary>
    internal ShortPulseCorrection Of(string injector)
    {
        if (curve is null)
        {
            return this;
        }

        var owned = (ShortPulseCorrection)MemberwiseClone();
        owned.injector = injector;
        return owned;
    }

    internal double SiAt(double effectiveWidth) =>
        curve is null || effectiveWidth >= linearFrom ? 0 : curve.At(effectiveWidth);

    /// <summary>The correction, s, in any scalar.</summary>
    internal T Read<T>(T effectiveWidth)
        where T : struct, IScalar<T> =>
        curve is null
            ? T.Of(0)
            : T.Select(T.Less(effectiveWidth, T.Of(linearFrom)), curve.Read(effectiveWidth), T.Of(0));

    /// <summary>
    /// The effective width on the rising branch at which width plus correction equals a time at static flow.
    /// </summary>
    internal double WidthFor(double timeAtStaticFlow) =>
        curve is null || timeAtStaticFlow >= linearFrom
            ? timeAtStaticFlow
            : RisingBranch.Find(curve, risesFrom, linearFrom, timeAtStaticFlow);

    private static void CheckCorrections(double[] x, double[] y, string paramName)
    {
        if (x.Length != y.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be as many as the effective widths, {x.Length - 1:exactly}; {y.Length - 1:value} given.",
                paramName
            );
        }

        for (int i = 1; i < y.Length; i++)
        {
            if (x[i] + y[i] < 0)
            {
                throw new RefusedArgumentException(
                    RefusalCode.CorrectionTooLarge,
                    $"A correction must not take away more than its effective width; at index {i - 1:index} it does.",
                    paramName
                );
            }
        }

        if (y[^1] != 0)
        {
            const string allowed = "zero where the linear range begins, at the last width";
            throw Guard.OutOfRange(SiUnits.Duration(y[^1]), allowed, paramName);
        }
    }
}
