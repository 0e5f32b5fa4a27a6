namespace FuelMath.Workbooks;

/// <summary>How a cell looks; the number is its format in the style sheet.</summary>
internal enum CellLook
{
    Plain,
    Title,
    Head,
    Input,
    Result,
    Note,
    Solved,
    Words,
    Live,
    LiveResult,
}
