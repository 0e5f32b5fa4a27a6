using System.Globalization;

namespace FuelMath.Fuzz;

/// <summary>What the command line asks for.</summary>
internal sealed record Options(int Seed, double Seconds, long? Count, long? Case, string? Only)
{
    internal const string Usage =
        "usage: [--seconds 60 | --count 1000000] [--seed 1] [--only texts|documents|calls] [--case 17, of texts and documents]";

    internal static Options Of(string[] args)
    {
        var options = new Options(Environment.TickCount & int.MaxValue, 60, null, null, null);
        for (int i = 0; i < args.Length; i += 2)
        {
            string value = i + 1 < args.Length ? args[i + 1] : throw new FormatException($"{args[i]} needs a value.");
            options = args[i] switch
            {
                "--seed" => options with { Seed = int.Parse(value, CultureInfo.InvariantCulture) },
                "--seconds" => options with { Seconds = double.Parse(value, CultureInfo.InvariantCulture) },
                "--count" => options with { Count = long.Parse(value, CultureInfo.InvariantCulture) },
                "--case" => options with { Case = long.Parse(value, CultureInfo.InvariantCulture) },
                "--only" when value is "texts" or "documents" or "calls" => options with { Only = value },
                _ => throw new FormatException($"{args[i]} {value} is not known."),
            };
        }

        return options.Case is not null && options.Only is not ("texts" or "documents")
            ? throw new FormatException(
                "--case needs --only texts or --only documents: calls hang on those before them."
            )
            : options;
    }
}
