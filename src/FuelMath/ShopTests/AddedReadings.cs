using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// What else was read while a shop test ran: the pump's voltage, and pressures at nodes. They tell causes apart.
/// </summary>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/ShopTestExamples.cs" region="Bucket" />
/// </example>
public sealed class AddedReadings
{
    private readonly ImmutableArray<Reading> readings;

    private AddedReadings(ImmutableArray<Reading> readings) => this.readings = readings;

    /// <summary>None.</summary>
    public static AddedReadings None { get; } = new([]);

    internal bool IsEmpty => readings.IsEmpty;

    /// <summary>These, and the voltage at the pump's own terminals; with several pumps the lowest.</summary>
    /// <param name="measured">The voltage; greater than zero.</param>
    /// <param name="tolerance">How far it may lie from a prediction and still agree; greater than zero.</param>
    /// <returns>New readings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public AddedReadings WithPumpVoltage(ElectricPotential measured, ElectricPotential tolerance) =>
        With(Guard.Positive(measured, measured.InSi()), Guard.Positive(tolerance, tolerance.InSi()), PumpVolts);

    /// <summary>These, and the pressure at a node: the rail's gauge, or one at the pump's outlet.</summary>
    /// <param name="node">A node of the plan.</param>
    /// <param name="measured">The gauge pressure.</param>
    /// <param name="toleranceDifference">How far it may lie from a prediction and still agree; greater than zero.</param>
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

    internal static double PumpVolts(SystemState state) => state.Pumps.Min(p => p.Voltage.InSi());

    /// <summary>How far the readings lie from a state, as a share of their tolerance, the worst; null where there is none.</summary>
    internal double? Misfit(SystemState state) => IsEmpty ? null : readings.Max(r => r.Off(state));

    /// <summary>The reading that lies farthest from a state: what it reads there, less what was measured.</summary>
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
