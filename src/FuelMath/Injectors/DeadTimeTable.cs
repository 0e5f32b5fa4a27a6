using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The dead time of an injector over voltage and differential pressure: the time offset of the straight line through
/// its linear range.
/// </summary>
/// <remarks>
/// <para>
/// It belongs to the voltage <b>at the injector</b>, after harness and driver. It is not the time the needle takes to
/// open. Bilinear between the points.
/// </para>
/// <para>Source: [SAE-J1832] time offset of the linear range.</para>
/// </remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed partial class DeadTimeTable
{
    private const string Name = "Dead time";
    private const string VoltageAxis = "voltage at the injector (V)";
    private const string PressureAxis = "differential pressure (Pa)";

    private readonly Grid grid;
    private readonly bool[,]? estimated;

    // Set in the copy that belongs to an injector, and never after.
    private string? injector;

    /// <summary>Builds a table over voltage and differential pressure.</summary>
    /// <param name="voltages">Two or more voltages at the injector, rising, greater than zero. Copied.</param>
    /// <param name="differentialPressures">Two or more differential pressures, rising, not negative. Copied.</param>
    /// <param name="values">
    /// Dead times, a row for each voltage and a column for each pressure; not negative, and not rising with voltage. Copied.
    /// </param>
    /// <param name="outside">The behavior beyond the edges.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The numbers do not make a table of the stated shape.</exception>
    public DeadTimeTable(
        IEnumerable<ElectricPotential> voltages,
        IEnumerable<Pressure> differentialPressures,
        Duration[,] values,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(voltages);
        ArgumentNullException.ThrowIfNull(differentialPressures);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(source);
        (Voltages, DifferentialPressures, Source) = ([.. voltages], [.. differentialPressures], source);
        var seconds = new double[values.GetLength(0), values.GetLength(1)];
        for (int i = 0; i < seconds.GetLength(0); i++)
        {
            for (int j = 0; j < seconds.GetLength(1); j++)
            {
                seconds[i, j] = Guard.NotNegative(values[i, j], values[i, j].InSi(), nameof(values));
            }
        }

        grid = new Grid(Name, Volts(), Pascals(), seconds, outside);
        CheckFallsWithVoltage(nameof(values));
    }

    private DeadTimeTable(
        ImmutableArray<ElectricPotential> voltages,
        Pressure takenAt,
        ImmutableArray<Duration> values,
        OutsideRange outside,
        DataSource source
    )
    {
        (Voltages, DifferentialPressures, Source) = (voltages, [takenAt], source);
        IEnumerable<double> seconds = values.Select(v => Guard.NotNegative(v, v.InSi(), nameof(values)));
        grid = Grid.FromFirstAxis(Name, Volts(), Pascals(), seconds, outside);
        CheckFallsWithVoltage(nameof(values));
    }

    private DeadTimeTable(DeadTimeTable from, bool[,] estimated)
    {
        (Voltages, DifferentialPressures, Source) = (from.Voltages, from.DifferentialPressures, from.Source);
        (grid, this.estimated, injector) = (from.grid, estimated, from.injector);
    }

    /// <summary>The voltages of the rows.</summary>
    public ImmutableArray<ElectricPotential> Voltages { get; }

    /// <summary>
    /// The differential pressures of the columns; a single one when the data were taken at one pressure.
    /// </summary>
    public ImmutableArray<Pressure> DifferentialPressures { get; }

    /// <summary>Whether the table holds more than one pressure.</summary>
    public bool DependsOnPressure => DifferentialPressures.Length > 1;

    /// <summary>The behavior beyond the edges.</summary>
    public OutsideRange Outside => grid.Outside;

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>Whether some of its values were estimated from the others.</summary>
    public bool HoldsEstimates => estimated is not null;

    /// <summary>
    /// A table from data taken at one differential pressure and used for all; real dead time grows with pressure.
    /// </summary>
    /// <param name="voltages">Two or more voltages at the injector, rising, greater than zero. Copied.</param>
    /// <param name="takenAtDifferentialPressure">The differential pressure of the data; not negative.</param>
    /// <param name="values">The dead time at each voltage; not negative, and not rising with voltage. Copied.</param>
    /// <param name="outside">The behavior beyond the ends of the voltages.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <returns>The table; <see cref="DependsOnPressure"/> is false.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The numbers do not make a table of the stated shape.</exception>
    public static DeadTimeTable FromVoltage(
        IEnumerable<ElectricPotential> voltages,
        Pressure takenAtDifferentialPressure,
        IEnumerable<Duration> values,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(voltages);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(source);
        return new([.. voltages], takenAtDifferentialPressure, [.. values], outside, source);
    }

    /// <summary>A dead time of the table.</summary>
    /// <param name="voltageIndex">The index in <see cref="Voltages"/>.</param>
    /// <param name="pressureIndex">The index in <see cref="DifferentialPressures"/>.</param>
    /// <returns>The dead time, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An index is outside the table.</exception>
    public Duration ValueAt(int voltageIndex, int pressureIndex) =>
        SiUnits.Duration(grid.ValueAt(voltageIndex, pressureIndex));

    /// <summary>The dead time.</summary>
    /// <param name="atInjector">Voltage at the injector; greater than zero.</param>
    /// <param name="differentialPressure">Inlet less discharge pressure; not negative.</param>
    /// <returns>The dead time, in s.</returns>
    /// <exception cref="OutsideTableException">
    /// Voltage or pressure lies beyond the edges and the table refuses, or extending it would give a negative dead
    /// time.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Duration At(ElectricPotential atInjector, Pressure differentialPressure) =>
        SiUnits.Duration(SiAt(atInjector, differentialPressure));

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Voltages.Length} voltages by {DifferentialPressures.Length} pressures");

    /// <summary>The same table of an injector, which its refusals name.</summary>
    internal DeadTimeTable Of(string injector)
    {
        var owned = (DeadTimeTable)MemberwiseClone();
        owned.injector = injector;
        return owned;
    }

    internal double SiAt(ElectricPotential atInjector, Pressure differentialPressure)
    {
        double volts = Guard.Positive(atInjector, atInjector.InSi(), part: injector);
        double pascals = Guard.NotNegative(differentialPressure, differentialPressure.InSi(), part: injector);
        if (Outside == OutsideRange.Refuse)
        {
            volts = Guard.InTable(
                Label,
                "voltage at the injector",
                atInjector,
                volts,
                grid.First.Knots[0],
                grid.First.Knots[^1],
                SiUnits.ElectricPotential
            );
            pascals = DependsOnPressure
                ? Guard.InTable(
                    Label,
                    "differential pressure",
                    differentialPressure,
                    pascals,
                    grid.Second.Knots[0],
                    grid.Second.Knots[^1],
                    SiUnits.Pressure
                )
                : pascals;
        }

        double seconds = grid.At(volts, pascals);
        return seconds >= 0
            ? seconds
            : throw new OutsideTableException(
                Label.Text.Then(", extended until it would be negative"),
                VoltageAxis,
                volts,
                grid.First.Knots[0],
                grid.First.Knots[^1],
                ""
            );
    }

    private TableLabel Label => new(Name, " of injector", injector);

    /// <summary>Whether the data cover a voltage and a pressure, in V and Pa.</summary>
    internal bool Reaches(double volts, double pascals) => grid.Reaches(volts, pascals);

    /// <summary>
    /// The dead time, s, for an iterate of a solver: held at the edge where the table refuses, and zero where it would
    /// be negative.
    /// </summary>
    internal double HeldAt(double volts, double pascals) => Math.Max(grid.HeldAt(volts, pascals), 0);

    /// <summary>
    /// The dead time, s, in any scalar: for solvers. Beyond its pressures a table that refuses is held at its ends; the
    /// solver checks the solution afterwards.
    /// </summary>
    internal T Read<T>(double volts, T differentialPressure)
        where T : struct, IScalar<T> => grid.Read(volts, differentialPressure);

    private Grid.Axis Volts() => new(VoltageAxis, Voltages.Select(v => Guard.Positive(v, v.InSi(), "voltages")));

    private Grid.Axis Pascals() =>
        new(PressureAxis, DifferentialPressures.Select(p => Guard.NotNegative(p, p.InSi(), "differentialPressures")));

    private void CheckFallsWithVoltage(string paramName)
    {
        for (int i = 1; i < Voltages.Length; i++)
        {
            for (int j = 0; j < DifferentialPressures.Length; j++)
            {
                if (grid.ValueAt(i, j) > grid.ValueAt(i - 1, j))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.MustNotRise,
                        $"Dead time must not rise with voltage; at row {i:row}, column {j:column} it does. Rows are voltages, columns are pressures.",
                        paramName
                    );
                }
            }
        }
    }
}
