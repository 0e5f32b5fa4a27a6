using System.Globalization;
using System.Text.RegularExpressions;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The metal in a wire's cross-section.</summary>
/// <remarks>
/// A stranded wire of a gauge has about 2 % more resistance than the solid one (Source: [NFPA-70] chapter 9, table 8),
/// and a metric automotive wire may have 7 % to 10 % more than by its nominal area (Source: [ISO-6722], from memory):
/// leave a margin. The ampacity of a wire, and its fuse, follow from the standards and the maker of the wire, not from
/// this library.
/// </remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public sealed partial class WireSize
{
    /// <summary>The thickest gauge, 4/0.</summary>
    internal const int ThickestGauge = -3;

    /// <summary>The thinnest gauge.</summary>
    internal const int ThinnestGauge = 40;

    private WireSize(double area, string name, int? gauge)
    {
        Si = area;
        Name = name;
        Gauge = gauge;
    }

    /// <summary>The usual name of the size, for example <c>12 AWG</c> or <c>2.5 mm²</c>.</summary>
    public string Name { get; }

    /// <summary>Area of metal, in m².</summary>
    public Area Area => SiUnits.Area(Si);

    internal double Si { get; }

    /// <summary>Its gauge; null when it was given by its area.</summary>
    internal int? Gauge { get; }

    /// <summary>A size of the American wire gauge. Source: [ASTM-B258] the rule of the gauge, unrounded.</summary>
    /// <param name="gauge">From -3, which is 4/0, to 40; 0 is 1/0.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside the range.</exception>
    public static WireSize FromAwg(int gauge)
    {
        Guard.InRange(gauge, ThickestGauge, ThinnestGauge);
        string text = (gauge > 0 ? gauge : 1 - gauge).ToString(CultureInfo.InvariantCulture) + (gauge > 0 ? "" : "/0");
        return new(WireResistance.Area(WireResistance.AwgDiameter(new Real(gauge))).Value, $"{text} AWG", gauge);
    }

    /// <summary>A size given by its area.</summary>
    /// <param name="area">Area of metal; greater than zero.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is not greater than zero.</exception>
    public static WireSize FromArea(Area area) =>
        new(Guard.Positive(area, area.InSi()), Guard.Show(area, UnitsNet.Units.AreaUnit.SquareMillimeter), null);

    /// <summary>Reads a size as people write it: "AWG 14", "14 AWG", "4/0", "#12", "2,5 mm2".</summary>
    /// <param name="text">A gauge, or an area with its unit.</param>
    /// <param name="writer">The culture of the writer, which decides about "1,250"; null when it is not known.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside 4/0 to 40, or the area is not greater than zero.</exception>
    /// <exception cref="QuantityTextException">
    /// The text is not a size: for example a number alone, which may be a gauge or an area.
    /// </exception>
    public static WireSize ParseLenient(string text, IFormatProvider? writer)
    {
        ArgumentNullException.ThrowIfNull(text);
        Match match = GaugeText().Match(text);
        if (!match.Success)
        {
            return FromArea(QuantityKinds.Area.ParseLenient(text, writer));
        }

        int number = int.Parse(match.Groups["number"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
        return FromAwg(match.Groups["zeros"].Success ? 1 - number : number);
    }

    /// <summary>The gauge nearest in the logarithm of the area.</summary>
    /// <returns>From -3 (4/0) to 40.</returns>
    /// <exception cref="InvalidOperationException">The size is thicker than 4/0 or thinner than 40 by more than half a gauge.</exception>
    public int ToNearestAwg()
    {
        double gauge = Math.Round(WireResistance.AwgFromArea(new Real(Si)).Value);
        return gauge is >= ThickestGauge and <= ThinnestGauge
            ? (int)gauge
            : throw new RefusedOperationException(
                RefusalCode.NoGauge,
                $"No gauge from 4/0 to 40 AWG is near {Name:given}."
            );
    }

    /// <summary>Gives the usual name of the size.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    [GeneratedRegex(
        @"^\s*(?:(?:AWG|\#)\s*-?\s*(?<number>[0-9]{1,2})(?<zeros>/0)?|(?<number>[0-9]{1,2})(?<zeros>/0)?\s*-?\s*(?:AWG|ga\.?|gauge)|(?<number>[1-4])(?<zeros>/0))\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex GaugeText();
}
