namespace FuelMath;

/// <summary>A step of a way through a network: along a line, from its first node to its second or back.</summary>
internal sealed record PathStep(int Line, int Start, int End, bool IsForward);
