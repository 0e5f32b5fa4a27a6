namespace FuelMath.Tests.Workbooks;

/// <summary>An error as a cell shows it; what reads it shows it too.</summary>
internal sealed record SheetError(string Text);
