using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>Fuel trapped between closed ends, with elastic walls and trapped gas.</summary>
/// <remarks>
/// <para>
/// A little gas dominates: at 4 bar absolute one cubic centimeter of it has the compliance of two liters of gasoline.
/// Its amount can be measured (<see cref="WithGasFromBleed"/>). Bulk modulus and density are those at the temperature.
/// </para>
/// <para>
/// Caution: pressurized fuel sprays and ignites. Test with the fuel from the pump, never with compressed air or oxygen
/// on fuel-wet parts; ventilate, no sparks, extinguisher at hand; relieve the pressure before opening a line.
/// </para>
/// </remarks>
/// <seealso href="../guide/tightness.html">Tightness: does it hold pressure?</seealso>
public sealed partial class ClosedVolume
{
    /// <summary>Describes a closed volume.</summary>
    /// <param name="fuel">The fuel; its bulk modulus must be known.</param>
    /// <param name="temperature">Its temperature, which the gas shares.</param>
    /// <param name="fuelVolume">Volume of fuel; greater than zero.</param>
    /// <param name="walls">The walls around it.</param>
    /// <param name="gas">Volume of trapped gas at ambient pressure; zero when it was bled.</param>
    /// <param name="ambient">Ambient absolute pressure, the reference of gauge pressures; greater than zero.</param>
    /// <exception cref="ArgumentNullException">Fuel or walls are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The bulk modulus is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">Bulk modulus or density is not known at the temperature.</exception>
    public ClosedVolume(
        Fuel fuel,
        Temperature temperature,
        Volume fuelVolume,
        ElasticWalls walls,
        Volume gas,
        AbsolutePressure ambient
    )
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(walls);
        Fuel = fuel;
        Temperature = temperature;
        Kelvins = temperature.InSi();
        Modulus = fuel.BulkModulus.Law.At(temperature);
        FuelExpands = ExpansionAt(fuel, Kelvins);
        Liquid = Guard.Positive(fuelVolume, fuelVolume.InSi());
        Guard.NotNegative(gas, gas.InSi());
        Outside = Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient));
        FuelVolume = fuelVolume;
        Walls = walls;
        GasAtAmbient = gas;
        Ambient = ambient;
        Gas = gas.InSi() * Outside;
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>Its temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>Volume of fuel.</summary>
    public Volume FuelVolume { get; }

    /// <summary>The walls around it.</summary>
    public ElasticWalls Walls { get; }

    /// <summary>
    /// Relative increase of the fuel's volume per kelvin, at its temperature: from the slope of its density, in 1/K.
    /// </summary>
    public CoefficientOfThermalExpansion FuelExpansion => CoefficientOfThermalExpansion.FromPerKelvin(FuelExpands);

    /// <summary>Volume of trapped gas at ambient pressure.</summary>
    public Volume GasAtAmbient { get; }

    /// <summary>Ambient absolute pressure.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>
    /// The gauge pressure below which it can't fall: ambient, or the vapor pressure where that is higher and known.
    /// </summary>
    public GaugePressure Floor => new(VaporPressure > Outside ? VaporPressure - Outside : 0);

    internal double Kelvins { get; }

    internal double Modulus { get; }

    internal double FuelExpands { get; }

    internal double WallsExpand => Walls.Expands;

    /// <summary>The expansion of the fuel minus that of the walls, 1/K.</summary>
    internal double Expansion => FuelExpands - WallsExpand;

    internal double Liquid { get; }

    internal double Swells => Walls.Swells;

    internal double Outside { get; }

    /// <summary>Pressure times volume of the gas, Pa m³.</summary>
    internal double Gas { get; }

    /// <summary>Pa absolute; NaN where it is not known at this temperature.</summary>
    internal double VaporPressure => VaporPressureAt(Kelvins);

    /// <summary>The volume released when its pressure falls, as when a line is opened.</summary>
    /// <param name="before">Gauge pressure before.</param>
    /// <param name="after">Gauge pressure after.</param>
    /// <returns>Volume of fuel, in m³; negative when pressure rises.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not above vacuum.</exception>
    public Volume ReleasedBetween(GaugePressure before, GaugePressure after) =>
        SiUnits.Volume(Released(Absolute(before), Absolute(after)));

    /// <summary>The pressure after a volume of fuel has left it.</summary>
    /// <param name="before">Gauge pressure before; above ambient.</param>
    /// <param name="volume">Volume that leaves; not negative.</param>
    /// <returns>The pressure after.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="NoSolutionException">It does not release that much down to ambient pressure.</exception>
    public GaugePressure PressureAfterLosing(GaugePressure before, Volume volume)
    {
        double first = Absolute(before);
        double lost = Guard.NotNegative(volume, volume.InSi());
        double most = Released(first, Outside);
        return lost <= most
            ? new GaugePressure(Rising.Root(p => -Released(first, p), -lost, Outside, first) - Outside)
            : throw Guard.NoSolution(
                RefusalCode.NotReached,
                "the pressure after a loss",
                $"the volume gives back {SiUnits.Volume(most).ToUnit(UnitsNet.Units.VolumeUnit.CubicCentimeter):most} down to ambient pressure, and {volume.ToUnit(UnitsNet.Units.VolumeUnit.CubicCentimeter):value} were to leave."
            );
    }

    /// <summary>The change of pressure with temperature when nothing leaks.</summary>
    /// <param name="before">Gauge pressure before; above ambient.</param>
    /// <param name="warming">Change of temperature.</param>
    /// <returns>The rise of pressure; a fall when it cools.</returns>
    /// <remarks>In a full line without gas it is several bar per kelvin.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not above vacuum.</exception>
    /// <exception cref="NoSolutionException">The pressure would fall below the vapor pressure after the change.</exception>
    public Pressure PressureRiseFor(GaugePressure before, TemperatureDelta warming)
    {
        double first = Absolute(before);
        double kelvins = Guard.Finite(warming, warming.InSi());
        double vapor = VaporPressureAt(Kelvins + kelvins);
        double low = double.IsNaN(vapor) ? first * 1e-3 : Math.Min(first, vapor);
        double high = first + (Math.Abs(kelvins) * 2 * Math.Max(Math.Abs(Expansion) * Modulus, first / Kelvins)) + 1;

        // The leaked volume falls as the pressure after rises; at the true pressure it is zero.
        double Leaked(double after) => -LeakedTo(first, after, Kelvins + kelvins);
        return Leaked(low) <= 0
            ? SiUnits.Pressure(Rising.Root(Leaked, 0, low, high) - first)
            : throw Guard.NoSolution(
                RefusalCode.FuelBoils,
                "the pressure after cooling",
                $"it falls to {new AbsolutePressure(low):value}, where the fuel boils."
            );
    }

    /// <summary>The same volume with its gas determined by a bleed: fuel is let out, and the pressure falls.</summary>
    /// <param name="drawn">Volume of fuel that was let out; greater than zero.</param>
    /// <param name="before">Gauge pressure before.</param>
    /// <param name="after">Gauge pressure after; below the one before.</param>
    /// <returns>A new closed volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A number is outside its range, or fuel and walls alone would have released more.
    /// </exception>
    public ClosedVolume WithGasFromBleed(Volume drawn, GaugePressure before, GaugePressure after)
    {
        double volume = Guard.Positive(drawn, drawn.InSi());
        double first = Absolute(before);
        double last = Absolute(after);
        if (last >= first)
        {
            throw Guard.Outside(
                after,
                RefusalCode.OutOfRange,
                $"Must be below {before:below}, the pressure before; it was {after:value}."
            );
        }

        double stiff = Liquid * ((1 / Modulus) + Swells) * (first - last);
        double gas = (volume - stiff) * first * last / (first - last);
        return volume >= stiff * (1 - Guard.EdgeTolerance)
            ? new(Fuel, Temperature, FuelVolume, Walls, SiUnits.Volume(Math.Max(gas, 0) / Outside), Ambient)
            : throw Guard.OutOfRange(
                drawn,
                $"at least {SiUnits.Volume(stiff):least}, which fuel and walls give back without any gas"
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{FuelVolume} of {Fuel} at {Temperature}");

    internal double Absolute(
        GaugePressure pressure,
        [CallerArgumentExpression(nameof(pressure))] string paramName = ""
    ) =>
        pressure.Si + Outside > 0
            ? pressure.Si + Outside
            : throw Guard.Outside(
                pressure,
                RefusalCode.OutOfRange,
                $"Must be above vacuum, {new GaugePressure(-Outside):above}; it was {pressure:value}.",
                paramName
            );

    private double VaporPressureAt(double kelvins) =>
        Fuel.VaporPressure.IsKnown
        && kelvins >= Fuel.VaporPressure.Law.Lowest
        && kelvins <= Fuel.VaporPressure.Law.Highest
            ? Fuel.VaporPressure.Law.At(SiUnits.Temperature(kelvins))
            : double.NaN;

    internal double Released(double before, double after) =>
        PressureDecay
            .ReleasedVolume(
                new Real(Liquid),
                new Real(Modulus),
                new Real(Swells),
                new Real(Gas),
                new Real(before),
                new Real(after)
            )
            .Value;

    private double LeakedTo(double before, double after, double kelvinsAfter) =>
        PressureDecay
            .LeakedVolume(
                new Real(Liquid),
                new Real(Modulus),
                new Real(Swells),
                new Real(Expansion),
                new Real(Gas),
                new Real(before),
                new Real(Kelvins),
                new Real(after),
                new Real(kelvinsAfter)
            )
            .Value;

    /// <summary>The coefficient of volume expansion, from the slope of the density.</summary>
    private static double ExpansionAt(Fuel fuel, double kelvins)
    {
        _ = fuel.DensityAt(SiUnits.Temperature(kelvins));
        Dual<Real> density = fuel.Density.Law.Read(Dual<Real>.Variable(new Real(kelvins)));
        return -density.Slope.Value / density.Value.Value;
    }
}
