namespace FuelMath.Workbooks;

/// <summary>An argument of a function of cells: a cell or a range of cells.</summary>
/// <seealso href="../guide/add-ins.html">Functions for an add-in</seealso>
public sealed class SheetFunctionArgument
{
    internal SheetFunctionArgument(string name, string help, string unit, bool isWholeRange) =>
        (Name, Help, Unit, IsWholeRange) = (name, help, unit, isWholeRange);

    /// <summary>Its name, for example <c>differentialPressure</c>.</summary>
    public string Name { get; }

    /// <summary>Its meaning, unit and range, in one sentence.</summary>
    public string Help { get; }

    /// <summary>The unit of a bare number; blank for a text. A text with a number and a unit may have any unit of the kind.</summary>
    public string Unit { get; }

    /// <summary>
    /// Whether it is a table that is read as a whole. Otherwise a range gives a range of results, one for each of its cells.
    /// </summary>
    public bool IsWholeRange { get; }

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    internal static SheetFunctionArgument Text(string name, string help) => new(name, help, "", false);
}
