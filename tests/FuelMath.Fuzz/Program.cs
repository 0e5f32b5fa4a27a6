using System.Diagnostics;
using System.Globalization;
using FuelMath.Fuzz;

// Feeds the library with damaged texts and documents and with calls of every kind, for a time or a count. It may answer or
// refuse with an exception that the documentation lists; anything else is printed with the seed that brings it back, and the
// program ends with 1.
Options options;
try
{
    options = Options.Of(args);
}
catch (FormatException problem)
{
    Console.Error.WriteLine(problem.Message);
    Console.Error.WriteLine(Options.Usage);
    return 2;
}

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {options.Seed}"));
IFuzzTarget[] targets =
[
    .. new IFuzzTarget[] { new TextTarget(), new DocumentTarget(), new CallTarget(options.Seed) }.Where(t =>
        options.Only is null || t.Name == options.Only
    ),
];
bool clean = true;
foreach (IFuzzTarget target in targets)
{
    var tally = new Tally(target.Name);
    using Timer watch = tally.Watch();
    var clock = Stopwatch.StartNew();
    TimeSpan time = TimeSpan.FromSeconds(options.Seconds / targets.Length);
    long first = options.Case ?? 0;
    long end = options.Case is { } one ? one + 1 : options.Count ?? long.MaxValue;
    for (
        long i = first;
        i < end && (options.Count is not null || options.Case is not null || clock.Elapsed < time);
        i++
    )
    {
        tally.Run(target, options.Seed, i);
    }

    tally.Print();
    clean &= tally.Clean;
}

return clean ? 0 : 1;
