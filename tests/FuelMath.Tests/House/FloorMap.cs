using System.Text;

namespace FuelMath.Tests.House;

/// <summary>
/// The map of the house. A folder may use those on a lower floor, and none on its own: parts do not know each other, and
/// networks, which lie below them, know a part only by its law.
/// </summary>
internal static class FloorMap
{
    private static readonly Storey[] Storeys =
    [
        new(
            "Ground",
            "nothing of fuel: the door between quantities and numbers and guards, units and numbers as text, the arithmetic that formulas are written over, strict reading of JSON",
            ["Internal"],
            ["Sources"],
            ["Scalars", "Findings"],
            ["Text"],
            ["Shapes"]
        ),
        new(
            "First",
            "what a pressure, a curve, a law, a fuel is, and how well a number is known",
            ["Quantities", "Tables", "Uncertainty"],
            ["Formulas"],
            ["Budgets", "Fuels"],
            ["Tanks", "Air"]
        ),
        new("The solver", "laws, not parts: a part is a `FlowPart` and names its law", ["Networks"]),
        new(
            "Parts",
            "themselves; no part knows another, and the columns know plain laws, not the parts",
            [
                "Injectors",
                "Pumps",
                "Filters",
                "Hoses",
                "Fittings",
                "Seals",
                "Regulators",
                "Wiring",
                "Engines",
                "Columns",
            ]
        ),
        new(
            "Joining",
            "everything below: readings of a bench, what the controller was told, which injectors to fit, from readings back to causes, hoses and fittings piece by piece, parts on a network with wiring and engine",
            ["Bench"],
            ["Controllers"],
            ["Sizing", "Diagnosis"],
            ["Lines"],
            ["Systems"]
        ),
        new(
            "Above the systems",
            "everything below: verdicts at all points, a closed line under pressure, what a tuner types, what a shop test should read",
            ["Assessments", "Tightness"],
            ["Sheets", "ShopTests"]
        ),
        new("Top", "everything below: a system as text", ["Documents"]),
    ];

    /// <summary>The floor of each room; the few files that lie in none come below all.</summary>
    internal static Dictionary<string, int> Floors { get; } =
        Storeys
            .SelectMany(s => s.Floors)
            .Prepend([""])
            .SelectMany((rooms, floor) => rooms.Select(r => (r, floor)))
            .ToDictionary(r => r.r, r => r.floor, StringComparer.Ordinal);

    /// <summary>The map as DEVELOPERS.md shows it.</summary>
    internal static string Printed
    {
        get
        {
            StringBuilder text = new("| Floor | Rooms, from below | Know |\n|---|---|---|\n");
            foreach (Storey storey in Storeys)
            {
                string rooms = string.Join(
                    ", then ",
                    storey.Floors.Select(f => string.Join(", ", f.Select(r => $"`{r}`")))
                );
                text.Append(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"| {storey.Name} | {rooms} | {storey.Knows} |\n"
                );
            }

            return text.ToString();
        }
    }

    /// <summary>Floors that belong together, the lowest first.</summary>
    private sealed record Storey(string Name, string Knows, params string[][] Floors);
}
