namespace FuelMath.Workbooks;

/// <summary>The appearance of a cell; the number is its format in the style sheet.</summary>
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
