namespace FuelMath.Samples.Assessment;

/// <summary>What --all prints: the whole sheet, then every table behind the verdict, pulses and cautions.</summary>
internal static class AllText
{
    internal static IEnumerable<string> Of(Assessed assessed)
    {
        TuningSheet sheet = assessed.Sheet;
        FuelSystem system = sheet.Assessment.System;
        IEnumerable<SheetTable> behind = assessed.Tables.All.Where(t => sheet.Tables.All(s => s.Name != t.Name));
        return
        [
            .. sheet.ToLines(TuningSheet.PageWidth),
            "",
            $"APPENDIX: {system.Name}",
            .. behind.SelectMany(t => t.ToLines(TuningSheet.PageWidth).Prepend("")),
            "",
            .. (assessed.Pulsed?.Lines() ?? []).SelectMany(l => Wrapping.Wrap(l, TuningSheet.PageWidth, 6)),
            "",
            "CAUTIONS",
            .. SampleCautions.All(system).SelectMany(c => Wrapping.Wrap($"- {c}", TuningSheet.PageWidth, 2)),
        ];
    }
}
