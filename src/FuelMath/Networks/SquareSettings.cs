using FuelMath.Formulas;

namespace FuelMath;

/// <summary>opening + LinearPerViscosity mu q + SquarePerDensity rho q|q|.</summary>
/// <remarks>Drag by viscosity grows with viscosity, that of turned and slowed fluid with density.</remarks>
internal sealed class SquareSettings : LawSettings
{
    /// <summary>1/m³.</summary>
    internal double LinearPerViscosity { get; init; }

    /// <summary>1/m⁴.</summary>
    internal double SquarePerDensity { get; init; }

    /// <summary>The difference at which it opens, Pa.</summary>
    internal double Opening { get; init; }

    /// <summary>The pressure loss that sets its scale of flow, Pa.</summary>
    internal double Scale { get; init; } = 1e4;

    internal bool OneWay { get; init; }

    /// <summary>Whether it discharges into a space: then the downstream pressure is taken as it is, at any height.</summary>
    internal bool IntoSpace { get; init; }

    internal override bool IsOneWay => OneWay;

    /// <summary>Where its loss is given for any fluid.</summary>
    /// <inheritdoc />
    internal override Traced? LossWorking(in LossInputs at)
    {
        if (IntoSpace || (LinearPerViscosity == 0 && SquarePerDensity == 0))
        {
            return null;
        }

        Traced loss =
            LinearPerViscosity == 0
                ? Traced.Step(
                    Traced.Input(PerDensity, SquarePerDensity) * at.Density * at.Flow * Traced.Abs(at.Flow),
                    Symbols.PressureLoss,
                    Squared
                )
                : PorousMedium.PressureLoss(
                    Traced.Input(PerViscosity, LinearPerViscosity),
                    Traced.Input(PerDensity, SquarePerDensity),
                    at.Viscosity,
                    at.Density,
                    at.Flow
                );
        return Opening == 0 ? loss : loss + ReaderUnits.Input(OpensAt, Opening, "bar");
    }

    private static DataSource Squared { get; } = new("White-2003", "section 6.9 (minor losses)");

    private static Symbol PerViscosity { get; } = new("a", "1/m3", "loss over viscosity and flow");

    private static Symbol PerDensity { get; } = new("b", "1/m4", "loss over density and the square of flow");

    private static Symbol OpensAt { get; } = new("dpo", "Pa", "pressure at which it opens");

    internal override bool NeedsSpace => IntoSpace;

    internal override object Law => (GetType(), OneWay);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        GroupOf<T, SquareLaw<T>>(ends, parts, OneWay);

    /// <summary>It costs so little that few links are sooner done one by one.</summary>
    private protected override int PackedFrom => 24;

    private protected override LinkGroup<Real> Packed<TLane>(Ends[] ends, LawSettings[] parts) =>
        PackedOf<SquareLaw<Real>, TLane, SquareLaw<TLane>>(ends, parts, OneWay);
}
