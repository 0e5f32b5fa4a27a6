namespace FuelMath;

/// <summary>
/// A regulator. Bypass: holds its upstream side at setting + reference (1 + influence) - influence x downstream + slope q.
/// Reducing: holds its downstream side at setting + reference (1 + influence) - influence x upstream - slope q.
/// </summary>
internal sealed class RegulatorSettings : LawSettings
{
    internal bool Bypass { get; init; }

    /// <summary>Pa over the reference, at no flow and with the return line at ambient pressure.</summary>
    internal double Setting { get; init; }

    /// <summary>Pa gauge.</summary>
    internal double Reference { get; init; }

    /// <summary>Pa s/m³.</summary>
    internal double Slope { get; init; }

    /// <summary>Seat area over diaphragm area less seat area.</summary>
    internal double Influence { get; init; }

    /// <summary>The fully open restriction over density, 1/m⁴.</summary>
    internal double SquarePerDensity { get; init; }

    internal override bool IsOneWay => true;

    internal override bool Joins => false;

    internal override bool IsOpenedFromBehind => Influence > 0;

    /// <summary>The reference.</summary>
    internal override int SettingCount => 1;

    internal override SettingKind Settable => SettingKind.Reference;

    internal override void Write(Span<double> settings) => settings[0] = Reference;

    internal override int FlatlyHeld(int from, int to) =>
        Slope != 0 || Influence != 0 ? -1
        : Bypass ? from
        : to;

    internal override object Law => (GetType(), Bypass);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        Bypass
            ? new LinkGroup<T, RegulatorLaw<T, UpstreamSide>>(ends, parts)
            : new LinkGroup<T, RegulatorLaw<T, DownstreamSide>>(ends, parts);
}
