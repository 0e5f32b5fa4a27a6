using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Where a pump's power goes: into the pressure of the fuel, and into heat.</summary>
/// <remarks>
/// The motor of a fuel pump is cooled by the fuel, so that what does not raise the pressure warms the fuel on its way through.
/// The pressure itself becomes heat where the fuel expands again: at the regulator and in the return line, so that a tank
/// with a return takes up nearly all of the electric power. Source: [Cengel-Boles-2015] energy balance of a steady flow.
/// </remarks>
public sealed class PumpHeat
{
    private readonly double density;
    private readonly double specificHeat;
    private readonly double flow;

    /// <summary>Takes the balance of a pump at one point of its curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="pressureRise">Outlet minus inlet pressure, within the points; the pump delivers there.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="specificHeat">Specific heat capacity of the fuel, energy for mass and temperature; greater than zero.</param>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside what is allowed, or nothing is delivered: a dead-headed pump warms without end.
    /// </exception>
    public PumpHeat(PumpCurve curve, Pressure pressureRise, Density density, SpecificEntropy specificHeat)
    {
        ArgumentNullException.ThrowIfNull(curve);
        this.density = Guard.Positive(density, density.InSi());
        this.specificHeat = Guard.Positive(specificHeat, specificHeat.InSi());
        Electric = curve.ElectricPowerAt(pressureRise);
        Hydraulic = curve.HydraulicPowerAt(pressureRise);
        flow = curve.FlowAt(pressureRise).InSi();
        if (!(flow > 0))
        {
            throw Guard.OutOfRange(
                pressureRise,
                "a rise against which the pump delivers; dead-headed it warms its fuel without end"
            );
        }
    }

    /// <summary>Power taken from the supply.</summary>
    public Power Electric { get; }

    /// <summary>Power that raises the fuel's pressure.</summary>
    public Power Hydraulic { get; }

    /// <summary>Power that is heat at once, inside the pump. In W.</summary>
    public Power HeatInside => SiUnits.Power(Electric.InSi() - Hydraulic.InSi());

    /// <summary>By how much the fuel leaves the pump warmer than it came.</summary>
    public TemperatureDelta RiseThroughPump => SiUnits.TemperatureDelta(Rise(HeatInside.InSi()));

    /// <summary>By how much it is warmer once its pressure is spent, in a return line or as spray.</summary>
    public TemperatureDelta RiseWhenSpent => SiUnits.TemperatureDelta(Rise(Electric.InSi()));

    private double Rise(double heat) =>
        PumpScaling.TemperatureRise(new Real(heat), new Real(density), new Real(specificHeat), new Real(flow)).Value;
}
