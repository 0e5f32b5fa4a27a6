using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>One place of a meter's leads, and the expected reading.</summary>
public sealed class VoltageDropStep
{
    internal VoltageDropStep(string place, double ohms, double amperes)
    {
        Place = place;
        Ohms = ohms;
        Amperes = amperes;
    }

    /// <summary>Where the leads are.</summary>
    public string Place { get; }

    /// <summary>The resistance between them.</summary>
    public ElectricResistance Resistance => SiUnits.ElectricResistance(Ohms);

    /// <summary>The current that flows there; positive from the first lead to the second.</summary>
    public ElectricCurrent Current => SiUnits.ElectricCurrent(Amperes);

    /// <summary>The expected reading of the meter.</summary>
    public ElectricPotential ExpectedDrop => SiUnits.ElectricPotential(Ohms * Amperes);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Place}: {ExpectedDrop} at {Current}");

    internal double Ohms { get; }

    internal double Amperes { get; }
}
