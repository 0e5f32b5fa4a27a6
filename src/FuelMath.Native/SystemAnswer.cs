using System.Buffers;
using System.Text;
using System.Text.Json;

namespace FuelMath.Native;

/// <summary>What a system is found to do at operating points, as JSON: the verdict, what it rests on, and each table.</summary>
internal static class SystemAnswer
{
    internal static string Of(ReadOnlyMemory<byte> system, ReadOnlyMemory<byte> points)
    {
        var assessment = new SystemAssessment(SystemDocument.Read(system), OperatingListDocument.Read(points));
        var buffer = new ArrayBufferWriter<byte>();
        using (var to = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            to.WriteStartObject();
            to.WriteString("system", assessment.System.Name);
            to.WriteString("verdict", assessment.Verdict.Kind.ToString());
            to.WriteString("words", assessment.Verdict.ToString());
            to.WriteStartArray("findings");
            foreach (SystemAssessment.GroupedFinding finding in assessment.Findings)
            {
                to.WriteStartObject();
                to.WriteString("code", finding.Code.ToString());
                to.WriteString("severity", finding.Severity.ToString());
                to.WriteString("part", finding.Part);
                to.WriteString("what", finding.What);
                to.WriteString("words", finding.ToString());
                to.WriteEndObject();
            }

            to.WriteEndArray();
            to.WriteStartArray("tables");
            foreach (SheetTable table in new TuningSheet(assessment).Tables)
            {
                to.WriteRawValue(table.ToJson());
            }

            to.WriteEndArray();
            to.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
