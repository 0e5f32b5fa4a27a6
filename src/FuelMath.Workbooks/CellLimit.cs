namespace FuelMath.Workbooks;

/// <summary>What a cell for an input takes: the host warns at anything else.</summary>
internal sealed class CellLimit(string reference, double minimum, double maximum, string prompt)
{
    internal string Reference { get; } = reference;

    internal double Minimum { get; } = minimum;

    internal double Maximum { get; } = maximum;

    internal string Prompt { get; } = prompt;
}
