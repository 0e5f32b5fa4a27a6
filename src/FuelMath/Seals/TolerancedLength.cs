using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath.Joints;

/// <summary>A length with its tolerance from the drawing, the same to both sides.</summary>
/// <remarks>For an asymmetric tolerance give the limits: the nominal is then their middle.</remarks>
/// <seealso href="../guide/seals.html">Seals</seealso>
public sealed partial class TolerancedLength
{
    private const double Shortest = 1e-9;
    private const double Longest = 1e3;

    /// <summary>Gives a length and its tolerance.</summary>
    /// <param name="nominal">The nominal length, from 1 nm to 1 km.</param>
    /// <param name="tolerance">Allowed deviation to either side; not negative, and less than the length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public TolerancedLength(Length nominal, Length tolerance)
    {
        NominalSi = OfAPart(nominal);
        ToleranceSi = Guard.NotNegative(tolerance, tolerance.InSi());
        if (ToleranceSi >= NominalSi)
        {
            throw Guard.OutOfRange(tolerance, $"less than the length, {nominal:below}");
        }

        (Nominal, Tolerance) = (nominal, tolerance);
    }

    /// <summary>The nominal length, or the middle of the limits.</summary>
    public Length Nominal { get; }

    /// <summary>Allowed deviation to either side.</summary>
    public Length Tolerance { get; }

    /// <summary>The least that the drawing allows, in m.</summary>
    public Length Least => SiUnits.Length(NominalSi - ToleranceSi);

    /// <summary>The most that the drawing allows, in m.</summary>
    public Length Greatest => SiUnits.Length(NominalSi + ToleranceSi);

    internal double NominalSi { get; }

    internal double ToleranceSi { get; }

    /// <summary>A length between two limits.</summary>
    /// <param name="least">The least, from 1 nm to 1 km.</param>
    /// <param name="greatest">The most, that or more, up to 1 km.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static TolerancedLength FromLimits(Length least, Length greatest)
    {
        double low = OfAPart(least);
        double high = Guard.InRange(greatest, greatest.InSi(), low, Longest, SiUnits.Length);
        return new(SiUnits.Length((low + high) / 2), SiUnits.Length((high - low) / 2));
    }

    /// <summary>A length as measured on the part, without tolerance.</summary>
    /// <param name="length">The length, from 1 nm to 1 km.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not from 1 nm to 1 km.</exception>
    public static TolerancedLength FromMeasured(Length length) => new(length, SiUnits.Length(0));

    private static double OfAPart(Length length, [CallerArgumentExpression(nameof(length))] string paramName = "") =>
        Guard.InRange(length, length.InSi(), Shortest, Longest, SiUnits.Length, paramName);

    /// <summary>Formats length and tolerance in millimeters.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{NominalSi * 1e3:0.###} ± {ToleranceSi * 1e3:0.###} mm");
}
