using UnitsNet;

namespace FuelMath;

/// <summary>
/// A straight round passage by its dimensions alone: tube, rail, any pipe. For a hose with a source use Hose.
/// </summary>
/// <remarks>
/// <para>Source: [Colebrook-1939]; [Rossman-2020] section 3.1 for the alternative friction law.</para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class Pipe : FlowPart
{
    private readonly PipeSettings law;

    /// <summary>Describes a pipe with flow in both directions.</summary>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inner diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; 0 to a twentieth of the bore.</param>
    /// <param name="lossCoefficient">Sum of loss coefficients of ends and bends, for this bore; not negative.</param>
    /// <param name="friction">The law of its friction factor.</param>
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

    /// <summary>The law of its friction factor.</summary>
    public FrictionLaw Friction { get; }

    /// <summary>Whether a check valve in it, without loss when open, prevents backward flow.</summary>
    public bool HasCheckValve { get; }

    /// <summary>The same pipe with a check valve, without loss when open, that prevents backward flow.</summary>
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
