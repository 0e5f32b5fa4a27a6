using System.Reflection;
using FuelMath.Formulas;
using FuelMath.ShopTests;
using FuelMath.Statistics;

namespace FuelMath.Tests.House;

/// <summary>A caller who has to count arguments gets them wrong: few, grouped by what belongs together, the rest by WithX.</summary>
public sealed class ConstructorTests
{
    private const int Most = 6;

    /// <summary>Constructors with more, each with its number.</summary>
    private static readonly Dictionary<Type, int> Longer = new()
    {
        [typeof(OperatingPoint)] = 8,
        [typeof(FuelSystem)] = 8,
        [typeof(MixturePoint)] = 8,
        [typeof(HoseAssembly)] = 8,
        [typeof(TankWarming)] = 8,
        [typeof(Injector)] = 7,
        [typeof(Grid)] = 7,
        [typeof(ClosedVolume)] = 7,
        [typeof(SystemMonteCarlo)] = 7,
        [typeof(UncertaintyBudget.Input)] = 7,
        [typeof(StageSchedule.Stage)] = 7,
        [typeof(MixtureUncertainty)] = 7,
        [typeof(SystemBrief)] = 10,
        [typeof(MixtureObservation)] = 9,
        [typeof(DecayTest.Uncertainty)] = 9,
    };

    private static IEnumerable<(Type Type, int Count)> Found =>
        PublicApi
            .Types.SelectMany(t => t.GetConstructors(BindingFlags.Public | BindingFlags.Instance))
            .Select(c => (c.DeclaringType!, c.GetParameters().Length))
            .Where(c => c.Length > Most);

    [Fact]
    public void NoConstructor_TakesManyArguments() =>
        Offenders.None(
            Found.Where(f => f.Count > Longer.GetValueOrDefault(f.Type)).Select(f => $"{f.Type.Name}: {f.Count}")
        );

    [Fact]
    public void EveryException_IsStillNeeded() =>
        Offenders.None(Longer.Where(l => !Found.Contains((l.Key, l.Value))).Select(l => l.Key.Name));
}
