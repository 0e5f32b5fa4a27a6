using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>How far a fuel is from boiling, at a temperature and an absolute pressure, and at a pump inlet.</summary>
/// <remarks>
/// A gasoline gives off bubbles of its lightest parts and of dissolved air before it boils: keep a margin.
/// </remarks>
/// <seealso href="../guide/vapor.html">Vapor</seealso>
public sealed class VaporMargin
{
    private readonly double surface;
    private readonly double density;
    private readonly double height;
    private readonly double loss;
    private readonly double vapor;
    private readonly TemperatureLaw law;

    private VaporMargin(Fuel fuel, Temperature temperature, AbsolutePressure pressure, double height, double loss)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        Fuel = fuel;
        Temperature = temperature;
        surface = pressure.Si;
        vapor = fuel.VaporPressureAt(temperature).Si;
        density = fuel.Density.Law.At(temperature);
        law = fuel.VaporPressure.Law;
        this.height = height;
        this.loss = loss;
    }

    /// <summary>The fuel.</summary>
    public Fuel Fuel { get; }

    /// <summary>Its temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>Its vapor pressure there.</summary>
    public AbsolutePressure VaporPressure => new(vapor);

    /// <summary>Pressure above that at which it boils; negative when it boils.</summary>
    public Pressure MarginAboveBoiling => SiUnits.Pressure(MarginOf);

    /// <summary>Whether it boils.</summary>
    public bool Boils => MarginOf <= 0;

    /// <summary>The same margin as a head of the fuel, which a pump's data sheet may ask for.</summary>
    public Length NetPositiveSuctionHead =>
        SiUnits.Length(
            Suction.NetPositiveSuctionHead(new Real(MarginOf), new Real(density), Hydrostatics.StandardGravity).Value
        );

    private double MarginOf =>
        Suction
            .PressureAboveBoiling(
                new Real(surface),
                new Real(density),
                Hydrostatics.StandardGravity,
                new Real(height),
                new Real(loss),
                new Real(vapor)
            )
            .Value;

    /// <summary>The margin of fuel under a pressure.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="temperature">Its temperature.</param>
    /// <param name="pressure">The absolute pressure on it.</param>
    /// <returns>The margin.</returns>
    /// <exception cref="UnknownPropertyException">The vapor pressure is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">Density or vapor pressure is not known at the temperature.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static VaporMargin At(Fuel fuel, Temperature temperature, AbsolutePressure pressure) =>
        new(fuel, temperature, pressure, 0, 0);

    /// <summary>The margin at the inlet of a pump.</summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="temperature">Its temperature.</param>
    /// <param name="surface">The absolute pressure on it in the tank, which falls with altitude.</param>
    /// <param name="heightAbovePump">Height of its surface above the inlet; negative when the pump has to lift it.</param>
    /// <param name="suctionLoss">Pressure lost in the suction line, strainer included; not negative.</param>
    /// <returns>The margin.</returns>
    /// <exception cref="ArgumentNullException">The fuel is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The height is not finite or the loss is negative.</exception>
    /// <exception cref="UnknownPropertyException">The vapor pressure is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">Density or vapor pressure is not known at the temperature.</exception>
    public static VaporMargin AtPumpInlet(
        Fuel fuel,
        Temperature temperature,
        AbsolutePressure surface,
        Length heightAbovePump,
        Pressure suctionLoss
    ) =>
        new(
            fuel,
            temperature,
            surface,
            Guard.Finite(heightAbovePump, heightAbovePump.InSi()),
            Guard.NotNegative(suctionLoss, suctionLoss.InSi())
        );

    /// <summary>The temperature at which the fuel boils under the pressure here, at the density it has now.</summary>
    /// <returns>The temperature.</returns>
    /// <exception cref="NoSolutionException">It boils outside the range in which the vapor pressure is known.</exception>
    public Temperature BoilingTemperature()
    {
        double pressure = MarginOf + vapor;
        double low = law.AtKelvins(law.Lowest);
        double high = law.AtKelvins(law.Highest);
        return pressure >= low && pressure <= high
            ? SiUnits.Temperature(Rising.Root(law.AtKelvins, pressure, law.Lowest, law.Highest))
            : throw Guard.NoSolution(
                RefusalCode.OutsideData,
                $"the boiling temperature of '{Fuel.Name:part}'",
                $"its vapor pressure is known from {new AbsolutePressure(low):least} to {new AbsolutePressure(high):most}, and the pressure is {new AbsolutePressure(Math.Max(0, pressure)):value}."
            );
    }

    /// <summary>The working of the head: formula, inserted values, result, source.</summary>
    /// <returns>The working.</returns>
    public Working ToWorking()
    {
        Traced rho = Traced.Input(Symbols.Density, density);
        Traced margin = Suction.PressureAboveBoiling(
            Traced.Input(FuelSymbols.SurfacePressure, surface),
            rho,
            Hydrostatics.StandardGravity,
            Traced.Input(FuelSymbols.Height, height),
            Traced.Input(FuelSymbols.SuctionLoss, loss),
            Traced.Input(FuelSymbols.Vapor, vapor)
        );
        return Suction.NetPositiveSuctionHead(margin, rho, Hydrostatics.StandardGravity).ToWorking();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{MarginAboveBoiling} above boiling at {Temperature}");
}
