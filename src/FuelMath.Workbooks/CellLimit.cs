namespace FuelMath.Workbooks;

/// <summary>The allowed range of an input cell; the host warns at other values.</summary>
internal sealed class CellLimit(string reference, double minimum, double maximum, string prompt)
{
    internal string Reference { get; } = reference;

    internal double Minimum { get; } = minimum;

    internal double Maximum { get; } = maximum;

    internal string Prompt { get; } = prompt;
}
