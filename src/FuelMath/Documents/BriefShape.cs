using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The least that a person must know of a system, and what else is known of it.</summary>
internal static class BriefShape
{
    private static readonly ValueProperty<SystemBrief, string> Name = new(
        "name",
        "What the system is called.",
        TextShape.Name,
        b => b.Name
    );

    private static readonly ValueProperty<SystemBrief, int> Cylinders = new(
        "cylinders",
        "How many cylinders, with one injector each; a four-stroke.",
        new CountShape(1, 16),
        b => b.Cylinders
    );

    private static readonly ValueProperty<SystemBrief, Volume> Displacement = new(
        "displacement",
        "Displacement of all cylinders.",
        QuantityShapes.Volume,
        b => b.Displacement
    );

    private static readonly ValueProperty<SystemBrief, ImmutableArray<Fuel>> Fuels = new(
        FuelShape.List.Name,
        "Fuels that the document refers to; those that the library knows by name need no entry.",
        FuelShape.List,
        Described,
        b => Described(b).Length > 0,
        []
    );

    private static readonly ValueProperty<SystemBrief, Fuel> InTank = new(
        "fuel",
        "The fuel in the tank, by its name.",
        FuelShape.Reference,
        b => b.Fuel
    );

    private static readonly ValueProperty<SystemBrief, FlowRating> Rating = new(
        "injectorRating",
        "What an injector is rated at.",
        FlowRatingShape.Shape,
        b => b.Rating
    );

    private static readonly ValueProperty<SystemBrief, ElectricPotential> PumpVoltage = new(
        "pumpVoltage",
        "The voltage at the pump for its points.",
        QuantityShapes.Voltage,
        b => b.PumpVoltage
    );

    private static readonly ValueProperty<PumpFlowPoint, Pressure> Rise = new(
        "pressureRise",
        "Outlet less inlet pressure.",
        QuantityShapes.PressureDifference,
        p => p.PressureRise
    );

    private static readonly ValueProperty<PumpFlowPoint, VolumeFlow> Flow = new(
        "flow",
        "Volume flow.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ValueProperty<SystemBrief, ImmutableArray<PumpFlowPoint>> PumpPoints = new(
        "pumpPoints",
        "Two or more points of the pump, pressure rise rising and flow falling.",
        TableShapes.Knots(
            new ObjectShape<PumpFlowPoint>(
                "pump-flow-point",
                "Flow against a pressure rise.",
                [Rise, Flow],
                f => new(f.Of(Rise), f.Of(Flow))
            )
        ),
        b => b.PumpPoints
    );

    private static readonly ValueProperty<SystemBrief, Pressure> Set = new(
        "setDifferentialPressure",
        "What the regulator holds above its reference.",
        QuantityShapes.PressureDifference,
        b => b.SetDifferentialPressure
    );

    private static readonly ValueProperty<SystemBrief, RegulatorReference> Reference = new(
        "reference",
        "What acts on the spring side of the regulator's diaphragm.",
        RegulatorPartShapes.ReferenceWords,
        b => b.Reference
    );

    private static readonly ValueProperty<BriefPoint, string> PointName = new(
        "name",
        "What it is called.",
        TextShape.Name,
        p => p.Name
    );

    private static readonly ValueProperty<BriefPoint, RotationalSpeed> Speed = new(
        "speed",
        "Crankshaft speed.",
        QuantityShapes.RotationalSpeed,
        p => p.Speed
    );

    private static readonly ValueProperty<BriefPoint, AbsolutePressure> Manifold = new(
        "manifold",
        "Manifold absolute pressure.",
        QuantityShapes.AbsolutePressure,
        p => p.Manifold
    );

    private static readonly ValueProperty<BriefPoint, Lambda> Asked = new(
        "lambda",
        "The lambda that is asked for.",
        LambdaShape.Instance,
        p => p.Lambda
    );

    private static readonly ValueProperty<SystemBrief, ImmutableArray<BriefPoint>> Points = new(
        "points",
        "Where it is to run.",
        new ListShape<BriefPoint>(
            new ObjectShape<BriefPoint>(
                "brief-point",
                "Where an engine is asked about.",
                [PointName, Speed, Manifold, Asked],
                f => new(f.Of(PointName), f.Of(Speed), f.Of(Manifold), f.Of(Asked))
            ),
            1,
            100
        ),
        b => b.Points
    );

    private static readonly ImmutableArray<Further> Inputs =
    [
        Input(BriefInput.VolumetricEfficiency, "Volumetric efficiency at manifold density.", QuantityShapes.Ratio),
        Input(
            BriefInput.InjectorFlow,
            "What the fitted injectors flow over what the controller was told.",
            QuantityShapes.Ratio
        ),
        Input(BriefInput.DeadTime, "Dead time at 14 V, which the controller was told, too.", QuantityShapes.Duration),
        Input(BriefInput.PumpCurrent, "What the pump draws.", QuantityShapes.Current),
        Input(
            BriefInput.CircuitResistance,
            "Contacts and relay in each circuit, beside its wires.",
            QuantityShapes.SmallResistance
        ),
        Input(BriefInput.SupplyVoltage, "Voltage at the source, engine running.", QuantityShapes.Voltage),
        Input(BriefInput.FilterLoss, "What the filter loses at 200 L/h.", QuantityShapes.PressureDifference),
        Input(BriefInput.FeedBore, "Bore of the hose to the rail.", QuantityShapes.SmallLength),
        Input(BriefInput.HoseLength, "Length of the hose to the rail, and of that back.", QuantityShapes.Length),
        Input(BriefInput.ReturnBore, "Bore of the hose back to the tank.", QuantityShapes.SmallLength),
        Input(
            BriefInput.RegulatorSlope,
            "By how much the regulator's pressure rises for each 100 L/h that it passes.",
            QuantityShapes.PressureDifference
        ),
        Input(BriefInput.FuelTemperature, "Temperature of the fuel.", QuantityShapes.Temperature),
        Input(BriefInput.ChargeTemperature, "Temperature of the charge.", QuantityShapes.Temperature),
    ];

    internal static ObjectShape<SystemBrief> Shape { get; } =
        new(
            "system-brief",
            "The least that must be known of a car's fuel system; what is left out of the rest is estimated.",
            [
                new WordProperty<SystemBrief>("document", "What the document is.", "system brief"),
                new WordProperty<SystemBrief>("version", "The version of its form.", "1"),
                Name,
                Fuels,
                Cylinders,
                Displacement,
                InTank,
                Rating,
                PumpVoltage,
                PumpPoints,
                Set,
                Reference,
                Points,
                .. Inputs.Select(i => i.Property),
            ],
            f =>
            {
                _ = f.Of(Fuels);
                SystemBrief least = new(
                    f.Of(Name),
                    f.Of(Cylinders),
                    f.Of(Displacement),
                    f.Of(InTank),
                    f.Of(Rating),
                    f.Of(PumpVoltage),
                    f.Of(PumpPoints),
                    f.Of(Set),
                    f.Of(Reference),
                    f.Of(Points)
                );
                return Inputs.Aggregate(least, (brief, input) => input.Apply(f, brief));
            }
        );

    /// <summary>The fuels that the library does not know by name.</summary>
    private static ImmutableArray<Fuel> Described(SystemBrief brief) =>
        [.. new[] { brief.Fuel, brief.Rating.Fluid }.Where(f => !FuelShape.IsStandard(f)).Distinct()];

    private static Further Input<T>(BriefInput input, string description, Shape<T> shape)
        where T : struct, IQuantity
    {
        string word = input.ToString();
        ValueProperty<SystemBrief, T> property = new(
            char.ToLowerInvariant(word[0]) + word[1..],
            description,
            shape,
            b => (T)b.Known(input)!,
            b => b.Known(input) is not null,
            default
        );
        return new(property, (f, brief) => f.Has(property) ? brief.WithKnown(input, f.Of(property)) : brief);
    }

    /// <summary>An input that may be left out.</summary>
    private sealed class Further(
        Property<SystemBrief> property,
        Func<Fields<SystemBrief>, SystemBrief, SystemBrief> apply
    )
    {
        internal Property<SystemBrief> Property { get; } = property;

        internal Func<Fields<SystemBrief>, SystemBrief, SystemBrief> Apply { get; } = apply;
    }
}
