namespace FuelMath;

/// <summary>The command to the injectors.</summary>
internal static class CommandShape
{
    internal static Shape<FuelCommand> Shape { get; } =
        new WordOrShape<FuelCommand>(
            ChoiceShape.Of(("cut", FuelCommand.Cut), ("all open", FuelCommand.AllOpen)),
            new UnionShape<FuelCommand>(
                AtLambda("hold lambda", FuelCommand.CommandKind.HoldLambda, FuelCommand.HoldLambda),
                AtLambda("open loop", FuelCommand.CommandKind.OpenLoop, FuelCommand.OpenLoop),
                new(o =>
                {
                    Begin(o, "pulse widths", FuelCommand.CommandKind.PulseWidths);
                    var widths = o.Required(
                            "widths",
                            QuantityShapes.Duration.NotNegative.List(1, 2),
                            c => c.PulseWidths
                        )
                        .Says("A pulse width for each stage; zero keeps a stage shut.");
                    return f => FuelCommand.FromPulseWidths(f.Of(widths));
                })
            )
        );

    private static ObjectShape<FuelCommand> AtLambda(
        string word,
        FuelCommand.CommandKind kind,
        Func<Lambda, FuelCommand> make
    ) =>
        new(o =>
        {
            Begin(o, word, kind);
            var lambda = o.Required("lambda", LambdaShape.Instance, c => c.Lambda!.Value).Says("The lambda asked for.");
            return f => make(f.Of(lambda));
        });

    private static void Begin(ObjectBuilder<FuelCommand> o, string word, FuelCommand.CommandKind kind)
    {
        o.Is(word.Replace(' ', '-'), "The command to the injectors.");
        o.Kind(word, "Which kind of command it is.", c => c.Kind == kind);
    }
}
