using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The limits of an assessment, or that common practice gives them.</summary>
internal static class LimitsShape
{
    private static readonly ValueProperty<Limits, Ratio> DutyCycle = Share(
        "dutyCycle",
        "Largest duty cycle of an injector.",
        l => Standing(l).DutyCycle
    );

    private static readonly ValueProperty<Limits, Ratio> PumpReserve = Share(
        "pumpReserve",
        "Least bypassed flow as a share of the flow drawn.",
        l => Standing(l).PumpReserve
    );

    private static readonly ValueProperty<Limits, Ratio> PressureDeviation = Share(
        "pressureDeviation",
        "Largest deviation of injector differential pressure from the controller's belief.",
        l => Standing(l).PressureDeviation
    );

    private static readonly ValueProperty<Limits, Ratio> MixtureDeviation = Share(
        "mixtureDeviation",
        "Largest deviation of a chamber's lambda to the lean side.",
        l => Standing(l).MixtureDeviation
    );

    private static readonly ValueProperty<Limits, ElectricPotential> VoltageDrop = new(
        "voltageDrop",
        "Largest voltage drop between source and pump or injector.",
        QuantityShapes.Voltage,
        l => Standing(l).VoltageDrop
    );

    private static readonly ValueProperty<Limits, Speed> FeedVelocity = new(
        "feedVelocity",
        "Largest mean velocity on the pressure side.",
        QuantityShapes.Speed,
        l => Standing(l).FeedVelocity
    );

    private static readonly ValueProperty<Limits, Speed> SuctionVelocity = new(
        "suctionVelocity",
        "Largest mean velocity ahead of a pump.",
        QuantityShapes.Speed,
        l => Standing(l).SuctionVelocity
    );

    private static readonly ValueProperty<Limits, Pressure> VaporMargin = new(
        "vaporMargin",
        "Least difference between absolute pressure and vapor pressure.",
        QuantityShapes.PressureDifference,
        l => Standing(l).VaporMarginDifference
    );

    private static readonly ValueProperty<Limits, DataSource> Source = SourceShape.Of<Limits>(l => l.Source);

    private static readonly ValueProperty<OwnLimit, string> Reason = new(
        "reason",
        "Why.",
        TextShape.Note,
        o => o.Reason
    );

    private static readonly ImmutableArray<OwnValue> Values =
    [
        Value(LimitKind.DutyCycle, QuantityShapes.Ratio),
        Value(LimitKind.PumpReserve, QuantityShapes.Ratio),
        Value(LimitKind.PressureDeviation, QuantityShapes.Ratio),
        Value(LimitKind.MixtureDeviation, QuantityShapes.Ratio),
        Value(LimitKind.VoltageDrop, QuantityShapes.Voltage),
        Value(LimitKind.FeedVelocity, QuantityShapes.Speed),
        Value(LimitKind.SuctionVelocity, QuantityShapes.Speed),
        Value(LimitKind.VaporMargin, QuantityShapes.PressureDifference),
    ];

    private static readonly ListShape<OwnLimit> OwnList = new(
        new ObjectShape<OwnLimit>(
            "own-limit",
            "One limit of the owner's, and why.",
            [.. Values.Select(v => v.Property), Reason],
            f => Values.First(v => f.Has(v.Property)).Make(f, f.Of(Reason))
        )
        {
            ExactlyOne = [.. Values.Select(v => v.Property.Name)],
        },
        1,
        8
    );

    private static readonly ValueProperty<Limits, ImmutableArray<OwnLimit>> Own = new(
        "own",
        "What the owner set in place of others, each with its reason.",
        OwnList,
        l => l.Own,
        l => l.Own.Length > 0,
        []
    );

    private static readonly ObjectShape<Limits> InFull = new(
        "limits",
        "What findings are held against.",
        [
            DutyCycle,
            PumpReserve,
            PressureDeviation,
            MixtureDeviation,
            VoltageDrop,
            FeedVelocity,
            SuctionVelocity,
            VaporMargin,
            Source,
            Own,
        ],
        f =>
            With(
                new(
                    f.Of(DutyCycle),
                    f.Of(PumpReserve),
                    f.Of(PressureDeviation),
                    f.Of(MixtureDeviation),
                    f.Of(VoltageDrop),
                    f.Of(FeedVelocity),
                    f.Of(SuctionVelocity),
                    f.Of(VaporMargin),
                    f.Of(Source)
                ),
                f.Of(Own)
            )
    );

    private static readonly ValueProperty<Limits, ImmutableArray<OwnLimit>> OnlyOwn = new(
        "own",
        "What the owner set in place of common practice, each with its reason.",
        OwnList,
        l => l.Own
    );

    private static readonly ObjectShape<Limits> OverPractice = new(
        "limits-of-owner",
        "Limits of common practice, some of them with the owner's in their place.",
        [OnlyOwn],
        f => With(Limits.CommonPractice, f.Of(OnlyOwn))
    );

    private static readonly ChoiceShape<Limits> Words = new(("common practice", Limits.CommonPractice));

    internal static Shape<Limits> Shape { get; } = new Forms();

    private static Limits With(Limits limits, ImmutableArray<OwnLimit> own) =>
        own.Aggregate(limits, (now, next) => now.With(next));

    private static Limits Standing(Limits limits) => limits.Standing ?? limits;

    private static OwnValue Value<T>(LimitKind kind, Shape<T> shape)
        where T : struct, IQuantity
    {
        string word = kind.ToString();
        ValueProperty<OwnLimit, T> property = new(
            char.ToLowerInvariant(word[0]) + word[1..],
            "The limit of that name.",
            shape,
            o => (T)o.Value,
            o => o.Kind == kind,
            default
        );
        return new(property, (f, reason) => new(kind, f.Of(property), reason));
    }

    /// <summary>One of the limits that an owner may set.</summary>
    private sealed class OwnValue(Property<OwnLimit> property, Func<Fields<OwnLimit>, string, OwnLimit> make)
    {
        internal Property<OwnLimit> Property { get; } = property;

        internal Func<Fields<OwnLimit>, string, OwnLimit> Make { get; } = make;
    }

    /// <summary>A word, all limits in full, or common practice with some of the owner's.</summary>
    private sealed class Forms : Shape<Limits>
    {
        internal override string Wanted =>
            $"{Words.Wanted}, or {InFull.Wanted}, or an object with \"{OnlyOwn.Name}\" limits alone";

        internal override Limits Read(JsonItem item) =>
            item.Kind == JsonItemKind.Text ? Words.Find(item.Text) ?? throw item.Refuse($"Must be {Wanted}.")
            : item.Kind == JsonItemKind.Object && item.Items.All(i => i.Name == OnlyOwn.Name) && item.Items.Any()
                ? OverPractice.Read(item)
            : InFull.Read(item);

        internal override JsonText Write(Limits value) =>
            Words.Has(value) ? Words.Write(value)
            : ReferenceEquals(Standing(value), Limits.CommonPractice) ? OverPractice.Write(value)
            : InFull.Write(value);

        internal override JsonText Schema(SchemaDefinitions definitions) =>
            JsonText.Object(
                (
                    "oneOf",
                    JsonText.List([
                        Words.Schema(definitions),
                        InFull.Schema(definitions),
                        OverPractice.Schema(definitions),
                    ])
                )
            );
    }

    private static ValueProperty<Limits, Ratio> Share(string name, string description, Func<Limits, Ratio> get) =>
        new(name, description, QuantityShapes.Ratio, get);
}
