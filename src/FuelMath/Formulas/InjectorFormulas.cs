using System.Globalization;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>
/// Formulas of pulsed injectors that hold a table of their own, for columns and other users of formulas.
/// </summary>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public static class InjectorFormulas
{
    /// <summary>
    /// The mass of a pulse from logged values: the rating converted to the row's pressure and density, times the width
    /// minus the dead time at the row's voltage and pressure.
    /// </summary>
    /// <param name="deadTime">Dead time, s, over voltage, V, and differential pressure, Pa.</param>
    /// <returns>
    /// The formula, with seven arguments: rated mass flow, its differential pressure and density, then width, voltage,
    /// differential pressure and density. A table that refuses refuses here too; one that holds its edges is read up to
    /// 1000 V and 1e9 Pa.
    /// </returns>
    /// <remarks>
    /// For the linear range: short-pulse corrections are not included. Source: [White-2003] section 6.12, as the ratio
    /// of two states; [SAE-J1832] the straight line through the linear range.
    /// </remarks>
    /// <exception cref="ArgumentNullException"><paramref name="deadTime"/> is null.</exception>
    /// <exception cref="ArgumentException">A dead time is negative, or a place of the table is none that an argument takes.</exception>
    public static FormulaInfo DeliveredMass(Grid deadTime)
    {
        ArgumentNullException.ThrowIfNull(deadTime);
        (double lowVolts, double highVolts) = Ends(deadTime, deadTime.First.Knots, 1e-3, 1000, "voltage");
        (double lowPressure, double highPressure) = Ends(deadTime, deadTime.Second.Knots, 0, 1e9, "pressure");
        (double volts, double pascals) = (deadTime.First.Knots[0], deadTime.Second.Knots[0]);
        double dead = deadTime.ValueAt(0, 0);
        for (int i = 0; i < deadTime.First.Knots.Length * deadTime.Second.Knots.Length; i++)
        {
            double value = deadTime.ValueAt(i / deadTime.Second.Knots.Length, i % deadTime.Second.Knots.Length);
            if (value < 0)
            {
                throw new RefusedArgumentException(
                    RefusalCode.OutOfRange,
                    $"Dead times must not be negative, {new Amount(0, "s"):least} or more; one was {new Amount(value, "s"):value}.",
                    nameof(deadTime)
                );
            }
        }

        return FormulaInfo.Of(
            new DeliveredMassFormula(deadTime),
            "InjectorFormulas.DeliveredMass",
            "The mass of a pulse from rating, width, voltage, pressure and density",
            FormulaInfo.FormulaTopic.Injectors,
            [
                K.MassFlow.Given("referenceMassFlow", Symbols.ReferenceMassFlow, 0.001, 0.1),
                K
                    .DifferentialPressure.Within(1, 1e9)
                    .Given("referenceDifferentialPressure", Symbols.ReferenceDifferentialPressure, 1e5, 1e6),
                K.Density.Given("referenceDensity", Symbols.ReferenceDensity, 600, 1000),
                K.Time.Given("width", Symbols.Width, 0, 0.02),
                K
                    .Voltage.Within(lowVolts, highVolts)
                    .Given("voltage", "U", "voltage at the injector", lowVolts, highVolts),
                K
                    .DifferentialPressure.Within(lowPressure, highPressure)
                    .Given("differentialPressure", Symbols.DifferentialPressure, lowPressure, highPressure),
                K.Density.Given("density", Symbols.Density, 600, 1000),
            ],
            [],
            [],
            K.Mass.Gives(Symbols.PulseMass),
            [Orifice.CarriedMassFlowSource, Pulse.EffectiveWidthSource, Pulse.MassSource],
            new(
                [0.006, Math.Max(pascals, 1), 740, dead + 0.0016, volts, Math.Max(pascals, 1), 740],
                9.6e-6,
                1e-12,
                new DataSource("SAE-J1832", "straight line: 6 g/s for 1.6 ms, by hand")
            )
        );
    }

    /// <summary>The range of an argument: the edges of the table where it refuses beyond them.</summary>
    private static (double Low, double High) Ends(
        Grid deadTime,
        IReadOnlyList<double> knots,
        double least,
        double most,
        string what
    )
    {
        bool isBounded = knots.Count > 1 && deadTime.Outside == OutsideRange.Refuse;
        return knots[0] >= least && knots[^1] <= most
            ? (isBounded ? knots[0] : least, isBounded ? knots[^1] : most)
            : throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
                $"A {what:subject} of the table must be from {least:least} to {most:most}; they are {knots[0]:first} to {knots[^1]:last}.",
                nameof(deadTime)
            );
    }

    private readonly struct DeliveredMassFormula(Grid deadTime) : IFormula
    {
        private readonly Grid deadTime = deadTime;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            Pulse.Mass(
                Orifice.CarriedMassFlow(a[0], a[1], a[2], a[5], a[6]),
                Pulse.EffectiveWidth(a[3], deadTime.Read(a[4], a[5])),
                T.Of(0)
            );
    }
}
