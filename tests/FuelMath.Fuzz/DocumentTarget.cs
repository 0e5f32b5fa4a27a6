using System.Reflection;
using System.Text;
using FuelMath.Tests.Calls;
using FuelMath.Tests.House;

namespace FuelMath.Fuzz;

/// <summary>
/// Documents of all kinds, damaged as bytes and as trees. What is read must be written, and read again as the same; a system
/// and a network are solved, too.
/// </summary>
internal sealed class DocumentTarget : IFuzzTarget
{
    private const string Data = "docs/samples/Assessment/data";
    private const string Own = "tests/FuelMath.Fuzz";

    private readonly Kind[] kinds;
    private readonly DocumentDamage damage;

    internal DocumentTarget()
    {
        kinds =
        [
            new(
                typeof(SystemDocument),
                [$"{Data}/time-trial-car.json", $"{Data}/training-stand.json", $"{Data}/circuit-car.json"]
            ),
            new(
                typeof(OperatingListDocument),
                [
                    $"{Data}/time-trial-car-points.json",
                    $"{Data}/training-stand-points.json",
                    $"{Data}/circuit-car-points.json",
                ]
            ),
            new(typeof(BenchDocument), [$"{Data}/time-trial-car-pulses.json"]),
            new(typeof(BriefDocument), [$"{Data}/circuit-car-brief.json"]),
            new(typeof(NetworkDocument), [$"{Own}/network.json", $"{Own}/network-with-pump.json"]),
            new(typeof(LinePlanDocument), [$"{Own}/line-plan.json"]),
        ];
        damage = new([.. kinds.SelectMany(k => k.Corpus)]);
    }

    public string Name => "documents";

    public bool Run(Random random)
    {
        Kind kind = kinds[random.Next(kinds.Length)];
        byte[] bytes = damage.Of(kind.Corpus[random.Next(kind.Corpus.Length)], random);
        string input = Encoding.UTF8.GetString(bytes);
        if (!Call(kind.Read, input, [(ReadOnlyMemory<byte>)bytes], out object? read))
        {
            return false;
        }

        if (Call(kind.Write, input, [read], out object? written))
        {
            if (
                !Call(
                    kind.Read,
                    input,
                    [(ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes((string)written!)],
                    out object? again
                )
            )
            {
                throw new FuzzFailure($"{kind.Name} read again", input, $"{kind.Name}: what it wrote, it refuses.");
            }

            if (!Call(kind.Write, input, [again], out object? twice) || (string)written! != (string)twice!)
            {
                throw new FuzzFailure(
                    $"{kind.Name} written again",
                    input,
                    $"{kind.Name}: what it wrote reads as another."
                );
            }
        }

        if (read is FuelSystem system)
        {
            Solve(system, input);
        }
        else if (read is SystemBrief brief)
        {
            _ = Call(typeof(BriefAssessment).GetConstructors().Single(), input, [brief], out _);
        }

        return true;
    }

    private static readonly OperatingPoint[] Points =
    [
        .. OperatingListDocument.ReadFile(Path.Combine(Repository.Root, Data, "time-trial-car-points.json")).Take(1),
    ];

    private static readonly MethodInfo Solver = typeof(FuelSystem).GetMethod("Solve", [typeof(OperatingPoint)])!;

    private static void Solve(FuelSystem system, string input) => _ = Call(Solver, input, [Points[0]], out _, system);

    /// <summary>True with what came, false for an exception that the documentation lists.</summary>
    private static bool Call(
        MethodBase method,
        string input,
        object?[] arguments,
        out object? result,
        object? target = null
    )
    {
        result = null;
        try
        {
            result = method is ConstructorInfo constructor
                ? constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null)
                : method.Invoke(target, BindingFlags.DoNotWrapExceptions, null, arguments, null);
            return true;
        }
        catch (Exception thrown)
        {
            return Documented.Lists(method, thrown)
                ? false
                : throw FuzzFailure.Undocumented(DocumentationId.Of(method), input, thrown);
        }
    }

    private sealed class Kind
    {
        internal Kind(Type document, string[] files)
        {
            Name = document.Name;
            Read = document.GetMethod("Read", [typeof(ReadOnlyMemory<byte>)])!;
            Write = document.GetMethod("Write")!;
            Corpus = [.. files.Select(f => File.ReadAllBytes(Path.Combine(Repository.Root, f)))];
        }

        internal string Name { get; }

        internal MethodInfo Read { get; }

        internal MethodInfo Write { get; }

        internal byte[][] Corpus { get; }
    }
}
