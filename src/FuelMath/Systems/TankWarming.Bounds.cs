using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class TankWarming
{
    /// <summary>How the pumps of a solved system warm its tank: the least and the most that they can.</summary>
    /// <remarks>
    /// <para>
    /// Fuel takes up the pump's heat on its way through. What the engine burns takes its part along and never brings it
    /// back:
    /// if all heat goes into the fuel that passes, the tank gets the share of the power that the returned flow is of
    /// the drawn
    /// one. What a motor gives off to the fuel around it, and a regulator that takes out the pressure of all the flow
    /// in the
    /// tank, lift that towards the whole power. The truth lies between, nearer to the least where the fuel flows
    /// through the
    /// motor.
    /// </para>
    /// </remarks>
    public sealed class Bounds
    {
        private Bounds(Power electrical, Ratio returnedShare, TankWarming least, TankWarming most)
        {
            ElectricalPower = electrical;
            ReturnedShare = returnedShare;
            Least = least;
            Most = most;
        }

        /// <summary>Electrical power of all pumps.</summary>
        public Power ElectricalPower { get; }

        /// <summary>
        /// The share of the flow drawn from the tanks that comes back to them; one where nothing is drawn.
        /// </summary>
        public Ratio ReturnedShare { get; }

        /// <summary>The tank with the returned share of the power.</summary>
        public TankWarming Least { get; }

        /// <summary>The tank with all of the power.</summary>
        public TankWarming Most { get; }

        /// <summary>Reads the heat of the pumps and the fuel that is burned from a state.</summary>
        /// <param name="system">The system.</param>
        /// <param name="state">A state of it.</param>
        /// <param name="fuelMass">Mass in the tank at the start; greater than zero.</param>
        /// <param name="cooling">The air around, and how it cools the tank.</param>
        /// <returns>Both bounds; they start at the fuel temperature of the state.</returns>
        /// <remarks>Source: [Cengel-Boles-2015] energy balance of a steady flow.</remarks>
        /// <exception cref="ArgumentNullException">System, state or cooling is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        /// <exception cref="UnknownPropertyException">The heat capacity is not known; the message says why.</exception>
        /// <exception cref="OutsideTableException">The heat capacity is not known at the temperature.</exception>
        /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
        public static Bounds FromState(FuelSystem system, SystemState state, Mass fuelMass, TankCooling cooling)
        {
            ArgumentNullException.ThrowIfNull(system);
            ArgumentNullException.ThrowIfNull(state);
            double electric = state.Pumps.Sum(p =>
                PumpPower.Electric(new Real(p.Voltage.InSi()), new Real(p.Current.InSi())).Value
            );
            double share = Returned(system.Network, state);
            MassFlow burned = SiUnits.MassFlow(state.Stages.Sum(s => s.MeanFlow.InSi()));
            TankWarming Tank(double watts) =>
                new(system.Fuel, fuelMass, state.Point.Fuel, cooling, SiUnits.Power(watts), burned);
            return new(SiUnits.Power(electric), SiUnits.Ratio(share), Tank(share * electric), Tank(electric));
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Least} to {Most}");

        /// <summary>
        /// What flows into all tanks over what flows out of them. A surge tank overflows into its main tank, and what
        /// its pump draws
        /// comes back to it only in part: a share of the share.
        /// </summary>
        private static double Returned(Network network, SystemState state)
        {
            var tanks = network
                .Nodes.Where(n => n is { IsFixed: true, UsableVolume: null })
                .Select(n => n.Name)
                .ToHashSet(StringComparer.Ordinal);
            double drawn = 0;
            double returned = state.SurgeTanks.Sum(t => t.OverflowFlow.InSi());
            foreach (Line line in network.Lines)
            {
                double flow = state.FlowThrough(line.Name).InSi();
                bool fromTank = tanks.Contains(flow < 0 ? line.To : line.From);
                bool toTank = tanks.Contains(flow < 0 ? line.From : line.To);
                drawn += fromTank ? Math.Abs(flow) : 0;
                returned += toTank ? Math.Abs(flow) : 0;
            }

            double share = drawn > 0 ? Math.Clamp(returned / drawn, 0, 1) : 1;
            foreach (SurgeTankBalance tank in state.SurgeTanks.Where(t => t.DrawnFlow.InSi() > 0))
            {
                share *= Math.Clamp(tank.ReturnFlow.InSi() / tank.DrawnFlow.InSi(), 0, 1);
            }

            return share;
        }
    }
}
