using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The inputs of the working of a part's loss.</summary>
internal readonly struct LossInputs
{
    /// <summary>Volume flow, m³/s.</summary>
    internal required Traced Flow { get; init; }

    /// <summary>Density, kg/m³.</summary>
    internal required Traced Density { get; init; }

    /// <summary>Dynamic viscosity, Pa s.</summary>
    internal required Traced Viscosity { get; init; }

    /// <summary>The settings of the law if they differ from the description; otherwise empty.</summary>
    internal required double[] Settings { get; init; }
}
