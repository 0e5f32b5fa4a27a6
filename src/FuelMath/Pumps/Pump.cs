using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A fuel pump, measured at one or more voltages.</summary>
/// <remarks>
/// <para>
/// At a voltage between two measured ones, flow and current are linear in voltage at each pressure rise at which either
/// curve was measured, in the range of <em>both</em> curves: a pump measured to 8 bar at 14 V and to 6 bar at 12 V is
/// known to 6 bar at 13 V. At a measured voltage the whole measured curve is used. Other voltages are refused. The
/// supply, a plain circuit or a controller, is its <see cref="Drive"/>.
/// </para>
/// <para>
/// In a fluid of another density than that of the test a displacement pump keeps its curve and a rotodynamic pump its
/// head, depending on its <see cref="Principle"/>. If that is not known, a system is solved with the curve that
/// delivers less, and the other is reported too. Source: [White-2003] sections 11.1 and 11.3.
/// </para>
/// <para>
/// Caution: a pump must stop when the engine stalls or crashes, is fused at the battery, and must never run dead-headed
/// or dry.
/// </para>
/// <para>Source: [Common-practice] linear in voltage between curves.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/PumpExamples.cs" region="Pump" />
/// </example>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed partial class Pump : FlowPart
{
    /// <summary>Assumed temperature of a test where it is not known, °C. Source: [Common-practice].</summary>
    private const double UsualCelsius = 20;

    private readonly PumpVoltages voltages;

    /// <summary>Builds a pump from its curves.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="curves">
    /// One or more curves, voltage strictly rising from curve to curve. Neighbors share a range of pressure rise, and at
    /// the same pressure rise the one at the higher voltage delivers no less. Copied.
    /// </param>
    /// <param name="fluid">The fluid that the curves were measured with.</param>
    /// <param name="source">Where the curves come from.</param>
    /// <exception cref="ArgumentNullException">Curves, a curve, fluid or source is null.</exception>
    /// <exception cref="ArgumentException">The name is blank or the curves do not have the stated shape.</exception>
    public Pump(string name, IEnumerable<PumpCurve> curves, Fuel fluid, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(curves);
        ArgumentNullException.ThrowIfNull(fluid);
        ArgumentNullException.ThrowIfNull(source);
        (Curves, Fluid, Source, Drive) = (
            [.. Lists.NoNulls(curves).Select(c => c.Of(name))],
            fluid,
            source,
            PumpDrive.Direct
        );
        if (Curves.IsEmpty)
        {
            throw Guard.Empty(nameof(curves), name);
        }

        voltages = new(Name, Curves, source, nameof(curves));
    }

    private Pump(string name, Pump other, PumpDrive drive, WorkingPrinciple principle, Temperature? fluidTemperature)
    {
        (Name, Curves, Fluid) = (name, [.. other.Curves.Select(c => c.Of(name))], other.Fluid);
        (Source, Drive) = (other.Source, drive);
        (voltages, Principle, FluidTemperature) = (new(name, Curves, other.voltages), principle, fluidTemperature);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The measured curves, voltage ascending.</summary>
    public ImmutableArray<PumpCurve> Curves { get; }

    /// <summary>The fluid that the curves were measured with.</summary>
    public Fuel Fluid { get; }

    /// <summary>Where the curves come from.</summary>
    public DataSource Source { get; }

    /// <summary>The drive that feeds it.</summary>
    public PumpDrive Drive { get; }

    /// <summary>Its principle of operation; not known unless set.</summary>
    public WorkingPrinciple Principle { get; }

    /// <summary>
    /// The temperature of the fluid that the curves were measured with; null where it is not known; 20 °C is then
    /// assumed.
    /// </summary>
    public Temperature? FluidTemperature { get; }

    /// <summary>The least voltage at its terminals, or at its controller's.</summary>
    public ElectricPotential LeastVoltage => Drive.Least(Curves[0].Voltage);

    /// <summary>The greatest voltage at its terminals, or at its controller's.</summary>
    public ElectricPotential GreatestVoltage => Drive.Greatest(Curves[^1].Voltage);

    /// <inheritdoc />
    internal override LawSettings Law => new PumpTableSettings(Longest(), false, Curves[0].GreatestFlow);

    /// <inheritdoc />
    internal override PartNeeds Needs => PartNeeds.PumpVoltage;

    /// <inheritdoc />
    internal override PartReading Reading() => new PumpReading(this);

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool IsPump => true;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => LeakPlaces.CheckValve;

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at)
    {
        if (at is { Condition: Network.LineCondition.DeadHeaded, NothingDrawn: true })
        {
            yield return Finding.Of(
                FindingCode.PumpStalled,
                Severity.Warning,
                at.Line,
                $"Pump '{at.Line}' runs against a closed line while no fuel is drawn",
                $"at {Show.Volts(at.PumpVolts)}",
                "a flow",
                PartState.ByDefinition,
                "Give it a return or a relief valve, or a controller that slows or stops it here: a pump that runs dead-headed heats its fuel, and the line has the most pressure that the pump can give."
            );
        }
        else if (at.Condition is Network.LineCondition.Stalled or Network.LineCondition.DeadHeaded)
        {
            yield return Finding.Of(
                FindingCode.PumpStalled,
                Severity.Danger,
                at.Line,
                $"Pump '{at.Line}' delivers nothing against this pressure",
                $"at {Show.Volts(at.PumpVolts)}",
                "a flow",
                PartState.ByDefinition,
                "Find what blocks the path, or why it is weaker than a pump beside it; a pump that runs dead-headed heats its fuel."
            );
        }
    }

    /// <summary>The largest number of pieces of its curve at any voltage.</summary>
    private Piece[] Longest()
    {
        double[] at = [.. Curves.Select(c => Drive.Least(c.Voltage).InSi())];
        return at.Concat(at.Zip(at.Skip(1), (low, high) => (low + high) / 2))
            .Select(v => CurveAt(SiUnits.ElectricPotential(v)).RiseOverFlow.Pieces.ToArray())
            .MaxBy(pieces => pieces.Length)!;
    }

    /// <summary>The same pump fed by a controller.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="drive">The drive that feeds it.</param>
    /// <returns>The pump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="drive"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// The name is blank, or the speed is controlled and there is more than one curve: one curve at full speed is
    /// required.
    /// </exception>
    public Pump WithDrive(string name, PumpDrive drive)
    {
        ArgumentNullException.ThrowIfNull(drive);
        return drive.ControlsSpeed && Curves.Length > 1
            ? throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A pump of controlled speed has {1:exactly} curve, at its full speed; '{Name:part}' has {Curves.Length:value}.",
                nameof(drive)
            )
            : new(Guard.Name(name), this, drive, Principle, FluidTemperature);
    }

    /// <summary>The same pump with a known principle of operation.</summary>
    /// <param name="principle">The principle.</param>
    /// <returns>The pump.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="principle"/> is not a defined value.</exception>
    public Pump WithPrinciple(WorkingPrinciple principle) =>
        new(Name, this, Drive, Guard.Known(principle, part: Name), FluidTemperature);

    /// <summary>The same pump with the fluid temperature at which its curves were measured.</summary>
    /// <param name="temperature">The temperature; the fluid's density is known there.</param>
    /// <returns>The pump.</returns>
    /// <exception cref="OutsideTableException">The fluid's density is not known there.</exception>
    public Pump WithFluidTemperature(Temperature temperature)
    {
        _ = Fluid.DensityAt(temperature);
        return new(Name, this, Drive, Principle, temperature);
    }

    /// <summary>The same pump after wear, as an estimate: results that depend on it say so.</summary>
    /// <param name="name">The name of the worn one; not blank.</param>
    /// <param name="wear">The wear.</param>
    /// <returns>The pump; its curves end where the flow is zero.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wear"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is blank, or a curve has no flow left.</exception>
    public Pump Worn(string name, PumpWear wear)
    {
        ArgumentNullException.ThrowIfNull(wear);
        return new(name, new Pump(name, Curves.Select(wear.Of), Fluid, Source), Drive, Principle, FluidTemperature);
    }

    /// <summary>The curve at a voltage.</summary>
    /// <param name="atTerminals">
    /// Voltage at the pump's own terminals, or at its controller's, from <see cref="LeastVoltage"/> to
    /// <see cref="GreatestVoltage"/>.
    /// </param>
    /// <returns>
    /// The measured curve at a measured voltage, else one between the two neighbors; with a controller the current is
    /// that of the controller.
    /// </returns>
    /// <exception cref="OutsideTableException">
    /// <paramref name="atTerminals"/> lies outside the measured voltages; with one curve only its own is inside.
    /// </exception>
    public PumpCurve CurveAt(ElectricPotential atTerminals) =>
        Drive == PumpDrive.Direct
            ? voltages.CurveAt(atTerminals)
            : Drive
                .Fed(
                    $"Pump '{Name}'",
                    Guard.InTable(
                        new TableLabel("Pump", "", Name),
                        "voltage",
                        atTerminals,
                        atTerminals.InSi(),
                        LeastVoltage.InSi(),
                        GreatestVoltage.InSi(),
                        SiUnits.ElectricPotential
                    ),
                    voltages.CurveAt,
                    Curves[0]
                )
                .Of(Name);

    /// <summary>The curve at a voltage in a fluid of another density.</summary>
    /// <param name="atTerminals">As for <see cref="CurveAt(ElectricPotential)"/>.</param>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <returns>
    /// The unchanged curve for a displacement pump; with the pressure rise in proportion to density for a rotodynamic
    /// pump; the lower of the two where the principle is not known.
    /// </returns>
    /// <exception cref="OutsideTableException">
    /// The voltage lies outside the measured ones, or the density of the fluid of the test is not known at its temperature.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is not greater than zero, or not from half to twice that of the test.</exception>
    public PumpCurve CurveAt(ElectricPotential atTerminals, Density density)
    {
        double factor = RiseFactor(Guard.Positive(density, density.InSi(), part: Name));
        PumpCurve curve = CurveAt(atTerminals);
        return factor == 1 ? curve : PumpEstimate.InFluid(curve, SiUnits.Ratio(factor)).Of(Name);
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>The factor on the pressure rise at each flow in a fluid of a density, kg/m³.</summary>
    /// <exception cref="OutsideTableException">The density of the fluid of the test is not known at its temperature.</exception>
    internal double RiseFactor(double density) =>
        Principle switch
        {
            WorkingPrinciple.Displacement => 1,
            WorkingPrinciple.Rotodynamic => DensityRatio(density),
            _ => Math.Min(DensityRatio(density), 1),
        };

    /// <summary>A density, kg/m³, over that of the fluid of the test.</summary>
    internal double DensityRatio(double density) =>
        density / Fluid.DensityAt(FluidTemperature ?? Temperature.FromDegreesCelsius(UsualCelsius)).InSi();

    /// <summary>The two curves that a voltage at the motor lies strictly between; null at a measured voltage.</summary>
    /// <exception cref="OutsideTableException">It lies outside the measured voltages.</exception>
    internal PumpInterval? Between(ElectricPotential atMotor) => voltages.Between(atMotor);
}
