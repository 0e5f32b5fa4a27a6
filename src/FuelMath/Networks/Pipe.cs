using UnitsNet;

namespace FuelMath;

/// <summary>A straight round passage by its measures alone: tube, rail, any pipe. A hose with its source is a Hose.</summary>
/// <remarks>
/// <para>Source: [Colebrook-1939]; [Rossman-2020] section 3.1 for the other law of friction.</para>
/// </remarks>
public sealed class Pipe : FlowPart
{
    private readonly PipeSettings law;

    /// <summary>Describes a pipe that lets flow through both ways.</summary>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inner diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; 0 to a twentieth of the bore.</param>
    /// <param name="lossCoefficient">Sum of loss coefficients of ends and bends, for this bore; not negative.</param>
    /// <param name="friction">How its friction factor is found.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Pipe(Length length, Length bore, Length roughness, Ratio lossCoefficient, FrictionLaw friction)
        : this(length, bore, roughness, lossCoefficient, friction, false) { }

    private Pipe(
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        FrictionLaw friction,
        bool hasCheckValve
    )
    {
        law = PartMath.Pipe(length, bore, roughness, lossCoefficient, friction, hasCheckValve);
        (Length, Bore, Roughness, LossCoefficient) = (length, bore, roughness, lossCoefficient);
        (Friction, HasCheckValve) = (friction, hasCheckValve);
    }

    /// <summary>Its length.</summary>
    public Length Length { get; }

    /// <summary>Its inner diameter.</summary>
    public Length Bore { get; }

    /// <summary>Roughness of the wall.</summary>
    public Length Roughness { get; }

    /// <summary>Sum of loss coefficients of ends and bends, for this bore.</summary>
    public Ratio LossCoefficient { get; }

    /// <summary>How its friction factor is found.</summary>
    public FrictionLaw Friction { get; }

    /// <summary>Whether a check valve in it, which costs nothing open, lets nothing flow backwards.</summary>
    public bool HasCheckValve { get; }

    /// <summary>The same pipe with a check valve in it that costs nothing open: nothing flows backwards.</summary>
    /// <returns>The pipe.</returns>
    public Pipe WithCheckValve() => new(Length, Bore, Roughness, LossCoefficient, Friction, true);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Length} of {Bore:mm}");

    /// <inheritdoc />
    internal override LawSettings Law => law;

    /// <inheritdoc />
    internal override bool IsPassage => !HasCheckValve;

    /// <inheritdoc />
    internal override bool ShutsIn => HasCheckValve;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => HasCheckValve ? LeakPlaces.CheckValve : LeakPlaces.None;

    /// <inheritdoc />
    internal override double? VolumeSi => PartMath.Volume(law);
}
