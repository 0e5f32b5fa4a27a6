using System.Reflection;
using System.Xml.Linq;

namespace FuelMath.Tests.Calls;

/// <summary>Which exceptions the documentation of each member lists.</summary>
internal static class Documented
{
    private static readonly Dictionary<string, XElement> Members = XDocument
        .Load(Path.ChangeExtension(House.PublicApi.Library.Location, ".xml"))
        .Descendants("member")
        .GroupBy(m => m.Attribute("name")!.Value)
        .ToDictionary(g => g.Key, g => g.First());

    /// <summary>Whether a member's documentation lists an exception, or one that it is a kind of.</summary>
    internal static bool Lists(MethodBase method, Exception thrown) =>
        Members.TryGetValue(DocumentationId.Of(method), out XElement? member)
        && member
            .Elements("exception")
            .Select(e => e.Attribute("cref")!.Value)
            .Any(cref => Kinds(thrown.GetType()).Any(k => cref == $"T:{k.FullName}"));

    internal static bool Has(MethodBase method) => Members.ContainsKey(DocumentationId.Of(method));

    private static IEnumerable<Type> Kinds(Type type)
    {
        for (Type? kind = type; kind is not null && kind != typeof(Exception); kind = kind.BaseType)
        {
            yield return kind;
        }
    }
}
