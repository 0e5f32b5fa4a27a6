namespace FuelMath;

/// <summary>The pressure that acts on the spring side of a regulator's diaphragm.</summary>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public enum RegulatorReference
{
    /// <summary>Manifold pressure, through a hose: the injectors' differential pressure is constant.</summary>
    Manifold,

    /// <summary>Ambient pressure: the injectors' differential pressure falls as manifold pressure rises.</summary>
    Ambient,

    /// <summary>Pressure inside the tank, as for a regulator built into it.</summary>
    Tank,
}
