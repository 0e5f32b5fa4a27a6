namespace FuelMath;

/// <summary>A part of a blend whose vapor pressure is known: ethanol, or a gasoline taken as one component.</summary>
internal readonly struct VaporPart
{
    private const double GramsOfGasoline = 92;

    private VaporPart(bool isEthanol, double molarMass, TemperatureLaw pressure, double mass)
    {
        IsEthanol = isEthanol;
        MolarMass = molarMass;
        Pressure = pressure;
        Mass = mass;
    }

    /// <summary>Ethanol by itself.</summary>
    internal static VaporPart Ethanol { get; } =
        new(true, PureComponents.Ethanol.MolarMass, PureComponents.Ethanol.VaporPressure().Law, 1);

    /// <summary>Whether it is ethanol; otherwise it is gasoline.</summary>
    internal bool IsEthanol { get; }

    /// <summary>In kg/mol.</summary>
    internal double MolarMass { get; }

    /// <summary>Its vapor pressure by itself.</summary>
    internal TemperatureLaw Pressure { get; }

    /// <summary>Its mass fraction among the volatile parts.</summary>
    internal double Mass { get; }

    /// <summary>In mol, per kilogram of the volatile parts.</summary>
    internal double Amount => Mass / MolarMass;

    /// <summary>A gasoline, 92 g/mol. Source: [EPA-AP42] table 7.1-2, liquid molar mass.</summary>
    internal static VaporPart OfGasoline(LiquidVaporPressure pressure) =>
        new(false, GramsOfGasoline / 1000, pressure.Law, 1);

    /// <summary>The same with a share of its mass.</summary>
    internal VaporPart Times(double share) => new(IsEthanol, MolarMass, Pressure, Mass * share);
}
