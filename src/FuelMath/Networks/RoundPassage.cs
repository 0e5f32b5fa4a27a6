using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The common calculations of round passages from the passage and its fluid.</summary>
internal struct RoundPassage<T>
    where T : struct, IScalar<T>
{
    /// <summary>The velocity of a cold start, m/s.</summary>
    private const double UsualVelocity = 0.6;

    private const double UsualFactor = 0.03;

    /// <summary>Laminar loss over flow of the straight passage, Pa s/m³.</summary>
    internal T Laminar;

    /// <summary>Dynamic pressure over the square of flow, Pa s2/m6.</summary>
    internal T Dynamic;

    /// <summary>Reynolds number over flow, s/m³.</summary>
    internal T ReynoldsPerFlow;

    /// <summary>See <see cref="ILinkLaw{TLaw, T}.FirstFlow"/>.</summary>
    internal T First;

    /// <summary>See <see cref="ILinkLaw{TLaw, T}.UsualSlope"/>: the resistance at the usual velocity.</summary>
    internal T Usual;

    /// <summary>Length over bore.</summary>
    internal T Slender;

    /// <summary>Sum of the loss coefficients.</summary>
    internal T Minor;

    /// <summary>Loads the dimensions of the passage.</summary>
    internal void Load(RoundSettings part) =>
        (Slender, Minor) = (T.Of(part.Length / part.Bore), T.Of(part.LossCoefficient));

    /// <summary>Computes all that depends on the fluid.</summary>
    internal void Carry(RoundSettings part, in Surroundings<T> around)
    {
        T bore = T.Of(part.Bore);
        T velocity = Friction.Velocity(T.Of(1), bore);
        Dynamic = MinorLoss.PressureLoss(T.Of(1), around.Density, velocity);
        ReynoldsPerFlow = Friction.Reynolds(velocity, bore, around.Density, around.Viscosity);
        Laminar = Friction.LaminarFactor(ReynoldsPerFlow) * Slender * Dynamic;
        First = UsualVelocity / velocity;
        Usual = ((UsualFactor * Slender) + Minor) * Dynamic * First;
    }
}
