using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What the injectors are told to do.</summary>
internal static class CommandShape
{
    private static readonly ValueProperty<FuelCommand, Lambda> Target = new(
        "lambda",
        "The lambda asked for.",
        LambdaShape.Instance,
        c => c.Lambda!.Value
    );

    private static readonly ValueProperty<FuelCommand, ImmutableArray<Duration>> Widths = new(
        "widths",
        "A pulse width for each stage; zero keeps a stage shut.",
        new ListShape<Duration>(QuantityShapes.Duration, 1, 2),
        c => c.PulseWidths
    );

    internal static Shape<FuelCommand> Shape { get; } =
        new WordOrShape<FuelCommand>(
            new ChoiceShape<FuelCommand>(("cut", FuelCommand.Cut), ("all open", FuelCommand.AllOpen)),
            new UnionShape<FuelCommand>(
                Case(FuelCommandKind.HoldLambda, "hold lambda", Target, f => FuelCommand.HoldLambda(f.Of(Target))),
                Case(FuelCommandKind.OpenLoop, "open loop", Target, f => FuelCommand.OpenLoop(f.Of(Target))),
                Case(
                    FuelCommandKind.PulseWidths,
                    "pulse widths",
                    Widths,
                    f => FuelCommand.FromPulseWidths(f.Of(Widths))
                )
            )
        );

    private static UnionCase<FuelCommand> Case(
        FuelCommandKind kind,
        string word,
        Property<FuelCommand> value,
        Func<Fields<FuelCommand>, FuelCommand> make
    ) =>
        UnionCase<FuelCommand>.Of(
            new ObjectShape<FuelCommand>(
                word.Replace(' ', '-'),
                "What the injectors are told to do.",
                [new WordProperty<FuelCommand>("kind", "Which kind of command it is.", word), value],
                make
            ),
            c => c.Kind == kind
        );
}
