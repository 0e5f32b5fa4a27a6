using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The surroundings of a link's law: the fluid, and its hydrostatic pressure at both ends, SI.</summary>
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

    /// <summary>The surroundings of a part alone, without elevation.</summary>
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
