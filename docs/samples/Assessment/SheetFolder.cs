namespace FuelMath.Samples.Assessment;

/// <summary>The sheet as text, and each of its tables as CSV and JSON, so that nobody types it again.</summary>
internal static class SheetFolder
{
    internal static void Write(string folder, TuningSheet sheet)
    {
        string tables = Path.Combine(folder, "tables");
        Directory.CreateDirectory(tables);
        File.WriteAllText(
            Path.Combine(folder, "sheet.txt"),
            string.Join('\n', sheet.ToLines(TuningSheet.PageWidth)) + "\n"
        );
        foreach (SheetTable table in sheet.Tables)
        {
            File.WriteAllText(Path.Combine(tables, table.Name + ".csv"), table.ToCsv());
            File.WriteAllText(Path.Combine(tables, table.Name + ".json"), table.ToJson());
        }
    }
}
