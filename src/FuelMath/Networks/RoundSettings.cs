using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A round passage.</summary>
internal abstract class RoundSettings(double length, double bore, double roughness, double lossCoefficient)
    : LawSettings
{
    internal readonly double Length = length;
    internal readonly double Bore = bore;
    internal readonly double Roughness = roughness;
    internal readonly double LossCoefficient = lossCoefficient;

    /// <summary>What it loses, step by step.</summary>
    /// <param name="at">Flow and fluid.</param>
    /// <param name="coil">Diameter of the curve of its center line, m; null where it lies straight.</param>
    private protected Traced LossWorking(in LossInputs at, double? coil) =>
        RoundLoss.Of(
            at.Flow,
            ReaderUnits.Input(Symbols.Bore, Bore, "mm"),
            Traced.Input(Symbols.Length, Length),
            ReaderUnits.Input(Symbols.Roughness, Roughness, "mm"),
            Traced.Input(Symbols.LossCoefficient, LossCoefficient),
            coil is { } bent ? ReaderUnits.Input(RoundLoss.CoilDiameter, bent, "mm") : null,
            at.Density,
            at.Viscosity
        );
}
