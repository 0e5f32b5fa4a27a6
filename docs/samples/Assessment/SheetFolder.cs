namespace FuelMath.Samples.Assessment;

/// <summary>The sheet as text, and each of its tables as CSV and JSON, so that nobody types it again.</summary>
internal static class SheetFolder
{
    internal static IEnumerable<string> Files(TuningSheet sheet) =>
        ["sheet.txt", .. sheet.Tables.SelectMany(t => new[] { $"tables/{t.Name}.csv", $"tables/{t.Name}.json" })];

    internal static void Write(OutputFolder folder, TuningSheet sheet)
    {
        folder.Write("sheet.txt", string.Join('\n', sheet.ToLines(TuningSheet.PageWidth)) + "\n");
        foreach (SheetTable table in sheet.Tables)
        {
            folder.Write($"tables/{table.Name}.csv", table.ToCsv());
            folder.Write($"tables/{table.Name}.json", table.ToJson());
        }
    }
}
