using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>An operating point at which a belief is compared with the fitted injectors: idle, cruise, peak.</summary>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed class MixturePoint
{
    /// <summary>Creates a point at which all chambers get equal air.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="cycle">Time of one working cycle of a chamber; greater than zero.</param>
    /// <param name="airPerChamber">Air that one chamber takes in each cycle; greater than zero.</param>
    /// <param name="target">The target lambda of the controller.</param>
    /// <param name="injectors">
    /// What the injectors work at: the actual pressure across those of each stage, the fuel's temperature and their voltage, which
    /// is also that of the controller unless <see cref="WithVoltageAtController"/> says otherwise.
    /// </param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="injectors"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public MixturePoint(string name, Duration cycle, Mass airPerChamber, Lambda target, InjectorConditions injectors)
    {
        ArgumentNullException.ThrowIfNull(injectors);
        Name = Guard.Name(name);
        Guard.Positive(cycle, cycle.InSi(), part: name);
        Guard.Positive(airPerChamber, airPerChamber.InSi(), part: name);
        Guard.Positive(target.Si, nameof(target), part: name);
        (Cycle, Target, Injectors, AtController) = (cycle, target, injectors, injectors.Voltage);
        ChamberAir = [airPerChamber];
        BelievedAirRatio = SiUnits.Ratio(1);
        BelievedDifferentialPressures = [];
    }

    private MixturePoint(MixturePoint other, double dischargeGauge)
        : this(other, other.ChamberAir, other.BelievedAirRatio, other.BelievedDifferentialPressures) =>
        DischargeGaugeSi = dischargeGauge;

    private MixturePoint(
        MixturePoint other,
        ImmutableArray<Mass> air,
        Ratio believedAir,
        ImmutableArray<Pressure> believedPressures
    )
    {
        (Name, Cycle, Target) = (other.Name, other.Cycle, other.Target);
        (Injectors, AtController) = (other.Injectors, other.AtController);
        DischargeGaugeSi = other.DischargeGaugeSi;
        (ChamberAir, BelievedAirRatio, BelievedDifferentialPressures) = (air, believedAir, believedPressures);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Time of one working cycle of a chamber.</summary>
    public Duration Cycle { get; }

    /// <summary>Air that a chamber takes in each cycle: one value for all, or one for each.</summary>
    public ImmutableArray<Mass> ChamberAir { get; }

    /// <summary>The target lambda of the controller.</summary>
    public Lambda Target { get; }

    /// <summary>What the injectors work at: actual pressures, fuel temperature and voltage.</summary>
    public InjectorConditions Injectors { get; }

    /// <summary>Voltage that the controller measures.</summary>
    public ElectricPotential AtController { get; private init; }

    /// <summary>The believed mean air over the actual mean air.</summary>
    public Ratio BelievedAirRatio { get; }

    /// <summary>
    /// The believed pressure across the injectors of each stage at this point; empty when the entered one is used at
    /// every point.
    /// </summary>
    public ImmutableArray<Pressure> BelievedDifferentialPressures { get; }

    /// <summary>
    /// The gauge pressure into which the injectors discharge, Pa; null where the point does not give it.
    /// </summary>
    internal double? DischargeGaugeSi { get; }

    /// <summary>A point of an engine with one stage that discharges into the manifold.</summary>
    /// <param name="engine">The engine, which determines the air.</param>
    /// <param name="point">
    /// The operating point, whose command says the lambda that is aimed at. Its supply is the voltage at injectors and
    /// controller; of humidity the controller does not know.
    /// </param>
    /// <param name="rail">The actual rail.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentException">The command aims at no lambda.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="OutsideTableException">The data of the engine do not reach the point, and refuse.</exception>
    public static MixturePoint FromEngine(Engine engine, OperatingPoint point, RailPressure rail)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(rail);
        IntakeAir air = point.Air;
        Lambda target =
            point.Command.Lambda
            ?? throw new RefusedArgumentException(
                RefusalCode.WrongKind,
                $"Must have a command that aims at a lambda; that of '{point.Name:point}' is {point.Command.ToString():given}.",
                nameof(point)
            );
        Mass dry = engine.AirMassPerChamberCycle(point.Speed, air.Manifold, air.Charge);
        var injectors = new InjectorConditions(
            [rail.DifferentialPressureAt(air.Manifold, air.Ambient)],
            point.Fuel,
            point.Supply
        );
        var mixture = new MixturePoint(
            point.Name,
            engine.InjectionPeriod(point.Speed, 1),
            SiUnits.Mass(dry.InSi() * air.DryShare),
            target,
            injectors
        ).WithBelievedAir(SiUnits.Ratio(1 / air.DryShare));
        return new(mixture, air.Manifold.Si - air.Ambient.Si);
    }

    /// <summary>The same point with another voltage at the controller than at the injectors.</summary>
    /// <param name="atController">Voltage that the controller measures and compensates for; greater than zero.</param>
    /// <returns>A new point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
    public MixturePoint WithVoltageAtController(ElectricPotential atController)
    {
        Guard.Positive(atController, atController.InSi(), part: Name);
        return new(this, ChamberAir, BelievedAirRatio, BelievedDifferentialPressures) { AtController = atController };
    }

    /// <summary>The same point with unequal air.</summary>
    /// <param name="air">Air of each chamber in one cycle, in the order of the chambers; greater than zero. Copied.</param>
    /// <returns>A new point.</returns>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is not greater than zero.</exception>
    public MixturePoint WithChamberAir(IEnumerable<Mass> air)
    {
        ArgumentNullException.ThrowIfNull(air);
        ImmutableArray<Mass> masses = [.. air];
        Guard.AtLeast(1, masses.Length, "A point (air by chamber)", nameof(air), part: Name);
        foreach (Mass mass in masses)
        {
            Guard.Positive(mass, mass.InSi(), nameof(air), part: Name);
        }

        return new(this, masses, BelievedAirRatio, BelievedDifferentialPressures);
    }

    /// <summary>The same point with an error in the controller's air model.</summary>
    /// <param name="ratio">Believed air over actual air; greater than zero.</param>
    /// <returns>A new point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not greater than zero.</exception>
    public MixturePoint WithBelievedAir(Ratio ratio)
    {
        Guard.Positive(ratio, ratio.InSi(), part: Name);
        return new(this, ChamberAir, ratio, BelievedDifferentialPressures);
    }

    /// <summary>
    /// The same point with another believed pressure than the one entered, for a controller that measures the rail, or
    /// that computes the difference from a fixed rail and the manifold pressure.
    /// </summary>
    /// <param name="differentialPressures">
    /// The believed pressure across the injectors of each stage; greater than zero. Copied.
    /// </param>
    /// <returns>A new point.</returns>
    /// <exception cref="ArgumentException">The number is not that of the stages.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not greater than zero.</exception>
    public MixturePoint WithBelievedPressures(IEnumerable<Pressure> differentialPressures)
    {
        ArgumentNullException.ThrowIfNull(differentialPressures);
        ImmutableArray<Pressure> believed = [.. differentialPressures];
        foreach (Pressure pressure in believed)
        {
            Guard.Positive(pressure, pressure.InSi(), nameof(differentialPressures), part: Name);
        }

        return believed.Length == Injectors.DifferentialPressures.Length
            ? new(this, ChamberAir, BelievedAirRatio, believed)
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be a pressure for each stage, {Injectors.DifferentialPressures.Length:exactly} in all; {believed.Length:value} given.",
                nameof(differentialPressures)
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Target} every {Cycle}");

    /// <summary>The believed pressure of a stage, counted from 0.</summary>
    /// <exception cref="ArgumentException">
    /// The rail is believed fixed, and the point does not give the pressure into which the injectors discharge.
    /// </exception>
    internal Pressure BelievedPressure(int stage, ControllerBelief belief)
    {
        if (!BelievedDifferentialPressures.IsEmpty)
        {
            return BelievedDifferentialPressures[stage];
        }

        if (belief.RailReference == RailPressure.Reference.Measured)
        {
            return Injectors.DifferentialPressures[stage];
        }

        if (belief.RailReference == RailPressure.Reference.Manifold)
        {
            return belief.DifferentialPressure;
        }

        return belief.ToldSi(DischargeGaugeSi ?? double.NaN) is > 0 and var told
            ? SiUnits.Pressure(told)
            : throw (
                DischargeGaugeSi is null
                    ? new RefusedArgumentException(
                        RefusalCode.Missing,
                        $"Must say what the injectors spray against, because the controller believes in a fixed rail: make '{Name:part}' with {nameof(FromEngine):remedy}, or give {nameof(WithBelievedPressures):remedy}."
                    )
                    : new RefusedArgumentException(
                        RefusalCode.NoFuelPasses,
                        $"Must have a manifold below the fixed rail that the controller believes in, {belief.DifferentialPressure:below}; at '{Name:part}' it is not."
                    )
            );
    }

    /// <summary>Air of a chamber, counted from 0, kg.</summary>
    internal double AirSi(int chamber) => ChamberAir[ChamberAir.Length == 1 ? 0 : chamber].InSi();
}
