using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace FuelMath.Tests.House;

/// <summary>Gauge, absolute and difference can't be mixed up: the compiler says no.</summary>
public sealed class MixedPressuresTests
{
    private const string CannotApplyOperator = "CS0019";
    private const string CannotConvert = "CS0029";
    private const string WrongArgument = "CS1503";

    [Theory]
    [InlineData("Pressure difference = rail - ambient;", CannotApplyOperator)]
    [InlineData("Pressure difference = ambient - rail;", CannotApplyOperator)]
    [InlineData("var sum = rail + tank;", CannotApplyOperator)]
    [InlineData("var sum = ambient + ambient;", CannotApplyOperator)]
    [InlineData("var sum = ambient + loss;", CannotApplyOperator)]
    [InlineData("bool higher = rail > ambient;", CannotApplyOperator)]
    [InlineData("bool higher = rail > loss;", CannotApplyOperator)]
    [InlineData("bool same = rail == ambient;", CannotApplyOperator)]
    [InlineData("GaugePressure wrong = loss;", CannotConvert)]
    [InlineData("GaugePressure wrong = ambient;", CannotConvert)]
    [InlineData("AbsolutePressure wrong = rail;", CannotConvert)]
    [InlineData("AbsolutePressure wrong = loss;", CannotConvert)]
    [InlineData("Pressure wrong = rail;", CannotConvert)]
    [InlineData("Pressure wrong = ambient;", CannotConvert)]
    [InlineData("GaugePressure wrong = 300_000.0;", CannotConvert)]
    [InlineData("AbsolutePressure wrong = rail.ToAbsolute(tank);", WrongArgument)]
    [InlineData("AbsolutePressure wrong = rail.ToAbsolute(loss);", WrongArgument)]
    [InlineData("AirFuelRatio wrong = Lambda.Stoichiometric;", CannotConvert)]
    [InlineData("Lambda wrong = stoichiometric;", CannotConvert)]
    [InlineData("Lambda wrong = stoichiometric.ToLambda(Lambda.Stoichiometric);", WrongArgument)]
    public void Compile_MixedKinds_IsRefused(string statement, string error) =>
        Assert.Equal([error], Errors(statement));

    [Theory]
    [InlineData("Pressure difference = rail - tank;")]
    [InlineData("Pressure difference = ambient - rail.ToAbsolute(ambient);")]
    [InlineData("GaugePressure moved = rail + loss;")]
    [InlineData("bool higher = rail > tank;")]
    [InlineData("AbsolutePressure same = rail.ToAbsolute(ambient);")]
    [InlineData("GaugePressure back = ambient.ToGauge(ambient);")]
    [InlineData("GaugePressure named = new(loss);")]
    [InlineData("Lambda mixture = stoichiometric.ToLambda(stoichiometric);")]
    public void Compile_SameKind_IsAccepted(string statement) => Assert.Equal([], Errors(statement));

    private static IEnumerable<string> Errors(string statement)
    {
        string text = $$"""
            using FuelMath;
            using UnitsNet;

            static class Snippet
            {
                static void Run(
                    GaugePressure rail, GaugePressure tank, AbsolutePressure ambient, Pressure loss, AirFuelRatio stoichiometric)
                {
                    {{statement}}
                }
            }
            """;
        return CSharpCompilation
            .Create(
                "snippet",
                [SourceCode.Parse(text, "snippet.cs")],
                [.. SourceCode.Platform, MetadataReference.CreateFromFile(typeof(GaugePressure).Assembly.Location)],
                new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)
            )
            .GetDiagnostics()
            .Where(d => d.Severity == DiagnosticSeverity.Error)
            .Select(d => d.Id);
    }
}
