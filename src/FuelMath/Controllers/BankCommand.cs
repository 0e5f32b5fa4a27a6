namespace FuelMath;

/// <summary>The command to the injectors of a bank: the factor on their fuel, and the width of each stage, s.</summary>
internal sealed record BankCommand(double Factor, bool IsAtLimit, double[] Widths);
