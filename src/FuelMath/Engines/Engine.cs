using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The air intake of an engine: chambers, displacement, cycle and volumetric efficiency.</summary>
/// <remarks>
/// <para>
/// A chamber is a cylinder, or a rotor. A rotor has three chambers, of which each turn of the eccentric shaft fills
/// one, so a rotor counts once per turn with the displacement of one chamber.
/// </para>
/// <para>
/// A predicted mixture is no clearance to load an engine: start rich and at light load, and watch a sensor.
/// </para>
/// </remarks>
/// <seealso href="../guide/engines.html">Engines</seealso>
public sealed partial class Engine
{
    private const int MostChambers = 64;

    private readonly double chamber;
    private readonly double trapping;

    private Engine(
        string name,
        WorkingCycle cycle,
        int chambers,
        double chamber,
        double displacement,
        VolumetricEfficiency volumetricEfficiency,
        double trapping
    )
    {
        ArgumentNullException.ThrowIfNull(volumetricEfficiency);
        Name = Guard.Name(name);
        Cycle = cycle;
        Chambers = chambers;
        this.chamber = chamber;
        Displacement = SiUnits.Volume(displacement);
        VolumetricEfficiency = volumetricEfficiency.Of(name);
        this.trapping = trapping;
    }

    /// <summary>The engine's name.</summary>
    public string Name { get; }

    /// <summary>How often a chamber takes in air.</summary>
    public WorkingCycle Cycle { get; }

    /// <summary>Cylinders, or rotors.</summary>
    public int Chambers { get; }

    /// <summary>Displacement of one cylinder, or of one of a rotor's three chambers.</summary>
    public Volume ChamberDisplacement => SiUnits.Volume(chamber);

    /// <summary>Displacement of all cylinders; for a rotary, one chamber for each rotor.</summary>
    public Volume Displacement { get; }

    /// <summary>The volumetric efficiency; for a two-stroke the delivery ratio.</summary>
    public VolumetricEfficiency VolumetricEfficiency { get; }

    /// <summary>Air kept in the chamber over air sent in: 100 % except for a two-stroke.</summary>
    public Ratio TrappingEfficiency => SiUnits.Ratio(trapping);

    private double CyclesPerRevolution => Cycle == WorkingCycle.FourStroke ? 0.5 : 1;

    /// <summary>A four-stroke.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="cylinders">From 1 to 64.</param>
    /// <param name="displacement">Of all cylinders; greater than zero.</param>
    /// <param name="volumetricEfficiency">At manifold density.</param>
    /// <returns>The engine.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Engine FourStroke(
        string name,
        int cylinders,
        Volume displacement,
        VolumetricEfficiency volumetricEfficiency
    ) =>
        new(
            name,
            WorkingCycle.FourStroke,
            Guard.InRange(cylinders, 1, MostChambers, part: name),
            Guard.Positive(displacement, displacement.InSi(), part: name) / cylinders,
            displacement.InSi(),
            volumetricEfficiency,
            1
        );

    /// <summary>A two-stroke, which loses part of the air sent in through the exhaust port.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="cylinders">From 1 to 64.</param>
    /// <param name="displacement">Of all cylinders; greater than zero.</param>
    /// <param name="deliveryRatio">Air sent in over air that fills the displacement at manifold density.</param>
    /// <param name="trappingEfficiency">Air kept over air sent in, above 0 % and up to 100 %.</param>
    /// <returns>The engine.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="deliveryRatio"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Engine TwoStroke(
        string name,
        int cylinders,
        Volume displacement,
        VolumetricEfficiency deliveryRatio,
        Ratio trappingEfficiency
    )
    {
        ArgumentNullException.ThrowIfNull(deliveryRatio);
        return new(
            name,
            WorkingCycle.TwoStroke,
            Guard.InRange(cylinders, 1, MostChambers, part: name),
            Guard.Positive(displacement, displacement.InSi(), part: name) / cylinders,
            displacement.InSi(),
            deliveryRatio,
            Share(trappingEfficiency, name)
        );
    }

    /// <summary>A rotary with three-sided rotors.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="rotors">From 1 to 64.</param>
    /// <param name="chamberDisplacement">
    /// Of one chamber, as <see cref="ChamberDisplacement.OfRotor"/> gives it; greater than zero.
    /// </param>
    /// <param name="volumetricEfficiency">At manifold density.</param>
    /// <returns>The engine.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Engine Rotary(
        string name,
        int rotors,
        Volume chamberDisplacement,
        VolumetricEfficiency volumetricEfficiency
    ) =>
        new(
            name,
            WorkingCycle.Rotary,
            Guard.InRange(rotors, 1, MostChambers, part: name),
            Guard.Positive(chamberDisplacement, chamberDisplacement.InSi(), part: name),
            chamberDisplacement.InSi() * rotors,
            volumetricEfficiency,
            1
        );

    /// <summary>How often each chamber (or rotor) takes in air.</summary>
    /// <param name="speed">Speed of the crankshaft or eccentric shaft; greater than zero.</param>
    /// <returns>The rate, in 1/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not greater than zero.</exception>
    public Frequency CyclesPerSecond(RotationalSpeed speed) => SiUnits.Frequency(Cycles(speed));

    /// <summary>How often each injector opens when each feeds its own chamber.</summary>
    /// <param name="speed">Speed of the crankshaft or eccentric shaft; greater than zero.</param>
    /// <param name="pulsesPerCycle">
    /// 1 for sequential injection, 2 for batch injection at every turn of a four-stroke; up to 8.
    /// </param>
    /// <returns>The rate, in 1/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Frequency InjectionsPerSecond(RotationalSpeed speed, int pulsesPerCycle) =>
        SiUnits.Frequency(Injections(speed, pulsesPerCycle));

    /// <summary>The time from one opening to the next, into which a pulse must fit.</summary>
    /// <param name="speed">Speed of the crankshaft or eccentric shaft; greater than zero.</param>
    /// <param name="pulsesPerCycle">As for <see cref="InjectionsPerSecond"/>.</param>
    /// <returns>The period, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Duration InjectionPeriod(RotationalSpeed speed, int pulsesPerCycle) =>
        SiUnits.Duration(1 / Injections(speed, pulsesPerCycle));

    /// <summary>Air sent into one chamber in one cycle.</summary>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifoldPressure">Absolute manifold pressure; greater than zero.</param>
    /// <param name="chargeTemperature">Temperature of the charge in the manifold.</param>
    /// <returns>The mass, in kg; for a two-stroke, including the part that is lost.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="OutsideTableException">The point lies outside the volumetric efficiency.</exception>
    public Mass AirMassPerChamberCycle(
        RotationalSpeed speed,
        AbsolutePressure manifoldPressure,
        Temperature chargeTemperature
    ) => SiUnits.Mass(Air(speed, manifoldPressure, chargeTemperature));

    /// <summary>Air kept in one chamber in one cycle.</summary>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifoldPressure">Absolute manifold pressure; greater than zero.</param>
    /// <param name="chargeTemperature">Temperature of the charge in the manifold.</param>
    /// <returns>The mass, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="OutsideTableException">The point lies outside the volumetric efficiency.</exception>
    public Mass TrappedAirMassPerChamberCycle(
        RotationalSpeed speed,
        AbsolutePressure manifoldPressure,
        Temperature chargeTemperature
    ) => SiUnits.Mass(trapping * Air(speed, manifoldPressure, chargeTemperature));

    /// <summary>Air sent into the whole engine.</summary>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="manifoldPressure">Absolute manifold pressure; greater than zero.</param>
    /// <param name="chargeTemperature">Temperature of the charge in the manifold.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="OutsideTableException">The point lies outside the volumetric efficiency.</exception>
    public MassFlow AirMassFlow(
        RotationalSpeed speed,
        AbsolutePressure manifoldPressure,
        Temperature chargeTemperature
    ) => SiUnits.MassFlow(Air(speed, manifoldPressure, chargeTemperature) * Cycles(speed) * Chambers);

    /// <summary>One chamber's share of a flow in one cycle, of fuel or of air.</summary>
    /// <param name="wholeEngine">The flow of the whole engine; not negative.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <returns>The mass, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Mass MassPerChamberCycle(MassFlow wholeEngine, RotationalSpeed speed) =>
        SiUnits.Mass(Guard.NotNegative(wholeEngine, wholeEngine.InSi(), part: Name) / (Cycles(speed) * Chambers));

    /// <summary>
    /// The mixture that burns in a two-stroke, when different fractions of air and fuel are lost through the exhaust
    /// port.
    /// </summary>
    /// <param name="delivered">All air sent in over all fuel, as an exhaust sensor reads it.</param>
    /// <param name="fuelKept">
    /// Fuel kept over fuel sent in, above 0 % and up to 100 %: that of the air when the charge is mixed before it
    /// enters, 100 % when fuel is injected after the port has closed.
    /// </param>
    /// <returns>Lambda of the charge in the chamber.</returns>
    /// <remarks>Source: [Heywood-1988] section 6.6 (trapping efficiency), from memory.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Lambda TrappedLambda(Lambda delivered, Ratio fuelKept) =>
        Lambda.FromRatio(Guard.Positive(delivered.Si, nameof(delivered), Name) * trapping / Share(fuelKept, Name));

    /// <summary>Gives the engine's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private static double Share(
        Ratio value,
        string engine,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
    {
        return Guard.PositiveUpTo(value, value.InSi(), 1, SiUnits.Ratio, paramName, engine);
    }

    private double Cycles(RotationalSpeed speed) =>
        EngineAir
            .EventsPerSecond(new Real(Guard.Positive(speed, speed.InSi(), part: Name)), new Real(CyclesPerRevolution))
            .Value;

    private double Injections(RotationalSpeed speed, int pulsesPerCycle) =>
        Cycles(speed) * Guard.InRange(pulsesPerCycle, 1, 8, part: Name);

    private double Air(RotationalSpeed speed, AbsolutePressure manifoldPressure, Temperature chargeTemperature)
    {
        Guard.Positive(speed, speed.InSi(), part: Name);
        Guard.Positive(manifoldPressure.AboveVacuum, manifoldPressure.Si, nameof(manifoldPressure), Name);
        Real density = EngineAir.AirDensity(
            new Real(manifoldPressure.Si),
            new Real(Guard.Positive(chargeTemperature, chargeTemperature.InSi(), part: Name))
        );
        return EngineAir
            .AirMassPerEvent(new Real(chamber), new Real(VolumetricEfficiency.AtSi(speed, manifoldPressure)), density)
            .Value;
    }
}
