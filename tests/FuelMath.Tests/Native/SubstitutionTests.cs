using System.Xml.Linq;
using FuelMath.Tests.House;
using UnitsNet;

namespace FuelMath.Tests.Native;

/// <summary>What the library with formulas only leaves out of the library of units.</summary>
public sealed class SubstitutionTests
{
    private const string Place = "src/FuelMath.Native/UnitsNet.Substitutions.xml";

    /// <summary>The compiler takes no pattern, so that each resource stands in the file. With WRITE_NATIVE set it is written first.</summary>
    [Fact]
    public void Substitutions_NameEveryResourceOfTheLibraryOfUnits()
    {
        string[] resources =
        [
            .. typeof(Pressure)
                .Assembly.GetManifestResourceNames()
                .Where(n => n.EndsWith(".resources", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];
        if (Environment.GetEnvironmentVariable("WRITE_NATIVE") is not null)
        {
            var written = new XElement(
                "linker",
                new XElement(
                    "assembly",
                    new XAttribute("fullname", "UnitsNet"),
                    resources.Select(r => new XElement(
                        "resource",
                        new XAttribute("name", r),
                        new XAttribute("action", "remove")
                    ))
                )
            );
            File.WriteAllText(Path.Combine(Repository.Root, Place), $"{written}\n");
        }

        var removed = XElement.Parse(Repository.Read(Place));

        Assert.NotEmpty(resources);
        Assert.Equal(
            resources,
            removed
                .Element("assembly")!
                .Elements("resource")
                .Where(r => r.Attribute("action")!.Value == "remove")
                .Select(r => r.Attribute("name")!.Value)
        );
    }
}
