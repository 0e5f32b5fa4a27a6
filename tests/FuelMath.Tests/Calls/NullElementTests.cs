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
