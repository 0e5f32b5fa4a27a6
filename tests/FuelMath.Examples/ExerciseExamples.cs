using FuelMath.Exercises;
using FuelMath.Formulas;

namespace FuelMath.Examples;

public sealed class ExerciseExamples
{
    [Fact]
    public void ReplyMarked()
    {
        #region Mark
        Exercise exercise = ExerciseTemplates.FlowOverPressure.Draw(seed: 42);
        string question = exercise.Statement;

        ExerciseMarking right = exercise.Mark(exercise.Answer, null); // "Right"
        ExerciseMarking rootForgotten = exercise.Mark($"{exercise.MistakenValues[0]:F2} cm3/min", null);
        string why = rootForgotten.Mistakes[0].Name; // square root forgotten
        #endregion

        Assert.Contains("static flow", question, StringComparison.Ordinal);
        Assert.Equal(ExerciseVerdict.Right, right.Verdict);
        Assert.Equal("square root forgotten", why);
    }

    [Fact]
    public void SheetDrawn()
    {
        #region Sheet
        ExerciseSheet sheet = ExerciseSheet.Draw(
            "Pressure and flow",
            [ExerciseTemplates.GaugeAndAbsolute, ExerciseTemplates.FlowOverPressure],
            count: 6,
            seed: 2026
        );
        int drawn = sheet.Exercises.Length; // 6, none twice
        string forLearners = sheet.ToHtml();
        string forTheTeacher = sheet.ToHtmlAnswers();
        string forACourseSystem = sheet.ToGift();
        #endregion

        Assert.Equal(6, drawn);
        Assert.All(new[] { forLearners, forTheTeacher, forACourseSystem }, t => Assert.True(t.Length > 1000));
    }

    [Fact]
    public void TemplateOfOnesOwn()
    {
        Exercise exercise = PumpHeat.Template.Draw(7);

        // 100 W into 2 kJ/(kg K) and some grams a second: by hand from the numbers drawn.
        double kelvins = (double)(exercise.Numbers[0] / (exercise.Numbers[1] / 3.6m * 2.1m));
        Assert.Equal(kelvins, exercise.Value, 1e-9 * kelvins);
        Assert.All(
            Enumerable.Range(0, 3),
            way =>
                Assert.Contains(
                    PumpHeat.Template.Mistakes[way],
                    exercise.Mark($"{exercise.MistakenValues[way]:G6} K", null).Mistakes
                )
        );
    }

    #region Template
    private readonly struct PumpHeat : IExerciseWays
    {
        public static ExerciseTemplate Template { get; } =
            ExerciseTemplate.Of(
                default(PumpHeat),
                "pump-heat",
                1,
                "What a pump warms the fuel",
                "A pump draws {P}, all of which ends as heat in {m} of fuel of 2.1 kJ/(kg K). How much warmer is the fuel?",
                "Warm fuel gives off more vapor: keep sparks and flames away.",
                [
                    ExerciseGiven.Of("P", "power", QuantityKinds.Power, "W", GivenGrid.From(60, 180, 10)),
                    ExerciseGiven.Of("m", "mass flow", QuantityKinds.MassFlow, "kg/h", GivenGrid.From(50, 150, 5)),
                ],
                ExerciseAnswer.Of("dT", "temperature rise", QuantityKinds.TemperatureDifference, "K", 3),
                [
                    new("hours taken for seconds", "A flow in kg/h is to be divided by 3600 before watts meet it."),
                    new("specific heat of water", "Fuel takes half the heat of water: 2.1 kJ/(kg K)."),
                    new("specific heat multiplied", "The more heat a kelvin takes, the fewer kelvins: divide by it."),
                ]
            );

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            way switch
            {
                0 => T.Step(a[0] / (a[1] * 2100), new("dT", "K", "temperature rise"), new("Definition", "heat kept")),
                1 => a[0] / (a[1] * 3600 * 2100),
                2 => a[0] / (a[1] * 4190),
                _ => a[0] / a[1] * 2.1,
            };
    }
    #endregion

    [Fact]
    public void TextReadLeniently()
    {
        #region Lenient
        UnitsNet.VolumeFlow flow = QuantityKinds.VolumeFlow.ParseLenient("550 cc/min", null); // 550 cm³/min
        UnitsNet.Pressure pressure = QuantityKinds.PressureDifference.ParseLenient("43,5 PSI", null); // 43.5 psi

        bool read = QuantityKinds.VolumeFlow.TryParseLenient("67 gph", null, out _, out QuantityTextException? problem);
        #endregion

        Assert.Equal(550, flow.CubicCentimetersPerMinute, 1e-9);
        Assert.Equal(43.5, pressure.PoundsForcePerSquareInch, 1e-9);
        Assert.False(read);
        Assert.Equal(QuantityTextException.TextProblem.Ambiguous, problem!.Problem);
    }
}
