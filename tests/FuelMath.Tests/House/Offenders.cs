using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>What breaks a rule, listed in full: a reader must not have to run the test again to see the rest.</summary>
internal static class Offenders
{
    internal static void None(IEnumerable<string> offenders)
    {
        string[] list = [.. offenders.Distinct()];
        Assert.True(list.Length == 0, $"{list.Length} against the rule:\n  {string.Join("\n  ", list)}");
    }

    internal static void None(IEnumerable<MemberInfo> offenders) =>
        None(offenders.Select(m => m.DeclaringType is { } type ? $"{type.Name}.{m.Name}" : m.Name));
}
