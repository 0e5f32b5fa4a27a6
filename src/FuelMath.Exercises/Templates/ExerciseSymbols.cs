using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

/// <summary>Symbols of the templates that formulas do not have.</summary>
internal static class ExerciseSymbols
{
    internal static Symbol RailPressure { get; } = new("pr", "Pa", "rail pressure, gauge");

    internal static Symbol ManifoldPressure { get; } = new("pm", "Pa", "manifold pressure, absolute");

    internal static Symbol AmbientPressure { get; } = new("pa", "Pa", "ambient pressure, absolute");

    internal const string Pressurized =
        "Fuel lines hold pressurized fuel: release the pressure and keep every source of ignition away before opening one. Follow the maker's data, local codes and the advice of licensed practice.";

    internal const string Lean =
        "A mixture that turns lean under load can destroy an engine: never try a calculated change at full load without measuring the mixture.";

    internal const string Premix =
        "Too little oil seizes a two-stroke engine: use the ratio and the oil that the engine's maker gives. Mix fuel in the open, away from sparks and flames, in a can made for it.";

    internal const string Battery =
        "A battery drives hundreds of amperes through a short: fuse every wire at the battery, and keep sparks from fuel.";
}
