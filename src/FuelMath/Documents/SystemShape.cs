using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A whole fuel system. Fuels and injectors stand once, in lists at the root, and are referred to by name.</summary>
internal static class SystemShape
{
    private static readonly ValueProperty<StagingRule, Ratio> Transition = new(
        "transitionDutyCycle",
        "The primaries' duty cycle at which the secondaries join.",
        QuantityShapes.Ratio,
        r => r.TransitionDutyCycle
    );

    private static readonly ObjectShape<StagingRule> Rule = new(
        "staging-rule",
        "How primaries and secondaries share the fuel.",
        [Transition],
        f => new(f.Of(Transition))
    );

    private static readonly ValueProperty<FuelSystem, string> Name = new(
        "name",
        "What it is called.",
        TextShape.Name,
        s => s.Name
    );

    private static readonly ValueProperty<FuelSystem, DataSource> Source = SourceShape.Of<FuelSystem>(s => s.Source);

    private static readonly ValueProperty<FuelSystem, ImmutableArray<Fuel>> Fuels = new(
        FuelShape.List.Name,
        "Fuels that the document refers to; those that the library knows by name need no entry.",
        FuelShape.List,
        SystemLists.Fuels,
        s => SystemLists.Fuels(s).Length > 0,
        []
    );

    private static readonly ValueProperty<FuelSystem, ImmutableArray<Injector>> Injectors = new(
        InjectorShape.List.Name,
        "Injectors that the stages refer to.",
        InjectorShape.List,
        SystemLists.Injectors
    );

    private static readonly ValueProperty<FuelSystem, Fuel> InTank = new(
        "fuel",
        "The fuel in the tank, by its name.",
        FuelShape.Reference,
        s => s.Fuel
    );

    private static readonly ValueProperty<FuelSystem, Engine> Engine = new(
        "engine",
        "The engine.",
        EngineShape.Shape,
        s => s.Engine
    );

    private static readonly ValueProperty<FuelSystem, FuelPlan> Plan = new(
        "plan",
        "The fuel path.",
        PlanShape.Shape,
        s => s.Plan
    );

    private static readonly ValueProperty<FuelSystem, ImmutableArray<InjectorStage>> Stages = new(
        "stages",
        "One stage, or primaries and then secondaries.",
        new ListShape<InjectorStage>(StageShape.Shape, 1, 2),
        s => s.Stages
    );

    private static readonly ValueProperty<FuelSystem, StagingRule> Staging = new(
        "staging",
        "How two stages share the fuel; none with one stage.",
        Rule,
        s => s.Staging!,
        s => s.Staging is not null,
        null!
    );

    private static readonly ValueProperty<FuelSystem, PowerSupply> Power = new(
        "power",
        "What feeds pumps and injectors.",
        PowerSupplyShape.Shape,
        s => s.Power
    );

    private static readonly ValueProperty<FuelSystem, Limits> LimitsOf = new(
        "limits",
        "What findings are held against.",
        LimitsShape.Shape,
        s => s.Limits
    );

    internal static ObjectShape<FuelSystem> Shape { get; } =
        new(
            "fuel-system",
            "A whole fuel delivery, from tank to injector tip.",
            [
                new WordProperty<FuelSystem>("document", "What the document is.", "fuel system"),
                new WordProperty<FuelSystem>("version", "The version of its form.", "1"),
                Name,
                Source,
                Fuels,
                Injectors,
                InTank,
                Engine,
                Plan,
                Stages,
                Staging,
                Power,
                LimitsOf,
            ],
            f =>
            {
                // First the lists, so that a fault in them is told once and at its place.
                _ = f.Of(Fuels);
                _ = f.Of(Injectors);
                return new(
                    f.Of(Name),
                    f.Of(InTank),
                    f.Of(Engine),
                    f.Of(Plan),
                    f.Of(Stages),
                    f.Of(Staging),
                    f.Of(Power),
                    f.Of(LimitsOf),
                    f.Of(Source)
                );
            }
        );
}
