using System.Collections;
using System.Reflection;
using UnitsNet;

namespace FuelMath.Tests.Calls;

/// <summary>Which members are called, and what may come of a call.</summary>
internal static class CallRules
{
    private const int Looked = 50;

    /// <summary>All but members that write files.</summary>
    internal static bool IsCalled(MethodBase method) =>
        !method.DeclaringType!.ContainsGenericParameters
        && !method.DeclaringType.IsSubclassOf(typeof(Exception))
        && !method.Name.Contains("File", StringComparison.Ordinal)
        && method.DeclaringType != typeof(object);

    /// <summary>Whether what was thrown is documented, or comes from the unit library, which refuses an infinite SI number.</summary>
    internal static bool MayThrow(MethodBase method, Exception thrown) =>
        !Documented.Has(method)
        || (thrown is ArgumentException && thrown.Message.Contains("is not a valid number", StringComparison.Ordinal))
        || Documented.Lists(method, thrown);

    /// <summary>Formulas and scalars compute with any number; everything else returns finite ones.</summary>
    internal static bool MayReturn(MethodBase method, object? result) => IsRaw(method) || AreNumbers(result);

    private static bool IsRaw(MethodBase method) =>
        method.IsGenericMethod
        || method.DeclaringType!.Namespace is "FuelMath.Formulas"
        || method.DeclaringType.IsAssignableTo(typeof(IFormattable))
            && method.DeclaringType.GetInterfaces().Any(i => i.Name.StartsWith("IScalar", StringComparison.Ordinal));

    private static bool AreNumbers(object? result) =>
        result switch
        {
            double number => double.IsFinite(number),
            IQuantity quantity => double.IsFinite((double)quantity.Value),
            string text => !text.Contains("NaN", StringComparison.Ordinal)
                && !text.Contains("Infinity", StringComparison.Ordinal),
            IEnumerable many
                when result.GetType().IsArray
                    || result.GetType().Name.StartsWith("Immutable", StringComparison.Ordinal) => many.Cast<object?>()
                .Take(Looked)
                .All(AreNumbers),
            ValueType own when own.GetType().Assembly == House.PublicApi.Library => AreFieldsNumbers(own),
            _ => true,
        };

    /// <summary>The library's own quantities keep their SI number in a field, which no unit library has looked at.</summary>
    private static bool AreFieldsNumbers(ValueType own) =>
        own.GetType()
            .GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .All(f => f.GetValue(own) is not double number || double.IsFinite(number));
}
