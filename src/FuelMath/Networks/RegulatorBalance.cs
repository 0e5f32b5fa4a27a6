using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The common calculations of both types of regulator from their settings and the fluid.</summary>
/// <remarks>
/// The pressure of the held side is held - influence x other side, plus slope q for a bypass regulator, minus slope q
/// for a reducing one.
/// </remarks>
internal struct RegulatorBalance<T>
    where T : struct, IScalar<T>
{
    /// <summary>The loss of the open passage at a cold start, Pa.</summary>
    private const double UsualLoss = 1e3;

    /// <summary>The scale of pressure of a regulator without slope while it regulates, Pa.</summary>
    private const double UsualPressure = 1e5;

    private T reference;

    /// <summary>Pressure held at zero flow, with zero pressure on its other side, Pa at elevation zero.</summary>
    internal T Held;

    /// <summary>Pa s/m³.</summary>
    internal T Slope;

    /// <summary>Seat area over diaphragm area less seat area.</summary>
    internal T Influence;

    /// <summary>Loss over the square of flow when open to its stop, Pa s2/m6.</summary>
    internal T Open;

    /// <summary>See <see cref="ILinkLaw{T}.FirstFlow"/>.</summary>
    internal T First;

    /// <summary>See <see cref="ILinkLaw{T}.UsualSlope"/>.</summary>
    internal T Usual;

    /// <summary>Loads the settings.</summary>
    internal void Load(LawSettings part)
    {
        var regulator = (RegulatorSettings)part;
        reference = T.Of(regulator.Reference);
        Slope = T.Of(regulator.Slope);
        Influence = T.Of(regulator.Influence);
    }

    /// <param name="pressure">The reference pressure, Pa gauge. <see cref="Carry"/> follows.</param>
    internal void SetReference(T pressure) => reference = pressure;

    /// <summary>Computes all that depends on the fluid and on the elevation of both sides.</summary>
    internal void Carry(LawSettings part, T headHeld, T headOther, in Surroundings<T> around)
    {
        var regulator = (RegulatorSettings)part;

        // Areas are relative to the diaphragm less the seat, so that the force is a pressure. The law adds the pressure
        // on the other side, weighted with the influence.
        T none = T.Of(0);
        T net = BypassValve.HeldPressure(
            T.Of(regulator.Setting),
            reference,
            none,
            1 + Influence,
            Influence,
            none,
            none
        );
        Held = net + headHeld + (Influence * headOther);
        Open = BypassValve.FullyOpenLoss(T.Of(regulator.SquarePerDensity), around.Density, T.Of(1));
        First = T.Sqrt(UsualLoss / Open);
        Usual = UsualPressure / First;
    }
}
