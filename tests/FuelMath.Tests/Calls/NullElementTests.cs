using System.Reflection;
using FuelMath.Tests.House;
using Xunit.Abstractions;

namespace FuelMath.Tests.Calls;

/// <summary>
/// Every public constructor and method that takes a list of objects is called with one null among them: it must refuse it as an
/// argument, not keep it until something far away stumbles over it.
/// </summary>
public sealed class NullElementTests(ITestOutputHelper output)
{
    private const int Most = 400;
    private const int Few = 20;

    [Fact]
    public void Lists_WithNullInside_AreRefused()
    {
        var caller = Bundled.Caller(20261129);
        List<string> against = [];
        int lists = 0;
        foreach (MethodBase method in PublicApi.Methods.Where(m => CallRules.IsCalled(m) && !m.IsGenericMethod))
        {
            foreach (ParameterInfo parameter in method.GetParameters().Where(HoldsObjects))
            {
                lists++;
                string? what = What(caller, method, parameter);
                if (what is not null)
                {
                    against.Add($"{DocumentationId.Of(method)} {parameter.Name}: {what}");
                }
            }
        }

        output.WriteLine($"{lists} lists");
        Offenders.None(against);
    }

    /// <summary>Every argument that may not be null is refused by its name where it is.</summary>
    [Fact]
    public void Arguments_ThatAreNull_AreRefusedByTheirNames()
    {
        var caller = Bundled.Caller(20261129);
        List<string> against = [];
        int arguments = 0;
        foreach (
            MethodBase method in PublicApi.Methods.Where(m => CallRules.IsCalled(m) && !m.IsGenericMethod && !IsStep(m))
        )
        {
            foreach (ParameterInfo parameter in method.GetParameters().Where(MayNotBeNull))
            {
                arguments++;
                Exception? seen = null;
                bool taken = false;
                bool stumbles = false;
                foreach (CallOutcome outcome in caller.CallWithNull(method, parameter.Position, Few))
                {
                    taken |= outcome.Thrown is null;
                    stumbles |= outcome.Thrown is NullReferenceException;
                    seen = outcome.Thrown;
                    if (outcome.Thrown is ArgumentException refused && refused.ParamName == parameter.Name)
                    {
                        taken = false;
                        seen = null;
                        break;
                    }
                }

                // Whatever another argument was refused for in other calls, none may stumble over the null.
                if (taken || stumbles || IsNamedWrongly(method, seen))
                {
                    against.Add(
                        $"{DocumentationId.Of(method)} {parameter.Name}: {(taken ? "takes it" : stumbles ? "stumbles over it" : $"{seen!.GetType().Name} {seen.Message}")}"
                    );
                }
            }
        }

        output.WriteLine($"{arguments} arguments");
        Offenders.None(against);
    }

    /// <summary>By a name that none of the parameters has; another argument may be what it refuses.</summary>
    private static bool IsNamedWrongly(MethodBase method, Exception? seen) =>
        seen is ArgumentNullException missing && method.GetParameters().All(p => p.Name != missing.ParamName);

    /// <summary>The steps of plain numbers, which cost nothing because they look at nothing.</summary>
    private static bool IsStep(MethodBase method) => method.Name == "Step" && method.DeclaringType!.IsValueType;

    private static bool MayNotBeNull(ParameterInfo parameter) =>
        !parameter.ParameterType.IsValueType
        && !parameter.ParameterType.IsByRef
        && new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.NotNull;

    /// <summary>What is wrong with how a method meets a null; null where it refuses the list by its name.</summary>
    private static string? What(Caller caller, MethodBase method, ParameterInfo parameter)
    {
        Type? seen = null;
        foreach (CallOutcome outcome in caller.CallWithNullIn(method, parameter.Position, Most))
        {
            if (outcome.Thrown is null)
            {
                return "takes it";
            }

            if (!CallRules.MayThrow(method, outcome.Thrown))
            {
                return $"{outcome.Thrown.GetType().Name} is not documented, {outcome.Thrown.Message}";
            }

            if (outcome.Thrown is ArgumentException refused && refused.ParamName == parameter.Name)
            {
                return null;
            }

            seen = outcome.Thrown.GetType();
        }

        return seen is null ? "could not be called" : $"is not named, {seen.Name}";
    }

    private static bool HoldsObjects(ParameterInfo parameter) =>
        Caller.Element(parameter.ParameterType) is { IsValueType: false } && !MayHoldNull(parameter);

    private static bool MayHoldNull(ParameterInfo parameter)
    {
        NullabilityInfo info = new NullabilityInfoContext().Create(parameter);
        NullabilityInfo? element = info.ElementType ?? info.GenericTypeArguments.FirstOrDefault();
        return element?.ReadState == NullabilityState.Nullable;
    }
}
