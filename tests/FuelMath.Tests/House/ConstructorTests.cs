using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>A caller who has to count arguments gets them wrong: few, grouped by what belongs together, the rest by WithX.</summary>
public sealed class ConstructorTests
{
    private const int Most = 6;

    private const int MostOfAFewLonger = 7;

    /// <summary>At most six constructors may be longer; each with what it takes that can neither be grouped nor left out.</summary>
    private static readonly Dictionary<Type, string> Longer = new()
    {
        [typeof(FuelSystem)] = "the parts of a system, each of which is a type of its own",
        [typeof(SystemBrief)] = "the least that must be known of a car",
        [typeof(Injector)] = "what a data sheet of an injector says",
        [typeof(MixtureObservation)] = "what is read in one moment; ambient pressure is not always known with a charge",
        [typeof(MixtureUncertainty)] = "six uncertainties of six things, none of which may be left out in silence",
        [typeof(SystemMonteCarlo)] = "four of the task and its seed, two of how it is run",
    };

    /// <summary>Other ways in (FromX) that take seven: those of a constructor of six, one of which comes from two.</summary>
    private static readonly HashSet<(Type, string)> LongerFactories =
    [
        (typeof(Hose), nameof(Hose.FromDash)),
        (typeof(ReliefValve), nameof(ReliefValve.FromSpring)),
    ];

    private static IEnumerable<(Type Type, int Count)> Found =>
        PublicApi
            .Types.SelectMany(t => t.GetConstructors(BindingFlags.Public | BindingFlags.Instance))
            .Select(c => (c.DeclaringType!, c.GetParameters().Length))
            .Where(c => c.Length > Most);

    private static IEnumerable<(Type Type, string Name, int Count)> FoundFactories =>
        PublicApi
            .Types.SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(m => m.ReturnType == m.DeclaringType)
            .Select(m => (m.DeclaringType!, m.Name, m.GetParameters().Length))
            .Where(m => m.Length > Most && m.Name.StartsWith("From", StringComparison.Ordinal));

    [Fact]
    public void NoConstructor_TakesManyArguments() =>
        Offenders.None(
            Found
                .Where(f => f.Count > (Longer.ContainsKey(f.Type) ? MostOfAFewLonger : Most))
                .Select(f => $"{f.Type.Name}: {f.Count}")
        );

    [Fact]
    public void NoOtherWayIn_TakesManyArguments() =>
        Offenders.None(
            FoundFactories
                .Where(f => f.Count > (LongerFactories.Contains((f.Type, f.Name)) ? MostOfAFewLonger : Most))
                .Select(f => $"{f.Type.Name}.{f.Name}: {f.Count}")
        );

    [Fact]
    public void LongerOnes_AreAtMostSix() => Assert.InRange(Longer.Count, 0, 6);

    [Fact]
    public void EveryException_IsStillNeeded() =>
        Offenders.None(
            Longer
                .Keys.Where(l => !Found.Any(f => f.Type == l))
                .Select(l => l.Name)
                .Concat(
                    LongerFactories
                        .Where(l => !FoundFactories.Any(f => (f.Type, f.Name) == l))
                        .Select(l => $"{l.Item1.Name}.{l.Item2}")
                )
        );
}
