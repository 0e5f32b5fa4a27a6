using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class ShopComparison
{
    /// <summary>
    /// Additional readings during a shop test: the pump's voltage, and pressures at nodes. They distinguish causes.
    /// </summary>
    /// <example>
    /// <code source="../../../tests/FuelMath.Examples/ShopTestExamples.cs" region="Bucket" />
    /// </example>
    public sealed class AddedReadings
    {
        private readonly ImmutableArray<Reading> readings;

        private AddedReadings(ImmutableArray<Reading> readings) => this.readings = readings;

        /// <summary>No additional readings.</summary>
        public static AddedReadings None { get; } = new([]);

        internal bool IsEmpty => readings.IsEmpty;

        /// <summary>These, with the voltage at the pump's own terminals; with several pumps the lowest.</summary>
        /// <param name="measured">The voltage; greater than zero.</param>
        /// <param name="tolerance">Deviation from a prediction that counts as agreement; greater than zero.</param>
        /// <returns>New readings.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public AddedReadings WithPumpVoltage(ElectricPotential measured, ElectricPotential tolerance) =>
            With(Guard.Positive(measured, measured.InSi()), Guard.Positive(tolerance, tolerance.InSi()), PumpVolts);

        /// <summary>These, and the pressure at a node: the rail's gauge, or one at the pump's outlet.</summary>
        /// <param name="node">A node of the network.</param>
        /// <param name="measured">The gauge pressure.</param>
        /// <param name="toleranceDifference">
        /// Deviation from a prediction that counts as agreement; greater than zero.
        /// </param>
        /// <returns>New readings.</returns>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public AddedReadings WithPressure(string node, GaugePressure measured, Pressure toleranceDifference)
        {
            string name = Guard.Name(node);
            return With(
                Guard.Finite(measured.AboveAmbient, measured.Si, nameof(measured)),
                Guard.Positive(toleranceDifference, toleranceDifference.InSi()),
                s => s.PressureAt(name).Si
            );
        }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{readings.Length} readings");

        internal static double PumpVolts(SystemState state) => state.Pumps.Min(p => p.Voltage.InSi());

        /// <summary>
        /// The largest deviation of the readings from a state, relative to their tolerance; null without readings.
        /// </summary>
        internal double? Misfit(SystemState state) => IsEmpty ? null : readings.Max(r => r.Off(state));

        /// <summary>
        /// The reading with the largest deviation from a state, as a function: predicted minus measured.
        /// </summary>
        internal Func<SystemState, double> Worst(SystemState state)
        {
            Reading worst = readings.MaxBy(r => r.Off(state))!;
            return s => worst.Value(s) - worst.Measured;
        }

        private AddedReadings With(double measured, double tolerance, Func<SystemState, double> value) =>
            new(readings.Add(new(measured, tolerance, value)));

        private sealed class Reading(double measured, double tolerance, Func<SystemState, double> value)
        {
            internal double Measured { get; } = measured;

            internal double Value(SystemState state) => value(state);

            internal double Off(SystemState state) => Math.Abs(value(state) - Measured) / tolerance;
        }
    }
}
