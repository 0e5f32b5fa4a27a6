using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A pump whose rise is shutoff - factor q^exponent.</summary>
internal sealed class PumpPowerSettings(double shutoff, double factor, double exponent) : PumpSettings
{
    internal readonly double Shutoff = shutoff;
    internal readonly double Factor = factor;
    internal readonly double Exponent = exponent;

    /// <summary>The flow at half the shutoff, m³/s.</summary>
    internal readonly double Half = Math.Pow(shutoff / 2 / factor, 1 / exponent);

    /// <summary>Shutoff, factor, and the flow at half the shutoff.</summary>
    internal override int SettingCount => 3;

    internal override void Write(Span<double> settings) =>
        (settings[0], settings[1], settings[2]) = (Shutoff, Factor, Half);

    internal override string? WhyUnlike(LawSettings network) =>
        network is not PumpPowerSettings old ? "be a table"
        : !Exponent.Equals(old.Exponent) ? "have the exponent"
        : null;

    /// <inheritdoc />
    internal override PumpSettings Set(int inParallel, int inSeries) =>
        new PumpPowerSettings(inSeries * Shutoff, inSeries * Factor / Math.Pow(inParallel, Exponent), Exponent);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, PumpPowerLaw<T>>(ends, parts);
}
