using System.Reflection;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.House;

/// <summary>
/// The unit library has one pressure for three different things. Here <see cref="Pressure"/> is a difference, and the
/// name of whatever holds one says so.
/// </summary>
public sealed class PressureNameTests
{
    private static readonly string[] Words =
    [
        "Differential",
        "Difference",
        "Loss",
        "Rise",
        "Drop",
        "AboveAmbient",
        "AboveVacuum",
        "Margin",
        "Sag",
        // What is left of a balance of differences.
        "Residual",
        // A bulk modulus is a difference for each fraction of volume.
        "BulkModul",
        // What a wall carries is a force on its area, not a pressure of a fluid.
        "Stress",
        "ElasticModul",
    ];

    /// <summary>Named twins of operators, whose parameters are left and right: "Type.Member".</summary>
    private static readonly HashSet<string> Twins =
    [
        $"{nameof(GaugePressure)}.{nameof(GaugePressure.Add)}",
        $"{nameof(GaugePressure)}.{nameof(GaugePressure.Subtract)}",
        $"{nameof(AbsolutePressure)}.{nameof(AbsolutePressure.Subtract)}",
    ];

    [Fact]
    public void EveryParameter_SaysThatItIsADifference() =>
        Offenders.None(
            PublicApi
                .Methods.Where(m => !IsOperatorOrTwin(m))
                .SelectMany(m => m.GetParameters())
                .Where(p => Holds(p.ParameterType) && !Says(p.Name!))
                .Select(p => $"{p.Member.DeclaringType!.Name}.{p.Member.Name}: {p.Name}")
        );

    [Fact]
    public void EveryProperty_SaysThatItIsADifference() =>
        Offenders.None(PublicApi.Properties.Where(p => Holds(p.PropertyType) && !Says(p.Name)));

    [Fact]
    public void EveryResult_SaysThatItIsADifference() =>
        Offenders.None(
            PublicApi
                .Methods.OfType<MethodInfo>()
                .Where(m => !IsOperatorOrTwin(m) && Holds(m.ReturnType) && !Says(m.Name))
        );

    private static bool IsOperatorOrTwin(MethodBase method) =>
        method.Name.StartsWith("op_", StringComparison.Ordinal)
        || Twins.Contains($"{method.DeclaringType!.Name}.{method.Name}");

    /// <summary>The second argument of a spread is a difference by its role.</summary>
    private static bool Holds(Type type) =>
        type.IsGenericType
        && (
            type.GetGenericTypeDefinition() == typeof(TrialSpread<,>)
            || type.GetGenericTypeDefinition() == typeof(ScatterShares<,>)
        )
            ? Holds(type.GetGenericArguments()[0])
            : PublicApi.Mentioned(type).Contains(typeof(Pressure));

    private static bool Says(string name) => Words.Any(w => name.Contains(w, StringComparison.OrdinalIgnoreCase));
}
