using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The loss of a round passage by friction and loss coefficients, in any scalar.</summary>
internal static class RoundLoss
{
    private static readonly DataSource Sum = new("White-2003", "section 6.9 (friction and minor losses in series)");

    internal static Symbol CoilDiameter { get; } = new("Dc", "m", "diameter of the curve of the center line");

    private static Symbol Whole { get; } = new("dpl", "Pa", "pressure lost in the passage");

    internal static T Of<T>(T flow, T bore, T length, T roughness, T coefficient, T? coil, T density, T viscosity)
        where T : struct, IScalar<T>
    {
        T velocity = Friction.Velocity(flow, bore);
        T friction = coil is { } bent
            ? CurvedFriction.PressureLoss(velocity, bore, length, roughness, bent, density, viscosity)
            : Friction.PressureLoss(velocity, bore, length, roughness, density, viscosity);
        return T.Step(friction + MinorLoss.PressureLoss(coefficient, density, velocity), Whole, Sum);
    }
}
