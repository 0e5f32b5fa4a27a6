using FuelMath.Internal;
using FuelMath.Quantities;
using FuelMath.Sources;
using FuelMath.Tables;
using UnitsNet;

namespace FuelMath.Engines;

/// <summary>
/// Volumetric efficiency against engine speed and manifold pressure: air that a chamber takes in over the air that
/// would fill its displacement at manifold pressure and charge temperature.
/// </summary>
/// <remarks>
/// The reference density is that of the manifold, not of the ambient air: a table made for the ambient density gives a
/// boosted engine more than 100 % and is another table. For a two-stroke it is the delivery ratio: air sent in, not air
/// kept. Bilinear between its points. Immutable and safe to share between threads; equality is by reference.
/// </remarks>
public sealed class VolumetricEfficiency
{
    /// <summary>More than this is a table for another reference density.</summary>
    internal const double Most = 2;

    private const double RpmPerRadian = 30 / Math.PI;

    private readonly Grid? grid;
    private readonly double constant;

    /// <summary>Sets down a table.</summary>
    /// <param name="speeds">Engine speeds; two or more, rising.</param>
    /// <param name="manifoldPressures">Absolute pressures; two or more, rising.</param>
    /// <param name="values">A row for each speed, a column for each pressure; above 0 % and up to 200 %. Copied.</param>
    /// <param name="outside">What happens beyond the edges.</param>
    /// <param name="source">Where the values come from.</param>
    /// <exception cref="ArgumentException">The numbers do not make a table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 % and up to 200 %.</exception>
    public VolumetricEfficiency(
        IEnumerable<RotationalSpeed> speeds,
        IEnumerable<AbsolutePressure> manifoldPressures,
        Ratio[,] values,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(speeds);
        ArgumentNullException.ThrowIfNull(manifoldPressures);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(source);
        var numbers = new double[values.GetLength(0), values.GetLength(1)];
        for (int i = 0; i < values.GetLength(0); i++)
        {
            for (int j = 0; j < values.GetLength(1); j++)
            {
                numbers[i, j] = Efficiency(values[i, j], nameof(values));
            }
        }

        grid = new Grid(
            "Volumetric efficiency",
            "engine speed in rpm",
            "manifold pressure in kPa absolute",
            speeds.Select(Rpm),
            manifoldPressures.Select(Kilopascals),
            numbers,
            outside
        );
        Source = source;
    }

    private VolumetricEfficiency(Grid? grid, double constant, DataSource source)
    {
        this.grid = grid;
        this.constant = constant;
        Source = source;
    }

    /// <summary>Where the values come from.</summary>
    public DataSource Source { get; }

    /// <summary>A table over speed alone, taken at one manifold pressure and used for all.</summary>
    /// <param name="speeds">Engine speeds; two or more, rising.</param>
    /// <param name="takenAt">The manifold pressure at which the values were taken.</param>
    /// <param name="values">As many values, above 0 % and up to 200 %.</param>
    /// <param name="outside">What happens beyond the ends.</param>
    /// <param name="source">Where the values come from.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">The numbers do not make a table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 % and up to 200 %.</exception>
    public static VolumetricEfficiency FromSpeeds(
        IEnumerable<RotationalSpeed> speeds,
        AbsolutePressure takenAt,
        IEnumerable<Ratio> values,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(speeds);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(source);
        return new(
            Grid.FromFirstAxis(
                "Volumetric efficiency",
                "engine speed in rpm",
                "manifold pressure in kPa absolute",
                speeds.Select(Rpm),
                Kilopascals(takenAt),
                values.Select(v => Efficiency(v, nameof(values))),
                outside
            ),
            double.NaN,
            source
        );
    }

    /// <summary>One value for every speed and pressure: a rough plan, not a measured engine.</summary>
    /// <param name="value">Above 0 % and up to 200 %.</param>
    /// <param name="source">Where the value comes from.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above 0 % and up to 200 %.</exception>
    public static VolumetricEfficiency Constant(Ratio value, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new(null, Efficiency(value, nameof(value)), source);
    }

    /// <summary>The efficiency at a point.</summary>
    /// <param name="speed">Engine speed.</param>
    /// <param name="manifoldPressure">Absolute manifold pressure.</param>
    /// <returns>The efficiency.</returns>
    /// <exception cref="OutsideTableException">The point lies beyond the edges and the table refuses.</exception>
    public Ratio At(RotationalSpeed speed, AbsolutePressure manifoldPressure) =>
        SiUnits.Ratio(AtSi(speed, manifoldPressure));

    internal double AtSi(RotationalSpeed speed, AbsolutePressure manifoldPressure)
    {
        double value = grid?.At(Rpm(speed), Kilopascals(manifoldPressure)) ?? constant;

        // A table carried on beyond its edges may run down to nothing.
        return value > 0
            ? value
            : throw Guard.OutOfRange(
                speed,
                "a speed at which the table, carried on beyond its edges, still gives more than 0 %",
                nameof(speed)
            );
    }

    private static double Efficiency(Ratio value, string paramName)
    {
        Guard.Positive(value, value.InSi(), paramName);
        return Guard.InRange(value, value.InSi(), 0, Most, SiUnits.Ratio, paramName);
    }

    private static double Rpm(RotationalSpeed speed) => speed.InSi() * RpmPerRadian;

    private static double Kilopascals(AbsolutePressure pressure) => pressure.Si / 1000;
}
