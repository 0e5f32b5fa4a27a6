using System.Globalization;
using System.Reflection;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.House;

/// <summary>A debugger and a log show what a value is, not the name of its type.</summary>
public sealed class ToStringTests
{
    /// <summary>Types without a text of their own, each with its reason.</summary>
    private static readonly Dictionary<Type, string> Exempt = new()
    {
        [typeof(FlowPart)] = "abstract: each part has its own",
        [typeof(FlowPoint<>)] = "lives on the stack while a law is asked, and is never kept",
        [typeof(Colebrook)] = "a law without a value",
        [typeof(SpreadsheetText)] = "a step on the way to cells, which have theirs",
    };

    private static IEnumerable<Type> WithoutText =>
        PublicApi
            .Types.Where(t => !t.IsEnum && !t.IsInterface && !(t.IsAbstract && t.IsSealed))
            .Where(t => !t.IsSubclassOf(typeof(Exception)))
            .Where(t => t.GetMethod("ToString", Type.EmptyTypes)!.DeclaringType!.Assembly != PublicApi.Library);

    [Fact]
    public void EveryType_HasATextForALog() => Offenders.None(WithoutText.Where(t => !Exempt.ContainsKey(t)));

    [Fact]
    public void EveryExemption_IsStillNeeded() =>
        Offenders.None(Exempt.Keys.Where(t => !t.IsAbstract && !WithoutText.Contains(t)));

    /// <summary>A value that nobody made must not break a log.</summary>
    [Fact]
    public void TheDefaultOfEveryStruct_HasAText() =>
        Offenders.None(
            PublicApi
                .Types.Where(t => t is { IsValueType: true, IsEnum: false, IsByRefLike: false })
                .Where(t => !t.ContainsGenericParameters && !Exempt.ContainsKey(t))
                .Where(t => Failure(t) is not null)
                .Select(t => $"{t.Name}: {Failure(t)}")
        );

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void AText_DoesNotFollowTheCulture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(
                "beta 75.5 at 10 um",
                new FiltrationRating.Point(Length.FromMicrometers(10), Ratio.FromDecimalFractions(75.5)).ToString()
            );
            Assert.Equal(
                "300.5 kPa at 120 L/h",
                new BypassRegulator.BenchReading(
                    Pressure.FromKilopascals(300.5),
                    VolumeFlow.FromLitersPerHour(120)
                ).ToString()
            );
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string? Failure(Type type)
    {
        try
        {
            return Activator.CreateInstance(type)!.ToString() is { Length: > 0 } ? null : "empty";
        }
        catch (TargetInvocationException thrown)
        {
            return thrown.InnerException!.GetType().Name;
        }
        catch (Exception thrown)
            when (thrown is NullReferenceException or InvalidOperationException or ArgumentException)
        {
            return thrown.GetType().Name;
        }
    }
}
