using FuelMath.Formulas;

namespace FuelMath;

/// <summary>What a link's law depends on beside its own make: the fluid, and the weight of it at both ends, SI.</summary>
internal readonly struct Surroundings<T>
    where T : struct, IScalar<T>
{
    /// <summary>Density, kg/m³.</summary>
    internal readonly T Density;

    /// <summary>Dynamic viscosity, Pa s.</summary>
    internal readonly T Viscosity;

    /// <summary>Density x gravity x elevation of the upstream end, Pa.</summary>
    internal readonly T HeadFrom;

    /// <summary>Density x gravity x elevation of the downstream end, Pa.</summary>
    internal readonly T HeadTo;

    /// <summary>A part by itself.</summary>
    internal Surroundings(T density, T viscosity)
        : this(density, viscosity, T.Of(0), T.Of(0)) { }

    internal Surroundings(T density, T viscosity, T headFrom, T headTo)
    {
        Density = density;
        Viscosity = viscosity;
        HeadFrom = headFrom;
        HeadTo = headTo;
    }
}
