using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>A bare number has no unit, so that a public member takes and returns quantities instead.</summary>
public sealed class BareNumberTests
{
    /// <summary>Where a bare number is the subject: arithmetic, tables of numbers, formulas in SI units and their budgets.</summary>
    private static readonly string[] NumberRooms = ["Scalars", "Tables", "Formulas", "Columns", "Budgets"];

    /// <summary>Bare numbers elsewhere: "Type" or "Type.Member", and why.</summary>
    private static readonly Dictionary<string, string> Exempt = new()
    {
        ["AirFuelRatio.FromMassRatio"] = "a pure number, and the only way in",
        ["AirFuelRatio.ToMassRatio"] = "a pure number, and the only way out",
        ["Lambda.FromRatio"] = "a pure number, and the only way in",
        ["Lambda.FromEquivalenceRatio"] = "a pure number",
        ["Lambda.ToRatio"] = "a pure number, and the only way out",
        ["Lambda.ToEquivalenceRatio"] = "a pure number",
        ["FittedLine"] = "statistics: its axes may have any unit, as those of a table",
        ["StudentizedRange"] = "statistics: a range over its standard error",
        ["RepeatedMedianLine"] = "statistics: its axes may have any unit, as those of a table",
        ["Sample"] = "statistics: its readings may have any unit",
        ["Interval"] = "statistics: in the unit of what it was made from",
        ["AdditiveLayout"] = "statistics: its readings may have any unit",
        ["FTest"] = "statistics: squares in the unit of what was tested, and their ratio",
        ["MixtureDiagnosis.RankedCause.ChiSquared"] = "statistics: a sum of squares in units of their variances",
        ["MixtureDiagnosis.RankedCause.Criterion"] =
            "statistics: a pure number that only differences of mean something",
        ["Student.TwoSided"] = "a pure number",
        ["Student.TwoSidedPValue"] = "a pure number",
        ["PoissonLimits.Lower"] = "a mean count, a pure number",
        ["PoissonLimits.Upper"] = "a mean count, a pure number",
        ["SheetTable.Cell.Number"] = "what is printed, in the unit that its column names",
        ["OutsideTableException"] = "evidence: its axis may have any unit, which the text names",
        ["Refusal"] = "evidence: its numbers are in the unit that the caller gave, which stands beside them",
        ["Refusal.Fact"] = "evidence: its number is in the unit that stands beside it",
        ["RefusedValueException"] = "a pure number or a count, of code that builds on the library",
        ["NoSolutionException"] = "evidence: a residual in SI units of whatever was sought",
    };

    [Fact]
    public void NoPublicMember_TakesOrReturnsABareFloat() =>
        Offenders.None(Members().Where(m => !Names(m).Any(Exempt.ContainsKey)));

    [Fact]
    public void EveryExemption_IsStillNeeded()
    {
        HashSet<string> used = [.. Members().SelectMany(Names)];

        Offenders.None(Exempt.Keys.Where(k => !used.Contains(k)));
    }

    private static IEnumerable<MemberInfo> Members() =>
        PublicApi
            .Methods.Where(m => Parts(m).SelectMany(PublicApi.Mentioned).Any(IsFloat))
            .Concat<MemberInfo>(PublicApi.Fields.Where(f => PublicApi.Mentioned(f.FieldType).Any(IsFloat)))
            .Where(m => !NumberRooms.Contains(SourceCode.Room(m.DeclaringType!)));

    private static string[] Names(MemberInfo member)
    {
        string type = PublicApi.NameOf(member.DeclaringType!);
        bool getter = member.Name.StartsWith("get_", StringComparison.Ordinal);
        return [type, $"{type}.{(getter ? member.Name[4..] : member.Name)}"];
    }

    private static IEnumerable<Type> Parts(MethodBase method) =>
        method
            .GetParameters()
            .Select(p => p.ParameterType)
            .Append(method is MethodInfo info ? info.ReturnType : typeof(void));

    private static bool IsFloat(Type type) =>
        type == typeof(double) || type == typeof(float) || type == typeof(decimal) || type == typeof(Half);
}
