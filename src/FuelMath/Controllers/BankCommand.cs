namespace FuelMath;

/// <summary>What the injectors of a bank are told: the factor on their fuel, and the width of each stage, s.</summary>
internal sealed record BankCommand(double Factor, bool IsAtLimit, double[] Widths);
