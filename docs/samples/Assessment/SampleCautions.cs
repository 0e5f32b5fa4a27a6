namespace FuelMath.Samples.Assessment;

/// <summary>The cautions that every printed assessment and page carries.</summary>
internal static class SampleCautions
{
    internal static IEnumerable<string> All(FuelSystem system) =>
        [
            "Makers' data, local codes and licensed practice come before any number printed here.",
            "Relieve the pressure before you open a line (it stays after switch-off) and disconnect the battery.",
            "Pressurized fuel sprays and ignites: ventilate, no sparks or flames, an extinguisher at hand, bond the containers.",
            "No compressed air or oxygen on parts that are wet with fuel; injector drivers spark at a bench.",
            "The pump is fused at the battery, stops when the engine stalls or crashes, and never runs dead-headed or dry.",
            "Keep relief and return lines clear, tank vent and rollover valve working; only parts made for immersion go into a tank.",
            "A stuck-open injector can fill a cylinder or a sump with fuel: check before cranking.",
            .. system.Fuel.Cautions,
            "A predicted lambda is never clearance to load an engine: verify with a sensor at light load first.",
            "Not for aircraft, direct injection or float carburetors.",
        ];
}
