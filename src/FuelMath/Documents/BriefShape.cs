using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A system brief: the required inputs and those that may be left out.</summary>
internal static class BriefShape
{
    private static readonly ObjectShape<SystemBrief.PumpPoint> PumpPoint = new(o =>
    {
        o.Is("pump-flow-point", "Flow against a pressure rise.");
        var rise = o.Required("pressureRise", QuantityShapes.PressureDifference.NotNegative, p => p.PressureRise)
            .Says("Outlet less inlet pressure.");
        var flow = o.Required("flow", QuantityShapes.VolumeFlow.NotNegative, p => p.Flow).Says("Volume flow.");
        return f => new(f.Of(rise), f.Of(flow));
    });

    private static readonly ObjectShape<SystemBrief.Point> Point = new(o =>
    {
        o.Is("brief-point", "Where an engine is asked about.");
        var name = o.Required("name", TextShape.Name, p => p.Name).Says("What it is called.");
        var speed = o.Required("speed", QuantityShapes.RotationalSpeed.Positive, p => p.Speed)
            .Says("Crankshaft speed.");
        var manifold = o.Required("manifold", QuantityShapes.AbsolutePressure.Positive, p => p.Manifold)
            .Says("Manifold absolute pressure.");
        var lambda = o.Required("lambda", LambdaShape.Instance, p => p.Lambda).Says("The lambda that is asked for.");
        return f => new(f.Of(name), f.Of(speed), f.Of(manifold), f.Of(lambda));
    });

    internal static ObjectShape<SystemBrief> Shape { get; } =
        new(o =>
        {
            o.Is(
                "system-brief",
                "The least that must be known of a car's fuel system; what is left out of the rest is estimated."
            );
            o.Document("system brief");
            var name = o.Required("name", TextShape.Name, b => b.Name).Says("What the system is called.");
            var fuels = o.Optional(FuelShape.List.Name, FuelShape.List, Described)
                .Says("Fuels that the document refers to; those that the library knows by name need no entry.");
            var cylinders = o.Required("cylinders", new CountShape(1, 16), b => b.Engine.Cylinders)
                .Says("How many cylinders, with one injector each; a four-stroke.");
            var displacement = o.Required("displacement", QuantityShapes.Volume.Positive, b => b.Engine.Displacement)
                .Says("Displacement of all cylinders.");
            var inTank = o.Required("fuel", FuelShape.Reference, b => b.Fuel)
                .Says("The fuel in the tank, by its name.");
            var rating = o.Required("injectorRating", FlowRatingShape.Shape, b => b.Rating)
                .Says("What an injector is rated at.");
            var voltage = o.Required("pumpVoltage", QuantityShapes.Voltage.Positive, b => b.Pump.Voltage)
                .Says("The voltage at the pump for its points.");
            var pumpPoints = o.Required("pumpPoints", PumpPoint.Knots(), b => b.Pump.Points)
                .Says("Two or more points of the pump, pressure rise rising and flow falling.");
            var set = o.Required(
                    "setDifferentialPressure",
                    QuantityShapes.PressureDifference.Positive,
                    b => b.Regulator.SetDifferentialPressure
                )
                .Says("What the regulator holds above its reference.");
            var reference = o.Required("reference", RegulatorPartShapes.ReferenceWords, b => b.Regulator.Reference)
                .Says("What acts on the spring side of the regulator's diaphragm.");
            var points = o.Required("points", Point.List(1, 100), b => b.Points).Says("Where it is to run.");
            Known(SystemBrief.Input.VolumetricEfficiency, QuantityShapes.Ratio.Positive)
                .Says("Volumetric efficiency at manifold density.");
            Known(SystemBrief.Input.InjectorFlow, QuantityShapes.Ratio.Positive)
                .Says("What the fitted injectors flow over what the controller was told.");
            Known(SystemBrief.Input.DeadTime, QuantityShapes.Duration.Positive)
                .Says("Dead time at 14 V, which the controller was told, too.");
            Known(SystemBrief.Input.PumpCurrent, QuantityShapes.Current.Positive).Says("What the pump draws.");
            Known(SystemBrief.Input.CircuitResistance, QuantityShapes.SmallResistance.Positive)
                .Says("Contacts and relay in each circuit, beside its wires.");
            Known(SystemBrief.Input.SupplyVoltage, QuantityShapes.Voltage.Positive)
                .Says("Voltage at the source, engine running.");
            Known(SystemBrief.Input.FilterLoss, QuantityShapes.PressureDifference.Positive)
                .Says("What the filter loses at 200 L/h.");
            Known(SystemBrief.Input.FeedBore, QuantityShapes.SmallLength.Positive)
                .Says("Bore of the hose to the rail.");
            Known(SystemBrief.Input.HoseLength, QuantityShapes.Length.Positive)
                .Says("Length of the hose to the rail, and of that back.");
            Known(SystemBrief.Input.ReturnBore, QuantityShapes.SmallLength.Positive)
                .Says("Bore of the hose back to the tank.");
            Known(SystemBrief.Input.RegulatorSlope, QuantityShapes.PressureDifference.Positive)
                .Says("By how much the regulator's pressure rises for each 100 L/h that it passes.");
            Known(SystemBrief.Input.FuelTemperature, QuantityShapes.Temperature).Says("Temperature of the fuel.");
            Known(SystemBrief.Input.ChargeTemperature, QuantityShapes.Temperature).Says("Temperature of the charge.");
            return f =>
            {
                // First the list, so that a fault in it is told once and at its place.
                _ = f.Of(fuels);
                return new(
                    f.Of(name),
                    new SystemBrief.EngineSize(f.Of(cylinders), f.Of(displacement)),
                    f.Of(inTank),
                    f.Of(rating),
                    new SystemBrief.PumpData(f.Of(voltage), f.Of(pumpPoints)),
                    new SystemBrief.RegulatorSetting(f.Of(set), f.Of(reference)),
                    f.Of(points)
                );
            };

            Undescribed<ValueProperty<SystemBrief, T?>> Known<T>(SystemBrief.Input input, Shape<T> shape)
                where T : struct, IQuantity
            {
                string word = input.ToString();
                return o.With(
                    char.ToLowerInvariant(word[0]) + word[1..],
                    shape,
                    b => (T?)b.Known(input),
                    (b, v) => b.WithKnown(input, v)
                );
            }
        });

    /// <summary>The fuels that the library does not know by name.</summary>
    private static ImmutableArray<Fuel> Described(SystemBrief brief) =>
        [.. new[] { brief.Fuel, brief.Rating.Fluid }.Where(f => !FuelShape.IsStandard(f)).Distinct()];
}
