namespace FuelMath;

/// <summary>A whole fuel system. Fuels and injectors stand once, in lists at the root, and are referred to by name.</summary>
internal static class SystemShape
{
    private static readonly ObjectShape<StagingRule> Rule = new(o =>
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
            return f =>
            {
                // First the lists, so that a fault in them is told once and at its place.
                _ = f.Of(fuels);
                _ = f.Of(injectors);
                return new(
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
            };
        });
}
