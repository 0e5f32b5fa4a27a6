using System.Collections.Frozen;

namespace FuelMath;

/// <summary>Units as people write them, kind by kind: each spelling with its possible units.</summary>
internal static class LenientUnits
{
    private static readonly Lazy<FrozenDictionary<UnitKind, LenientSpellings>> ByKind = new(() =>
        UnitTable.All.ToFrozenDictionary(k => k, k => new LenientSpellings([.. Of(k)]))
    );

    /// <summary>The spellings of a kind; for one that is not in the table, those of its units.</summary>
    internal static LenientSpellings For(UnitKind kind) =>
        ByKind.Value.TryGetValue(kind, out LenientSpellings? known) ? known : new([.. Strict(kind)]);

    private static IEnumerable<(string Spelling, Unit Unit)> Of(UnitKind kind) =>
        Strict(kind)
            .Concat(
                kind.Name switch
                {
                    "pressure difference" => LenientUnitLists.Pressure("", " d", "d", " differential", " diff"),
                    "gauge pressure" => LenientUnitLists
                        .Pressure(" gauge", " g", "g", " gage", " gauge")
                        .Concat(LenientUnitLists.Vacuum()),
                    "absolute pressure" => LenientUnitLists.Pressure(" absolute", " a", "a", " abs", " absolute"),
                    "volume flow" => LenientUnitLists.VolumeFlow(),
                    "mass flow" => LenientUnitLists.MassFlow(),
                    "volume" => LenientUnitLists.Volume,
                    "density" => LenientUnitLists.Density(),
                    "duration" => LenientUnitLists.Time,
                    "mass" => LenientUnitLists.Mass,
                    _ => LenientUnitLists.Others(kind),
                }
            );

    private static IEnumerable<(string Spelling, Unit Unit)> Strict(UnitKind kind) =>
        kind.Units.SelectMany(u => u.Spellings.Select(s => (s, u)));
}
