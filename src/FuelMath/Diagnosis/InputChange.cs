using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The inputs of a prediction that a cause may change; unchanged unless set. SI units.</summary>
internal struct InputChange<T>
    where T : struct, IScalar<T>
{
    /// <summary>Factor on the static flow of all injectors.</summary>
    internal T? Flow;

    /// <summary>Added to the dead time of all injectors, s.</summary>
    internal T? DeadTime;

    /// <summary>Added to the pressure across the injectors, Pa.</summary>
    internal T? Pressure;

    /// <summary>Share of the manifold's gauge pressure that the rail does not follow.</summary>
    internal T? Reference;

    /// <summary>Factor on the density of the fuel.</summary>
    internal T? Density;

    /// <summary>Factor on the stoichiometric ratio of the fuel.</summary>
    internal T? Stoichiometric;

    /// <summary>Actual air over believed air.</summary>
    internal T? Air;

    /// <summary>The chamber that the last two belong to, counted from 0.</summary>
    internal int Chamber;

    /// <summary>Factor on the static flow of the injectors of that chamber.</summary>
    internal T? ChamberFlow;

    /// <summary>Mass flow that leaks into that chamber at the reference pressure, kg/s.</summary>
    internal T? ChamberLeak;
}
