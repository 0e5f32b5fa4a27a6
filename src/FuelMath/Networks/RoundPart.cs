namespace FuelMath.Networks;

/// <summary>A round passage.</summary>
internal abstract class RoundPart(double length, double bore, double roughness, double lossCoefficient) : LinkPart
{
    internal readonly double Length = length;
    internal readonly double Bore = bore;
    internal readonly double Roughness = roughness;
    internal readonly double LossCoefficient = lossCoefficient;
}
