using UnitsNet;

namespace FuelMath.Joints;

/// <summary>A length with its tolerance from the drawing, the same to both sides.</summary>
/// <remarks>For an asymmetric tolerance give the limits: the nominal is then their middle.</remarks>
public sealed class TolerancedLength
{
    /// <summary>Gives a length and its tolerance.</summary>
    /// <param name="nominal">The nominal length; greater than zero.</param>
    /// <param name="tolerance">Allowed deviation to either side; not negative, and less than the length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public TolerancedLength(Length nominal, Length tolerance)
    {
        NominalSi = Guard.Positive(nominal, nominal.InSi());
        ToleranceSi = Guard.NotNegative(tolerance, tolerance.InSi());
        if (ToleranceSi >= NominalSi)
        {
            throw Guard.OutOfRange(tolerance, $"less than the length, {Guard.Show(nominal, tolerance.Unit)}");
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
    /// <param name="least">The least; greater than zero.</param>
    /// <param name="greatest">The most; that or more.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static TolerancedLength FromLimits(Length least, Length greatest)
    {
        double low = Guard.Positive(least, least.InSi());
        double high = Guard.Positive(greatest, greatest.InSi());
        return high >= low
            ? new(SiUnits.Length((low + high) / 2), SiUnits.Length((high - low) / 2))
            : throw Guard.OutOfRange(greatest, $"at least {Guard.Show(least, greatest.Unit)}");
    }

    /// <summary>A length as measured on the part, without tolerance.</summary>
    /// <param name="length">The length; greater than zero.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not greater than zero.</exception>
    public static TolerancedLength Measured(Length length) => new(length, SiUnits.Length(0));

    /// <summary>Formats length and tolerance in millimeters.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{NominalSi * 1e3:0.###} ± {ToleranceSi * 1e3:0.###} mm");
}
