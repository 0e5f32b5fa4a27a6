using System.Collections;
using System.Reflection;

namespace FuelMath.Mutation;

/// <summary>The switch that dotnet-stryker compiles into the library: which mutant is on, and which code was reached.</summary>
internal sealed class Control
{
    private readonly FieldInfo active;
    private readonly FieldInfo capture;
    private readonly MethodInfo read;

    internal Control(Assembly library)
    {
        Type type = library.GetTypes().Single(t => t.Name == "MutantControl");
        active = type.GetField("ActiveMutant")!;
        capture = type.GetField("CaptureCoverage")!;
        read = type.GetMethod("GetCoverageData")!;
    }

    internal void Switch(int mutant) => active.SetValue(null, mutant);

    internal void Capture(bool on) => capture.SetValue(null, on);

    /// <summary>
    /// The mutants whose code ran since the last call, and those among them that ran while something was made once and kept.
    /// </summary>
    internal (int[] Reached, int[] Kept) Reached()
    {
        var lists = (IList)read.Invoke(null, null)!;
        return ([.. lists.Cast<IEnumerable<int>>().SelectMany(m => m).Distinct()], [.. (IEnumerable<int>)lists[1]!]);
    }
}
