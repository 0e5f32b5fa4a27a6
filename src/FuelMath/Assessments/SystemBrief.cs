using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The minimum that must be known of a car's fuel system for a first answer; the other inputs are estimated and listed.
/// </summary>
/// <remarks>
/// <para>
/// A four-stroke with one injector for each cylinder that sprays into the manifold, a pump in the tank, a filter, a
/// rail, a bypass regulator behind it and a hose back. The controller is not corrected by a sensor. It believes the
/// rating, the set pressure and the estimated dead time, so that a deviation from these changes lambda. Other systems
/// need a full <see cref="FuelSystem"/>.
/// </para>
/// <para>
/// Each <see cref="SystemBrief.Input"/> that is not given is an <see cref="SystemBrief.Estimate"/>. Assumed without a range: dead
/// time over voltage; the pump at other voltages (affinity laws) and linear beyond its points (down to no pressure, up
/// to a quarter above the last), its curve measured in the fuel; hoses of 1.5 µm roughness with a loss coefficient of
/// two; two meters of 2.5 mm² in each circuit and back; the areas of the regulator; coils of 12 Ω; air at sea level.
/// <see cref="Taken"/> lists these assumptions.
/// </para>
/// <para>A first answer is no clearance to run.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/AssessmentExamples.cs" region="Brief" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public sealed partial class SystemBrief
{
    private readonly ImmutableDictionary<Input, IQuantity> known;

    /// <summary>Creates a brief.</summary>
    /// <param name="name">The name of the system; not blank.</param>
    /// <param name="engine">The size of the engine.</param>
    /// <param name="fuel">The fuel in the tank, which the controller knows.</param>
    /// <param name="rating">The rating of an injector.</param>
    /// <param name="pump">What is known of the pump.</param>
    /// <param name="regulator">What the regulator holds.</param>
    /// <param name="points">One or more operating points with different names. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is blank, or points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is out of its range.</exception>
    /// <exception cref="OutsideTableException">20 °C is outside the fuel's data.</exception>
    /// <exception cref="UnknownPropertyException">The density or the viscosity of the fuel is not known.</exception>
    public SystemBrief(
        string name,
        EngineSize engine,
        Fuel fuel,
        FlowRating rating,
        PumpData pump,
        RegulatorSetting regulator,
        IEnumerable<Point> points
    )
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentNullException.ThrowIfNull(regulator);
        ArgumentNullException.ThrowIfNull(points);
        Name = Guard.Name(name);
        (Engine, Fuel, Rating, Pump, Regulator) = (engine, fuel, rating, pump, regulator);
        Points = [.. Lists.NoNulls(points)];
        Guard.AtLeast(1, Points.Length, "operating points", nameof(points), part: name);
        Guard.DifferentNames(Points.Select(p => p.Name), nameof(points), part: name);
        known = ImmutableDictionary<Input, IQuantity>.Empty;
        System = With(null, null).System;
    }

    private SystemBrief(SystemBrief other, ImmutableDictionary<Input, IQuantity> known)
    {
        (Name, Engine, Fuel, Rating) = (other.Name, other.Engine, other.Fuel, other.Rating);
        (Pump, Regulator) = (other.Pump, other.Regulator);
        (Points, this.known) = (other.Points, known);
        System = With(null, null).System;
    }

    /// <summary>The name of the system.</summary>
    public string Name { get; }

    /// <summary>The size of the engine.</summary>
    public EngineSize Engine { get; }

    /// <summary>The fuel in the tank.</summary>
    public Fuel Fuel { get; }

    /// <summary>The rating of an injector.</summary>
    public FlowRating Rating { get; }

    /// <summary>What is known of the pump.</summary>
    public PumpData Pump { get; }

    /// <summary>What the regulator holds.</summary>
    public RegulatorSetting Regulator { get; }

    /// <summary>The operating points.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>All estimates with a range, in the order of <see cref="Input"/>.</summary>
    public ImmutableArray<Estimate> Estimates => [.. Estimate.All.Where(e => !known.ContainsKey(e.Input))];

    /// <summary>The assumptions without a range, one sentence each.</summary>
    public static ImmutableArray<string> Taken { get; } =
    [
        "Dead time at 6, 8, 10, 12 and 16 V as 320, 200, 145, 117 and 88 % of that at 14 V, alike at every pressure.",
        "The pump at another voltage by the affinity laws, and straight on beyond its points: to no pressure, and to a quarter above the last.",
        "The pump's points as measured in the fuel at 20 °C, and its current as the same at every pressure.",
        "Hoses of 1.5 µm roughness with a loss coefficient of two; 2 m of 2.5 mm² at 40 °C in each circuit, and back.",
        "A regulator of 700 mm² diaphragm and 20 mm² seat that loses 30 kPa fully open at 250 L/h; its set pressure at 60 L/h.",
        "Coils of 12 Ω, 0.4 ms to close, 0.3 ms as the shortest pulse that repeats; one pulse a cycle; ambient air at 101.325 kPa.",
    ];

    /// <summary>The system, with every estimate at its value.</summary>
    public FuelSystem System { get; }

    /// <summary>The operating points, with every estimate at its value; the controller is not corrected.</summary>
    public ImmutableArray<OperatingPoint> OperatingPoints => With(null, null).Points;

    /// <summary>The given value of an input; null where it is estimated.</summary>
    /// <param name="input">The input.</param>
    /// <returns>The value.</returns>
    public IQuantity? Known(Input input) => known.GetValueOrDefault(input);

    /// <summary>The same brief with an input given in place of its estimate.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">Its value, greater than zero, of the quantity that <see cref="Input"/> states.</param>
    /// <returns>A new brief.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="value"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="value"/> is another kind of quantity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="value"/> is not greater than zero, or outside the range of a part.
    /// </exception>
    public SystemBrief WithKnown(Input input, IQuantity value)
    {
        _ = Estimate.Number(input, value, nameof(value));
        return new(this, known.SetItem(input, value));
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>The system and its points with one estimate at another value.</summary>
    internal (FuelSystem System, ImmutableArray<OperatingPoint> Points) With(Input? input, IQuantity? value)
    {
        double Number(Input of) =>
            Estimate.Number(
                of,
                of == input ? value! : known.GetValueOrDefault(of) ?? Estimate.All[(int)of].Value,
                nameof(value)
            );
        var parts = new BriefParts(this, Number);
        return (parts.System(), [.. Points.Select(parts.Point)]);
    }
}
