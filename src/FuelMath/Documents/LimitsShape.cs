using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The limits of an assessment, or those of common practice.</summary>
internal static class LimitsShape
{
    private const string Own = "own";

    private static readonly ListShape<Limits.OwnLimit> OwnList = new ObjectShape<Limits.OwnLimit>(o =>
    {
        o.Is("own-limit", "One limit of the owner's, and why.");
        List<(
            Property<Limits.OwnLimit> Property,
            Func<Fields<Limits.OwnLimit>, string, Limits.OwnLimit> Make
        )> limits = [];
        Limit(Limits.Kind.DutyCycle, QuantityShapes.Ratio.Positive);
        Limit(Limits.Kind.PumpReserve, QuantityShapes.Ratio.NotNegative);
        Limit(Limits.Kind.PressureDeviation, QuantityShapes.Ratio.Positive);
        Limit(Limits.Kind.MixtureDeviation, QuantityShapes.Ratio.Positive);
        Limit(Limits.Kind.VoltageDrop, QuantityShapes.Voltage.Positive);
        Limit(Limits.Kind.FeedVelocity, QuantityShapes.Speed.Positive);
        Limit(Limits.Kind.SuctionVelocity, QuantityShapes.Speed.Positive);
        Limit(Limits.Kind.VaporMargin, QuantityShapes.PressureDifference.NotNegative);
        Limit(Limits.Kind.LowestCorrection, QuantityShapes.Ratio.Positive);
        Limit(Limits.Kind.HighestCorrection, QuantityShapes.Ratio.Positive);
        var reason = o.Required("reason", TextShape.Note, l => l.Reason).Says("Why.");
        o.ExactlyOne([.. limits.Select(l => l.Property)]);
        return f => limits.First(l => f.Has(l.Property)).Make(f, f.Of(reason));

        void Limit<T>(Limits.Kind kind, Shape<T> shape)
            where T : struct, IQuantity
        {
            string word = kind.ToString();
            var limit = o.Optional(
                    char.ToLowerInvariant(word[0]) + word[1..],
                    shape,
                    l => l.Kind == kind ? (T)l.Value : null
                )
                .Says("The limit of that name.");
            limits.Add((limit, (f, why) => new(kind, f.Of(limit)!.Value, why)));
        }
    }).List(1, Enum.GetValues<Limits.Kind>().Length);

    private static readonly ObjectShape<Limits> InFull = new(o =>
    {
        o.Is("limits", "What findings are held against.");
        var dutyCycle = o.Required("dutyCycle", QuantityShapes.Ratio.Positive, l => Standing(l).DutyCycle)
            .Says("Largest duty cycle of an injector.");
        var pumpReserve = o.Required("pumpReserve", QuantityShapes.Ratio.NotNegative, l => Standing(l).PumpReserve)
            .Says("Least bypassed flow as a share of the flow drawn.");
        var pressure = o.Required(
                "pressureDeviation",
                QuantityShapes.Ratio.Positive,
                l => Standing(l).PressureDeviation
            )
            .Says("Largest deviation of injector differential pressure from the controller's belief.");
        var mixture = o.Required("mixtureDeviation", QuantityShapes.Ratio.Positive, l => Standing(l).MixtureDeviation)
            .Says("Largest deviation of a chamber's lambda to the lean side.");
        var voltageDrop = o.Required("voltageDrop", QuantityShapes.Voltage.Positive, l => Standing(l).VoltageDrop)
            .Says("Largest voltage drop between source and pump or injector.");
        var feedVelocity = o.Required("feedVelocity", QuantityShapes.Speed.Positive, l => Standing(l).FeedVelocity)
            .Says("Largest mean velocity on the pressure side.");
        var suctionVelocity = o.Required(
                "suctionVelocity",
                QuantityShapes.Speed.Positive,
                l => Standing(l).SuctionVelocity
            )
            .Says("Largest mean velocity ahead of a pump.");
        var vaporMargin = o.Required(
                "vaporMargin",
                QuantityShapes.PressureDifference.NotNegative,
                l => Standing(l).VaporMarginDifference
            )
            .Says("Least difference between absolute pressure and vapor pressure.");
        var lowest = o.Required("lowestCorrection", QuantityShapes.Ratio.Positive, l => Standing(l).LowestCorrection)
            .Says("Least factor on the fuel that the controller's correction applies, up to 100 %.");
        var highest = o.Required("highestCorrection", QuantityShapes.Ratio.Positive, l => Standing(l).HighestCorrection)
            .Says("Greatest factor on the fuel that the controller's correction applies, 100 % or more.");
        var source = o.Source(l => l.Source);
        var own = o.Optional(Own, OwnList, l => l.Own)
            .Says("What the owner set in place of others, each with its reason.");
        return f =>
            With(
                new(
                    f.Of(dutyCycle),
                    f.Of(pumpReserve),
                    f.Of(pressure),
                    f.Of(mixture),
                    f.Of(voltageDrop),
                    f.Of(feedVelocity),
                    f.Of(suctionVelocity),
                    f.Of(vaporMargin),
                    f.Of(lowest),
                    f.Of(highest),
                    f.Of(source)
                ),
                f.Of(own)
            );
    });

    private static readonly ObjectShape<Limits> OverPractice = new(o =>
    {
        o.Is("limits-of-owner", "Limits of common practice, some of them with the owner's in their place.");
        var own = o.Required(Own, OwnList, l => l.Own)
            .Says("What the owner set in place of common practice, each with its reason.");
        return f => With(Limits.CommonPractice, f.Of(own));
    });

    private static readonly ChoiceShape<Limits> Words = new(("common practice", Limits.CommonPractice));

    internal static Shape<Limits> Shape { get; } = new Forms();

    private static Limits With(Limits limits, ImmutableArray<Limits.OwnLimit> own) =>
        own.Aggregate(limits, (now, next) => now.With(next));

    private static Limits Standing(Limits limits) => limits.Standing ?? limits;

    /// <summary>A word, all limits in full, or common practice with some of the owner's.</summary>
    private sealed class Forms : Shape<Limits>
    {
        internal override string Wanted =>
            $"{Words.Wanted}, or {InFull.Wanted}, or an object with \"{Own}\" limits alone";

        internal override Limits Read(JsonItem item) =>
            item.Kind == JsonItemKind.Text ? Words.Find(item.Text) ?? throw item.RefuseKind(Wanted)
            : item.Kind == JsonItemKind.Object && item.Items.All(i => i.Name == Own) && item.Items.Any()
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
}
