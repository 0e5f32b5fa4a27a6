using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The flow and current of one fuel pump over pressure rise, at one voltage: flow falls strictly as the pressure rise
/// grows.
/// </summary>
/// <remarks>
/// <para>
/// The curve is kept as pressure rise over flow, a shape-preserving cubic: it passes through every point, without
/// overshoot, and is smooth enough for a solver. <see cref="FlowAt"/> is its inverse. Current is a similar curve over
/// pressure rise. Two points give straight lines. Outside its points the curve is refused, not extrapolated.
/// </para>
/// <para>
/// The curve belongs to the fluid, temperature and voltage of its <see cref="Source"/>; makers often test with a fluid
/// that is not gasoline.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/PumpExamples.cs" region="PumpCurve" />
/// </example>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed partial class PumpCurve
{
    private readonly double voltage;
    private readonly double[]? riseSlopes;
    private readonly double[]? currentSlopes;

    /// <summary>Builds a curve from measured points.</summary>
    /// <param name="voltage">Voltage at the pump's terminals during the test; greater than zero.</param>
    /// <param name="points">
    /// Two or more points, pressure rise strictly rising and flow strictly falling from point to point. Copied.
    /// </param>
    /// <param name="source">Where the points come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="points"/> or <paramref name="source"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="voltage"/> is not greater than zero.</exception>
    /// <exception cref="ArgumentException">
    /// The points do not have the stated shape, or deliver more hydraulic than electric power.
    /// </exception>
    public PumpCurve(ElectricPotential voltage, IEnumerable<Point> points, DataSource source)
        : this(Copied(points), voltage, source) =>
        PumpCurveChecks.NoMorePowerOutThanIn(voltage, Points, nameof(points));

    /// <summary>A curve derived from measured ones, whose power was already checked.</summary>
    internal PumpCurve(ImmutableArray<Point> points, ElectricPotential voltage, DataSource source)
        : this(points, voltage, source, null) { }

    /// <summary>A curve derived from measured ones, with its assumptions.</summary>
    internal PumpCurve(
        ImmutableArray<Point> points,
        ElectricPotential voltage,
        DataSource source,
        string? estimateBasis
    )
        : this(points, voltage, source, estimateBasis, null, null) { }

    /// <summary>A curve between two others, with the slopes of rise over flow and of current over rise at its points.</summary>
    internal PumpCurve(
        ImmutableArray<Point> points,
        ElectricPotential voltage,
        DataSource source,
        string? estimateBasis,
        double[]? riseSlopes,
        double[]? currentSlopes
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        EstimateBasis = estimateBasis;
        (this.riseSlopes, this.currentSlopes) = (riseSlopes, currentSlopes);
        this.voltage = Guard.Positive(voltage, voltage.InSi());
        (Voltage, Points, Source) = (voltage, points, source);

        Guard.AtLeast(2, Points.Length, "A pump curve", nameof(points));
        int last = Points.Length - 1;
        double[] rises = new double[last + 1];
        double[] currents = new double[last + 1];
        double[] risesByFlow = new double[last + 1];
        double[] flows = new double[last + 1];
        for (int i = 0; i <= last; i++)
        {
            rises[i] = risesByFlow[last - i] = Points[i].PressureRise.InSi();
            flows[last - i] = Points[i].Flow.InSi();
            currents[i] = Points[i].Current.InSi();
        }

        Guard.StrictlyRising(rises, "Pressure rise", nameof(points));
        PumpCurveChecks.FlowFalls(Points, nameof(points));
        const string Current = "Pump curve, current";
        const string OverRise = "pressure rise (Pa)";
        CurrentOverRise = currentSlopes is null
            ? new Curve(Current, OverRise, rises, currents, OutsideRange.Refuse)
            : new Curve(Current, OverRise, rises, currents, currentSlopes);
        const string OverFlow = "flow (m3/s)";
        RiseOverFlow = riseSlopes is null
            ? new Curve("Pump curve", OverFlow, flows, risesByFlow, OutsideRange.Refuse)
            : new Curve("Pump curve", OverFlow, flows, risesByFlow, [.. riseSlopes.Reverse()]);
    }

    /// <summary>Voltage at the pump's terminals during the test.</summary>
    public ElectricPotential Voltage { get; }

    /// <summary>The points, pressure rise ascending, in the units they were given in.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Where the points come from.</summary>
    public DataSource Source { get; }

    /// <summary>The basis of an estimate, one clause; null for a measured curve.</summary>
    public string? EstimateBasis { get; }

    /// <summary>The least pressure rise of the points.</summary>
    public Pressure LeastPressureRise => Points[0].PressureRise;

    /// <summary>The greatest pressure rise of the points.</summary>
    public Pressure GreatestPressureRise => Points[^1].PressureRise;

    /// <summary>The least flow of the points, at the greatest pressure rise.</summary>
    public VolumeFlow LeastFlow => Points[^1].Flow;

    /// <summary>The greatest flow of the points, at the least pressure rise.</summary>
    public VolumeFlow GreatestFlow => Points[0].Flow;

    /// <summary>Pressure rise in Pa over flow in m³/s: the form for a solver.</summary>
    internal Curve RiseOverFlow { get; }

    /// <summary>Current in A over pressure rise in Pa.</summary>
    internal Curve CurrentOverRise { get; }

    /// <summary>The basis of an estimate made from this curve: its own, and this curve's.</summary>
    internal string BasisWith(string basis) => EstimateBasis is null ? basis : $"{basis}; {EstimateBasis}";

    /// <summary>The same curve, marked as an estimate: results that depend on it say so.</summary>
    /// <param name="basis">The basis of the estimate, one clause; not blank.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException"><paramref name="basis"/> is blank.</exception>
    public PumpCurve AsEstimate(string basis) =>
        new(Points, Voltage, Source, Guard.Name(basis), riseSlopes, currentSlopes);

    /// <summary>The flow delivered against a pressure rise.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The volume flow, in m³/s.</returns>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    public VolumeFlow FlowAt(Pressure pressureRise) => SiUnits.VolumeFlow(Flow(Rise(pressureRise)));

    /// <summary>The pressure rise against which a flow is delivered; the inverse of <see cref="FlowAt"/>.</summary>
    /// <param name="flow">The volume flow, within the points.</param>
    /// <returns>Outlet minus inlet pressure, in Pa.</returns>
    /// <exception cref="OutsideTableException"><paramref name="flow"/> lies outside the points.</exception>
    public Pressure RiseAt(VolumeFlow flow) => SiUnits.Pressure(RiseOverFlow.At(Inside(flow)));

    /// <summary>
    /// The working of the pressure rise at a flow: the piece of the curve between two points, inserted values, result.
    /// </summary>
    /// <param name="flow">The volume flow, within the points.</param>
    /// <returns>
    /// The working of <see cref="RiseAt"/>; inputs are shown in their own units. <see cref="WorkingUnits.In"/> sets
    /// that of the result.
    /// </returns>
    /// <exception cref="OutsideTableException"><paramref name="flow"/> lies outside the points.</exception>
    public Working RiseWorkingAt(VolumeFlow flow)
    {
        _ = RiseAt(flow);
        return PumpTableWorking
            .Rise(RiseOverFlow.Pieces, ReaderUnits.Input(Symbols.VolumeFlow, flow, flow.InSi()))
            .ToWorking();
    }

    /// <summary>The working of the efficiency: hydraulic over electric power.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The working of <see cref="EfficiencyAt"/>; flow and current are read from the curves.</returns>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is beyond 1e15 W.</exception>
    /// <exception cref="InvalidOperationException">It draws no power there.</exception>
    public Working EfficiencyWorkingAt(Pressure pressureRise)
    {
        _ = EfficiencyAt(pressureRise);
        double rise = Rise(pressureRise);
        return PumpCurveWorking
            .Efficiency(
                ReaderUnits.Input(PumpTableWorking.PressureRise, pressureRise, rise),
                Flow(rise),
                ReaderUnits.Input(PumpCurveWorking.Volts, Voltage, voltage),
                CurrentOverRise.At(rise)
            )
            .ToWorking();
    }

    /// <summary>The current drawn against a pressure rise.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The mean current, in A.</returns>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    public ElectricCurrent CurrentAt(Pressure pressureRise) =>
        SiUnits.ElectricCurrent(CurrentOverRise.At(Rise(pressureRise)));

    /// <summary>The hydraulic power, which raises the fuel's pressure.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The power, in W.</returns>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is beyond 1e15 W.</exception>
    public Power HydraulicPowerAt(Pressure pressureRise)
    {
        double rise = Rise(pressureRise);
        return SiUnits.Power(PumpPower.Hydraulic(new Real(rise), new Real(Flow(rise))).Value);
    }

    /// <summary>The electric power taken in.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The power, in W.</returns>
    /// <remarks>
    /// With the pump in the tank and a return line nearly all of it ends as heat in the fuel, hydraulic power included.
    /// </remarks>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is beyond 1e15 W.</exception>
    public Power ElectricPowerAt(Pressure pressureRise) =>
        SiUnits.Power(PumpPower.Electric(new Real(voltage), new Real(CurrentOverRise.At(Rise(pressureRise)))).Value);

    /// <summary>The efficiency: hydraulic over electric power; the rest becomes heat in the pump.</summary>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points.</param>
    /// <returns>The efficiency of pump and motor together.</returns>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is beyond 1e15 W.</exception>
    /// <exception cref="InvalidOperationException">It draws no power there.</exception>
    public Ratio EfficiencyAt(Pressure pressureRise)
    {
        double taken = ElectricPowerAt(pressureRise).InSi();
        return taken > 0
            ? SiUnits.Ratio(HydraulicPowerAt(pressureRise).InSi() / taken)
            : throw new RefusedOperationException(
                RefusalCode.NoPower,
                Name.Then($" draws no power at {pressureRise:pressureRise}.")
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{GreatestFlow:L/h} to {GreatestPressureRise} at {Voltage}");

    private static ImmutableArray<Point> Copied(IEnumerable<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return [.. points];
    }

    private double Flow(double rise) => RiseOverFlow.Inverse(rise);

    /// <summary>A flow within the points, in m³/s.</summary>
    private double Inside(VolumeFlow flow)
    {
        double si = flow.InSi();
        return si >= RiseOverFlow.First && si <= RiseOverFlow.Last
            ? si
            : Guard.InTable(Name, "flow", flow, si, RiseOverFlow.First, RiseOverFlow.Last, SiUnits.VolumeFlow);
    }

    /// <summary>A pressure rise within the points, in Pa.</summary>
    private double Rise(Pressure pressureRise)
    {
        double rise = pressureRise.InSi();
        return rise >= CurrentOverRise.First && rise <= CurrentOverRise.Last
            ? rise
            : Guard.InTable(
                Name,
                "pressure rise",
                pressureRise,
                rise,
                CurrentOverRise.First,
                CurrentOverRise.Last,
                SiUnits.Pressure
            );
    }
}
