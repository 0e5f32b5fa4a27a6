using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A whole fuel system. Fuels and injectors stand once, in lists at the root, and are referred to by name.</summary>
internal static class SystemShape
{
    private static readonly ObjectShape<StageSchedule.Transition> Rule = new(o =>
    {
        o.Is("staging-rule", "How primaries and secondaries share the fuel.");
        var transition = o.Required("transitionDutyCycle", QuantityShapes.Ratio.Positive, r => r.TransitionDutyCycle)
            .Says("The primaries' duty cycle at which the secondaries join.");
        return f => new(f.Of(transition));
    });

    internal static ObjectShape<FuelSystem> Shape { get; } =
        new(o =>
        {
            o.Is("fuel-system", "A whole fuel delivery, from tank to injector tip.");
            o.Document("fuel system");
            var name = o.Required("name", TextShape.Name, s => s.Name).Says("What it is called.");
            var source = o.Source(s => s.Source);
            var fuels = o.Optional(FuelShape.List.Name, FuelShape.List, SystemLists.Fuels)
                .Says("Fuels that the document refers to; those that the library knows by name need no entry.");
            var injectors = o.Required(InjectorShape.List.Name, InjectorShape.List, SystemLists.Injectors)
                .Says("Injectors that the stages refer to.");
            var inTank = o.Required("fuel", FuelShape.Reference, s => s.Fuel)
                .Says("The fuel in the tank, by its name.");
            var engine = o.Required("engine", EngineShape.Shape, s => s.Engine).Says("The engine.");
            var plan = o.Required("plan", PlanShape.Shape, s => s.Network, "network").Says("The fuel path.");
            var stages = o.Required("stages", StageShape.Shape.List(1, 2), s => s.Stages)
                .Says("One stage, or primaries and then secondaries.");
            var staging = o.Optional("staging", Rule, s => s.Staging)
                .Says("How two stages share the fuel; none with one stage.");
            var power = o.Required("power", PowerSupplyShape.Shape, s => s.Power)
                .Says("What feeds pumps and injectors.");
            var limitsOf = o.Required("limits", LimitsShape.Shape, s => s.Limits)
                .Says("What findings are held against.");
            var banks = o.Optional("banks", new CountShape(1, 64).List(1, 64).List(1, 64), ChambersOfEach)
                .Says(
                    "The chambers behind each lambda sensor, such as [[1, 2, 3], [4, 5, 6]]; one sensor stands behind all when left out."
                );
            var uncertain = o.Optional("uncertain", UncertainInputShape.Shape.List(1, 100), s => s.UncertainInputs)
                .Says(
                    "What of the description is uncertain, and by how much: the report then says which input makes the scatter; all counts as exact when left out."
                );
            return f =>
            {
                // First the lists, so that a fault in them is told once and at its place.
                _ = f.Of(fuels);
                _ = f.Of(injectors);
                FuelSystem system = new(
                    f.Of(name),
                    f.Of(inTank),
                    f.Of(engine),
                    f.Of(plan),
                    f.Of(stages),
                    f.Of(staging),
                    f.Of(power),
                    f.Of(limitsOf),
                    f.Of(source)
                );
                return system
                    .WithBanks(BankOfEach(system.Engine.Chambers, f.Of(banks)))
                    .WithUncertainInputs(f.Of(uncertain));
            };
        });

    /// <summary>The chambers of each bank; none where one sensor stands behind all.</summary>
    private static ImmutableArray<ImmutableArray<int>> ChambersOfEach(FuelSystem system) =>
        system.Banks.All(b => b == 1)
            ? []
            :
            [
                .. Enumerable
                    .Range(1, system.Banks.Max())
                    .Select(b =>
                        Enumerable.Range(1, system.Banks.Length).Where(c => system.Banks[c - 1] == b).ToImmutableArray()
                    ),
            ];

    /// <summary>The bank of each chamber from the chambers of each bank.</summary>
    private static int[] BankOfEach(int chambers, ImmutableArray<ImmutableArray<int>> banks)
    {
        int[] all = [.. banks.SelectMany(b => b).Order()];
        return banks.IsEmpty ? [.. Enumerable.Repeat(1, chambers)]
            : all.SequenceEqual(Enumerable.Range(1, chambers))
                ? [.. Enumerable.Range(1, chambers).Select(c => banks.IndexOf(banks.First(b => b.Contains(c))) + 1)]
            : throw new RefusedArgumentException(
                RefusalCode.ChambersNotOnce,
                $"Must name each of chambers {1:least} to {chambers:most} once; named were {all:given}.",
                nameof(banks)
            );
    }
}
