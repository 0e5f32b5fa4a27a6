using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Volumetric efficiency against engine speed and manifold pressure: air that a chamber takes in over the air that
/// would fill its displacement at manifold pressure and charge temperature.
/// </summary>
/// <remarks>
/// The reference density is that of the manifold, not of the ambient air: a table for the ambient density, above 100 %
/// for a boosted engine, must not be used here. For a two-stroke it is the delivery ratio: air sent in, not air kept.
/// Bilinear between its points.
/// </remarks>
/// <seealso href="../guide/engines.html">Engines</seealso>
public sealed class VolumetricEfficiency
{
    /// <summary>A greater value belongs to a table for another reference density.</summary>
    internal const double Most = 2;

    private const double RpmPerRadian = 30 / Math.PI;

    private const string Called = "Volumetric efficiency";

    private readonly Grid? grid;
    private readonly double constant;
    private readonly ImmutableArray<Ratio> given;

    // Set in the copy that belongs to an engine, and never after.
    private string? engine;

    /// <summary>Creates a table.</summary>
    /// <param name="speeds">Engine speeds; two or more, rising.</param>
    /// <param name="manifoldPressures">Absolute pressures; two or more, rising.</param>
    /// <param name="values">A row for each speed, a column for each pressure; above 0 % and up to 200 %. Copied.</param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <param name="source">Where the values come from.</param>
    /// <exception cref="ArgumentException">The axes or the values do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 % and up to 200 %, or a speed is negative.</exception>
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
        (Speeds, ManifoldPressures, given) = ([.. speeds], [.. manifoldPressures], [.. values.Cast<Ratio>()]);
        var numbers = new double[values.GetLength(0), values.GetLength(1)];
        for (int i = 0; i < values.GetLength(0); i++)
        {
            for (int j = 0; j < values.GetLength(1); j++)
            {
                numbers[i, j] = Efficiency(values[i, j], nameof(values));
            }
        }

        grid = new Grid(
            Called,
            new Grid.Axis("engine speed (rpm)", Speeds.Select(s => Rpm(NotBackwards(s)))),
            new Grid.Axis("manifold pressure (kPa absolute)", ManifoldPressures.Select(Kilopascals)),
            numbers,
            outside
        );
        Source = source;
    }

    /// <summary>A speed of the table: an engine does not run backwards.</summary>
    private static RotationalSpeed NotBackwards(RotationalSpeed speed)
    {
        Guard.NotNegative(speed, speed.InSi(), "speeds");
        return speed;
    }

    private VolumetricEfficiency(
        Grid? grid,
        ImmutableArray<RotationalSpeed> speeds,
        ImmutableArray<AbsolutePressure> manifoldPressures,
        ImmutableArray<Ratio> given,
        DataSource source
    )
    {
        this.grid = grid;
        this.given = given;
        constant = grid is null ? Efficiency(given[0], "value") : double.NaN;
        (Speeds, ManifoldPressures, Source) = (speeds, manifoldPressures, source);
    }

    /// <summary>The speeds of the table; empty for one value everywhere.</summary>
    public ImmutableArray<RotationalSpeed> Speeds { get; }

    /// <summary>
    /// The manifold pressures of the table; a single one where it does not depend on them, empty for one value
    /// everywhere.
    /// </summary>
    public ImmutableArray<AbsolutePressure> ManifoldPressures { get; }

    /// <summary>The behavior beyond the edges; of no effect for one value everywhere.</summary>
    public OutsideRange Outside => grid?.Outside ?? OutsideRange.HoldEnds;

    /// <summary>Where the values come from.</summary>
    public DataSource Source { get; }

    /// <summary>A table over speed alone, taken at one manifold pressure and used for all.</summary>
    /// <param name="speeds">Engine speeds; two or more, rising.</param>
    /// <param name="takenAt">The manifold pressure at which the values were taken.</param>
    /// <param name="values">A value for each speed, above 0 % and up to 200 %.</param>
    /// <param name="outside">The behavior beyond the ends.</param>
    /// <param name="source">Where the values come from.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">The axes or the values do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 % and up to 200 %, or a speed is negative.</exception>
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
        ImmutableArray<RotationalSpeed> knots = [.. speeds];
        ImmutableArray<Ratio> given = [.. values];
        return new(
            Grid.FromFirstAxis(
                Called,
                new Grid.Axis("engine speed (rpm)", knots.Select(s => Rpm(NotBackwards(s)))),
                new Grid.Axis("manifold pressure (kPa absolute)", [Kilopascals(takenAt)]),
                given.Select(v => Efficiency(v, nameof(values))),
                outside
            ),
            knots,
            [takenAt],
            given,
            source
        );
    }

    /// <summary>One value for every speed and pressure: a rough assumption, not a measured engine.</summary>
    /// <param name="value">Above 0 % and up to 200 %.</param>
    /// <param name="source">Where the value comes from.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above 0 % and up to 200 %.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static VolumetricEfficiency FromConstant(Ratio value, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new(null, [], [], [value], source);
    }

    /// <summary>A value of the table as it was given.</summary>
    /// <param name="speedIndex">Index of the speed; zero for one value everywhere.</param>
    /// <param name="pressureIndex">Index of the manifold pressure; zero where the table does not depend on it.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such value.</exception>
    public Ratio ValueAt(int speedIndex, int pressureIndex)
    {
        int columns = Math.Max(1, ManifoldPressures.Length);
        Guard.InRange(speedIndex, 0, Math.Max(1, Speeds.Length) - 1);
        return given[(speedIndex * columns) + Guard.InRange(pressureIndex, 0, columns - 1)];
    }

    /// <summary>The efficiency at a point.</summary>
    /// <param name="speed">Engine speed.</param>
    /// <param name="manifoldPressure">Absolute manifold pressure.</param>
    /// <returns>The efficiency.</returns>
    /// <exception cref="OutsideTableException">The point lies beyond the edges and the table refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The point lies so far beyond the edges of a table that is carried on that nothing above 0 % is left.
    /// </exception>
    public Ratio At(RotationalSpeed speed, AbsolutePressure manifoldPressure) =>
        SiUnits.Ratio(AtSi(speed, manifoldPressure));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Speeds.Length} speeds by {ManifoldPressures.Length} pressures");

    /// <summary>The same of an engine, which its refusals name.</summary>
    internal VolumetricEfficiency Of(string engine)
    {
        var owned = (VolumetricEfficiency)MemberwiseClone();
        owned.engine = engine;
        return owned;
    }

    internal double AtSi(RotationalSpeed speed, AbsolutePressure manifoldPressure)
    {
        if (grid is { Outside: OutsideRange.Refuse })
        {
            Inside(grid, speed, manifoldPressure);
        }

        double value = grid?.At(Rpm(speed), Kilopascals(manifoldPressure)) ?? constant;

        // A table extrapolated beyond its edges may fall to zero.
        return value > 0
            ? value
            : throw Guard.OutOfRange(
                speed,
                "a speed at which the table, carried on beyond its edges, still gives more than nothing",
                part: engine
            );
    }

    /// <summary>Refuses a point beyond the edges, in the units that the point came in.</summary>
    private void Inside(Grid table, RotationalSpeed speed, AbsolutePressure manifoldPressure)
    {
        TableLabel label = new(Called, " of engine", engine);
        ImmutableArray<double> rpm = table.First.Knots;
        Guard.InTable(
            label,
            "engine speed",
            speed,
            speed.InSi(),
            rpm[0] / RpmPerRadian,
            rpm[^1] / RpmPerRadian,
            SiUnits.RotationalSpeed
        );
        if (table.Second.Knots is { Length: > 1 } kilopascals)
        {
            Guard.PressureInTable(
                label,
                "manifold pressure",
                manifoldPressure,
                manifoldPressure.Si,
                1000 * kilopascals[0],
                1000 * kilopascals[^1],
                pascals => new AbsolutePressure(pascals)
            );
        }
    }

    private static double Efficiency(Ratio value, [CallerArgumentExpression(nameof(value))] string paramName = "")
    {
        return Guard.PositiveUpTo(value, value.InSi(), Most, SiUnits.Ratio, paramName);
    }

    private static double Rpm(RotationalSpeed speed) => speed.InSi() * RpmPerRadian;

    private static double Kilopascals(AbsolutePressure pressure) => pressure.Si / 1000;
}
