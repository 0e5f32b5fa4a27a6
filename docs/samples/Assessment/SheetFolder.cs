namespace FuelMath.Samples.Assessment;

/// <summary>The sheet as text, and each table as CSV and JSON, so that nobody types it again.</summary>
internal static class SheetFolder
{
    internal static IEnumerable<string> Files(Assessed assessed) =>
        ["sheet.txt", .. Tables(assessed).SelectMany(t => new[] { $"tables/{t.Name}.csv", $"tables/{t.Name}.json" })];

    internal static void Write(OutputFolder folder, Assessed assessed)
    {
        folder.Write("sheet.txt", string.Join('\n', assessed.Sheet.ToLines(TuningSheet.PageWidth)) + "\n");
        foreach (SheetTable table in Tables(assessed))
        {
            folder.Write($"tables/{table.Name}.csv", table.ToCsv());
            folder.Write($"tables/{table.Name}.json", table.ToJson());
        }
    }

    /// <summary>Those of the sheet, then those behind the verdict; one that stands in both is written once.</summary>
    internal static IEnumerable<SheetTable> Tables(Assessed assessed) =>
        assessed.Sheet.Tables.Concat(assessed.Tables.All).DistinctBy(t => t.Name);
}
