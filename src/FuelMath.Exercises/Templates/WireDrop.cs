using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class WireDrop
{
    private static readonly Symbol Current = new("I", "A", "current");
    private static readonly Symbol Hot = new("t", "K", "temperature of the wires");
    private static readonly Symbol Lost = new("U", "V", "voltage lost");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "wire-drop",
            1,
            "Voltage lost in a pump's wiring",
            "The pump of the circuit car draws {I}. Its copper wires have a cross-section of {A}; battery and pump are {L} of wire apart, and the current returns in a wire of the same length. The wires are at {t}. What voltage is lost? Copper has 0.017241 ohm mm2/m at 20 degC and 0.00393 for each kelvin.",
            ExerciseSymbols.Battery,
            [
                ExerciseGiven.Of(Current, QuantityKinds.Current, "A", GivenGrid.From(6.0m, 20.0m, 0.5m)),
                ExerciseGiven.Of(Symbols.Area, QuantityKinds.Area, "mm2", GivenGrid.Of(1.0m, 1.5m, 2.5m, 4.0m, 6.0m)),
                ExerciseGiven.Of(Symbols.Length, QuantityKinds.Length, "m", GivenGrid.From(1.5m, 6.0m, 0.1m)),
                ExerciseGiven.Of(Hot, QuantityKinds.Temperature, "degC", GivenGrid.From(45, 90, 5)),
            ],
            ExerciseAnswer.Of(new Symbol("U", "V", "voltage lost"), QuantityKinds.Voltage, "V", 3),
            [
                new("one way only", "The current goes there and back: both wires lose voltage."),
                new("resistance at 20 degC", "Copper gains 0.393 % of its resistance for each kelvin above 20 degC."),
                new("one way at 20 degC", "Count both wires, and carry the resistance to the wires' temperature."),
                new("both wires in parallel", "The current passes one wire after the other: their resistances add."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Ohm = new("Definition", "current times resistance");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T hot = a[3] - 273.15;
            T twice = 2 * a[2];
            return way switch
            {
                0 => Drop(a[0], twice, a[1], hot),
                1 => Drop(a[0], a[2], a[1], hot),
                2 => Drop(a[0], twice, a[1], T.Of(20)),
                3 => Drop(a[0], a[2], a[1], T.Of(20)),
                _ => Drop(a[0], a[2] / 2, a[1], hot),
            };
        }

        private static T Drop<T>(T current, T length, T area, T celsius)
            where T : struct, IScalar<T>
        {
            (T resistivity, T coefficient) = (
                T.Of(WireResistance.CopperResistivity),
                T.Of(WireResistance.CopperCoefficient)
            );
            return T.Step(
                current * WireResistance.Resistance(resistivity, coefficient, length, area, celsius),
                Lost,
                Ohm
            );
        }
    }
}
