using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class PumpCurve
{
    /// <summary>The power balance of a pump: into the pressure of the fuel, and into heat.</summary>
    /// <remarks>
    /// The motor of a fuel pump is cooled by the fuel, so the power that does not raise the pressure warms the fuel in
    /// the
    /// pump. The hydraulic power becomes heat where the pressure is lost: at the regulator and in the return line, so a
    /// tank with a return takes up nearly all of the electric power. Source: [Cengel-Boles-2015] energy balance of a
    /// steady
    /// flow.
    /// </remarks>
    public sealed class Heat
    {
        private readonly double density;
        private readonly double specificHeat;
        private readonly double flow;

        /// <summary>Computes the balance of a pump at one point of its curve.</summary>
        /// <param name="curve">The curve.</param>
        /// <param name="pressureRise">Outlet minus inlet pressure, within the points; the pump delivers there.</param>
        /// <param name="density">Density of the fuel; greater than zero.</param>
        /// <param name="specificHeat">Specific heat capacity of the fuel, energy for mass and temperature; greater than
        /// zero.</param>
        /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
        /// <exception cref="OutsideTableException"><paramref name="pressureRise"/> lies outside the points.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// Density or specific heat is not greater than zero, or nothing is delivered: the fuel in a dead-headed pump
        /// warms
        /// without limit.
        /// </exception>
        public Heat(PumpCurve curve, Pressure pressureRise, Density density, SpecificEntropy specificHeat)
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
                    "a rise against which the pump delivers; dead-headed it warms its fuel without end",
                    part: curve.pump
                );
            }
        }

        /// <summary>Power taken from the supply.</summary>
        public Power Electric { get; }

        /// <summary>Power that raises the fuel's pressure.</summary>
        public Power Hydraulic { get; }

        /// <summary>Power that becomes heat inside the pump, in W.</summary>
        public Power HeatInside => SiUnits.Power(Electric.InSi() - Hydraulic.InSi());

        /// <summary>Temperature rise of the fuel through the pump.</summary>
        public TemperatureDelta RiseThroughPump => SiUnits.TemperatureDelta(Rise(HeatInside.InSi()));

        /// <summary>Temperature rise of the fuel once its pressure is lost too, in a return line or as spray.</summary>
        public TemperatureDelta RiseWhenSpent => SiUnits.TemperatureDelta(Rise(Electric.InSi()));

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Electric} in, {Hydraulic} into pressure, {HeatInside} heat");

        private double Rise(double heat) =>
            PumpScaling
                .TemperatureRise(new Real(heat), new Real(density), new Real(specificHeat), new Real(flow))
                .Value;
    }
}
