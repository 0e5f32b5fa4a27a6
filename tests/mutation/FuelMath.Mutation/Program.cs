using System.Globalization;
using FuelMath.Mutation;

// Runs the tests of a room over mutants that dotnet-stryker made; run.sh beside it says how. With "cover" or "run" as the first
// word it is one of its own child processes.
return args switch
{
    ["cover", string tests, string filter, string known] => Child.Cover(tests, filter, known),
    ["run", string tests, string plan] => Child.Run(tests, plan),
    [
        string tests,
        string report,
        string survivors,
        string files,
        string filter,
        string own,
        string sample,
        string seed,
    ] => new Campaign(tests, filter, own, Mutant.Read(report, files), Survivors.Read(survivors)).Run(
        int.Parse(sample, CultureInfo.InvariantCulture),
        int.Parse(seed, CultureInfo.InvariantCulture)
    ),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine(
        "usage: FuelMath.Mutation TESTS.dll REPORT.json SURVIVORS.tsv FILES TESTFILTER OWNTESTS SAMPLE SEED (run.sh calls it)"
    );
    return 2;
}
