using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FuelMath.Formulas;

/// <summary>Writes the catalog as JSON, for whoever reads it without this library.</summary>
internal static class FormulaCatalogJson
{
    internal static string Write(ImmutableArray<FormulaInfo> formulas) =>
        Text(json =>
        {
            json.WriteStartObject();
            Kinds(json, formulas);
            json.WriteStartArray("formulas");
            foreach (FormulaInfo formula in formulas)
            {
                Formula(json, formula);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }) + "\n";

    internal static string Write(FormulaInfo formula) => Text(json => Formula(json, formula));

    private static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Formula(Utf8JsonWriter json, FormulaInfo formula)
    {
        json.WriteStartObject();
        json.WriteString("name", formula.Name);
        json.WriteString("summary", formula.Summary);
        json.WriteString("topic", formula.Topic.ToString());
        json.WriteStartArray("arguments");
        foreach (FormulaInfo.Argument argument in formula.Arguments)
        {
            json.WriteStartObject();
            json.WriteString("name", argument.Name);
            Quantity(json, argument.Quantity);
            json.WriteNumber("minimum", argument.Minimum);
            json.WriteNumber("maximum", argument.Maximum);
            json.WriteNumber("usualMinimum", argument.UsualMinimum);
            json.WriteNumber("usualMaximum", argument.UsualMaximum);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("bounds");
        foreach (FormulaInfo.Bound bound in formula.Bounds)
        {
            json.WriteStringValue(bound.ToString());
        }

        json.WriteEndArray();
        json.WriteStartArray("constants");
        foreach (FormulaInfo.Constant constant in formula.Constants)
        {
            json.WriteStartObject();
            json.WriteString("name", constant.Name);
            json.WriteString("unit", constant.Unit.Length == 0 ? "1" : constant.Unit);
            json.WriteNumber("value", constant.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("result");
        Quantity(json, formula.Result);
        json.WriteEndObject();
        json.WriteStartArray("sources");
        foreach (DataSource source in formula.Sources)
        {
            Source(json, source);
        }

        json.WriteEndArray();
        Example(json, formula.Example);
        json.WriteEndObject();
    }

    private static void Example(Utf8JsonWriter json, FormulaInfo.CheckedExample example)
    {
        json.WriteStartObject("example");
        json.WriteStartArray("arguments");
        foreach (double argument in example.Arguments)
        {
            json.WriteNumberValue(argument);
        }

        json.WriteEndArray();
        json.WriteNumber("expected", example.Expected);
        json.WriteNumber("relativeTolerance", example.RelativeTolerance);
        json.WritePropertyName("source");
        Source(json, example.Source);
        json.WriteEndObject();
    }

    /// <summary>Each kind with its units, the SI unit first; SI is (number + offset) * numerator / denominator.</summary>
    private static void Kinds(Utf8JsonWriter json, ImmutableArray<FormulaInfo> formulas)
    {
        json.WriteStartObject("kinds");
        foreach (
            FuelMath.UnitKind kind in formulas
                .SelectMany(f => f.Arguments.Select(a => a.Quantity).Append(f.Result))
                .Select(q => q.UnitKind)
                .DistinctBy(k => k.Name)
                .OrderBy(k => k.Name, StringComparer.Ordinal)
        )
        {
            json.WriteStartObject(kind.Name);
            foreach (FuelMath.Unit unit in kind.Units)
            {
                json.WriteStartObject(unit.Symbol);
                json.WriteNumber("offset", unit.Offset);
                json.WriteNumber("numerator", unit.Numerator);
                json.WriteNumber("denominator", unit.Denominator);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Quantity(Utf8JsonWriter json, FormulaQuantity quantity)
    {
        json.WriteString("symbol", quantity.Symbol.Name);
        json.WriteString("latex", Latex.Symbol(quantity.Symbol.Name));
        json.WriteString("meaning", quantity.Symbol.Meaning);
        json.WriteString("kind", quantity.Kind);
        json.WriteString("unit", quantity.Unit);
        json.WriteString("customaryUnit", quantity.CustomaryUnit);
    }

    private static void Source(Utf8JsonWriter json, DataSource source)
    {
        json.WriteStartObject();
        json.WriteString("key", source.Key);
        json.WriteString("place", source.Locator);
        json.WriteEndObject();
    }
}
