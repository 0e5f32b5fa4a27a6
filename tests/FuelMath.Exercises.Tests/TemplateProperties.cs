using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Exercises.Tests;

/// <summary>What must hold for every exercise that a template can draw.</summary>
public sealed class TemplateProperties(Xunit.Abstractions.ITestOutputHelper output)
{
    /// <summary>The gate draws few; <c>FUELMATH_SEEDS=10000</c> draws many.</summary>
    private static readonly int Seeds = int.Parse(
        Environment.GetEnvironmentVariable("FUELMATH_SEEDS") ?? "300",
        CultureInfo.InvariantCulture
    );

    private static readonly NumberFormatInfo Comma = new() { NumberDecimalSeparator = ",", NumberGroupSeparator = "." };

    public static TheoryData<string> Names => [.. ExerciseTemplates.All.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void AnswerInEveryUnit_IsRight(string name) =>
        ForAll(
            name,
            exercise =>
            {
                ExerciseAnswer answer = exercise.Template.Answer;
                Right(exercise, exercise.Answer, null);
                double si = answer.Quantity.ToSi(exercise.Value, answer.Unit);
                foreach (string unit in answer.Quantity.Units)
                {
                    string number = SignificantDigits.Write(answer.Quantity.FromSi(si, unit), answer.Digits + 1);
                    if (unit != "1" || answer.Unit == "1")
                    {
                        Right(exercise, $"{number} {unit}", null);
                        Right(exercise, $"{number.Replace('.', ',')} {unit}", Comma);
                    }
                }
            }
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryWrongWay_IsRecognizedAndFarFromRight(string name) =>
        ForAll(
            name,
            exercise =>
            {
                Assert.True(exercise.TolerancesApart >= ExerciseTemplate.LeastTolerancesApart);
                for (int way = 0; way < exercise.Template.Mistakes.Length; way++)
                {
                    double value = exercise.MistakenValues[way];
                    Assert.True(
                        Math.Abs(value - exercise.Value) >= ExerciseTemplate.LeastTolerancesApart * exercise.Tolerance
                    );
                    ExerciseMarking marking = exercise.Mark(exercise.Template.Answer.Write(value), null);
                    Assert.True(
                        marking.Mistakes.Contains(exercise.Template.Mistakes[way]),
                        $"{name} {exercise.Seed}: {exercise.Template.Mistakes[way]} at {value}: {marking.Verdict} {marking}"
                    );
                }
            }
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void StatementGivensAndWorking_Agree(string name) =>
        ForAll(
            name,
            exercise =>
            {
                string statement = exercise.Statement;
                Assert.DoesNotContain('{', statement);
                var working = exercise.Working;
                for (int i = 0; i < exercise.Numbers.Length; i++)
                {
                    ExerciseGiven given = exercise.Template.Givens[i];
                    Assert.Contains(exercise.Numbers[i], given.Grid.Numbers);
                    Assert.Contains(
                        given.Unit == "1"
                            ? exercise.Numbers[i].ToString(CultureInfo.InvariantCulture)
                            : $"{exercise.Numbers[i].ToString(CultureInfo.InvariantCulture)} {given.Unit}",
                        statement,
                        StringComparison.Ordinal
                    );
                    Assert.Contains(working.Inputs, w => w.Symbol == given.Quantity.Symbol);
                }

                double shown = working.Conversion?.ToValue ?? working.Value;
                Assert.Equal(exercise.Value, shown, exercise.Tolerance * 1e-9);
                Assert.True(double.IsFinite(exercise.Value) && exercise.Value > 0);
            }
        );

    /// <summary>Each given in SI rounded to one digit more than asked for, the answer to those asked for: right.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void RoundingOnTheWay_IsForgiven(string name) =>
        ForAll(
            name,
            exercise =>
            {
                ExerciseTemplate template = exercise.Template;
                var si = new Real[exercise.Numbers.Length];
                for (int i = 0; i < si.Length; i++)
                {
                    double exact = template.Givens[i].ToSi(exercise.Numbers[i]);
                    double place = SignificantDigits.LastPlace(exact, template.Answer.Digits + 1);
                    si[i] = new(Math.Round(exact / place) * place);
                }

                Right(exercise, template.Answer.Write(template.ValueOf(si)), null);
            }
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void FewerThanOneDrawInFive_IsRefused(string name)
    {
        int refused = 0;
        ForAll(name, e => refused += e.RefusedDraws);
        Assert.InRange(refused / (double)(refused + Seeds), 0, 0.2);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void SameSeed_GivesTheSameExercise(string name) =>
        ForAll(name, e => Assert.Equal(e.Numbers.AsEnumerable(), Template(name).Draw(e.Seed).Numbers));

    /// <summary>What the docs tell: refused draws and the closest wrong way. Printed on request.</summary>
    [Fact]
    public void Figures_CanBeShown()
    {
        var lines = ExerciseTemplates.All.Select(template =>
        {
            (int refused, double closest) = (0, double.PositiveInfinity);
            ForAll(
                template.Name,
                e => (refused, closest) = (refused + e.RefusedDraws, Math.Min(closest, e.TolerancesApart))
            );
            double share = refused / (double)(refused + Seeds);
            return string.Create(
                CultureInfo.InvariantCulture,
                $"| {template.Name} | {template.Mistakes.Length} | {share:P1} | {closest:F2} |"
            );
        });
        string table = string.Join('\n', lines);
        Assert.DoesNotContain("Infinity", table, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("SHOW_FIGURES") is not null)
        {
            output.WriteLine(table);
        }
    }

    private static void Right(Exercise exercise, string reply, IFormatProvider? learner)
    {
        ExerciseMarking marking = exercise.Mark(reply, learner);
        Assert.True(
            marking.Verdict == ExerciseVerdict.Right,
            $"{exercise.Template.Name} {exercise.Seed}: {reply}: {marking.Verdict} {marking}"
        );
    }

    private static ExerciseTemplate Template(string name) => ExerciseTemplates.All.Single(t => t.Name == name);

    private static void ForAll(string name, Action<Exercise> check)
    {
        ExerciseTemplate template = Template(name);
        for (int i = 0; i < Seeds; i++)
        {
            check(template.Draw((ulong)i));
        }
    }
}
