using UnitsNet;

namespace FuelMath;

/// <summary>
/// The measured exponent of differential pressure in a static flow, in place of the square root, with its range of
/// pressures.
/// </summary>
/// <remarks>
/// One half is the law of a sharp-edged opening; friction in narrow passages raises it, a yielding seat or plate lowers
/// or raises it. It was measured with one fluid: the effect of another density is still that of the square-root law.
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed class MeasuredExponent
{
    private const double Least = 0.3;
    private const double Most = 1;

    private readonly double low;
    private readonly double high;

    // Set in the copy that belongs to an injector, and never after.
    private string? injector;

    /// <summary>Creates an exponent.</summary>
    /// <param name="exponent">The exponent, a pure number; 30 % to 100 %, where 50 % is the square root.</param>
    /// <param name="lowestDifferentialPressure">The lowest pressure of the readings; greater than zero.</param>
    /// <param name="highestDifferentialPressure">The highest; above the lowest.</param>
    /// <param name="outside">
    /// The behavior beyond them: refuse, or extend the power law. Holding the ends is not allowed.
    /// </param>
    /// <param name="source">Where the readings come from.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="outside"/> is neither <see cref="OutsideRange.Refuse"/> nor <see cref="OutsideRange.Extend"/>.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public MeasuredExponent(
        Ratio exponent,
        Pressure lowestDifferentialPressure,
        Pressure highestDifferentialPressure,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        ExponentSi = Guard.InRange(exponent, exponent.InSi(), Least, Most, SiUnits.Ratio);
        low = Guard.Positive(lowestDifferentialPressure, lowestDifferentialPressure.InSi());
        high = Guard.Positive(highestDifferentialPressure, highestDifferentialPressure.InSi());
        if (high <= low)
        {
            throw Guard.OutOfRange(
                highestDifferentialPressure,
                $"above the lowest, {lowestDifferentialPressure:above}"
            );
        }

        if (outside is not (OutsideRange.Refuse or OutsideRange.Extend))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be {OutsideRange.Refuse:allowed} or {OutsideRange.Extend:allowed}; it was {outside:given}.",
                nameof(outside)
            );
        }

        (Exponent, LowestDifferentialPressure) = (exponent, lowestDifferentialPressure);
        (HighestDifferentialPressure, Outside, Source) = (highestDifferentialPressure, outside, source);
    }

    /// <summary>The exponent, a pure number.</summary>
    public Ratio Exponent { get; }

    /// <summary>The lowest pressure of the readings.</summary>
    public Pressure LowestDifferentialPressure { get; }

    /// <summary>The highest pressure of the readings.</summary>
    public Pressure HighestDifferentialPressure { get; }

    /// <summary>The behavior beyond them.</summary>
    public OutsideRange Outside { get; }

    /// <summary>Where the readings come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Exponent:1} from {LowestDifferentialPressure} to {HighestDifferentialPressure}");

    internal double ExponentSi { get; }

    /// <summary>The same exponent of an injector, which its refusals name.</summary>
    internal MeasuredExponent Of(string injector)
    {
        var owned = (MeasuredExponent)MemberwiseClone();
        owned.injector = injector;
        return owned;
    }

    /// <summary>Whether a pressure, Pa, lies within the readings.</summary>
    internal bool Reaches(double pascals) => pascals >= low && pascals <= high;

    /// <summary>The pressure, Pa, or the nearest one of the readings where the law is not extended.</summary>
    internal double Held(double pascals) => Outside == OutsideRange.Extend ? pascals : Math.Clamp(pascals, low, high);

    /// <summary>The pressure, Pa; refused beyond the readings unless the law is extended.</summary>
    internal double Checked(Pressure differentialPressure, double pascals) =>
        Outside == OutsideRange.Extend
            ? pascals
            : Guard.InTable(
                new TableLabel("Measured exponent", " of injector", injector),
                "differential pressure",
                differentialPressure,
                pascals,
                low,
                high,
                SiUnits.Pressure
            );
}
