using System.Globalization;
using FuelMath.Mutation;

// Runs the tests of a room over mutants that dotnet-stryker made; run.sh beside it says how. With "cover" or "run" as the first
// word it is one of its own child processes.
return args switch
{
    ["cover", string tests, string filter] => Child.Cover(tests, filter),
    ["run", string tests, string plan] => Child.Run(tests, plan),
    [string tests, string report, string files, string filter, string sample, string seed] => new Campaign(
        tests,
        filter,
        Mutant.Read(report, files),
        int.Parse(sample, CultureInfo.InvariantCulture),
        int.Parse(seed, CultureInfo.InvariantCulture)
    ).Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine(
        "usage: FuelMath.Mutation TESTS.dll REPORT.json FILES TESTFILTER SAMPLE SEED (run.sh calls it)"
    );
    return 2;
}
