using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Pulsed injectors with a commanded mean flow as long as the pressure suffices: q = min(commanded, C sqrt(dp)), and
/// nothing backwards.
/// </summary>
/// <remarks>
/// Its line leads to a node of fixed pressure, whose height does not matter. A fuel system creates the draws of its
/// injectors itself. Source: [White-2003] section 6.12.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class InjectorDraw : FlowPart
{
    private readonly CappedSettings law;

    /// <summary>Describes a draw; its command is a condition of each solve.</summary>
    /// <param name="flow">The flow of all of them held open; greater than zero.</param>
    /// <param name="differentialPressure">The difference at that flow; greater than zero.</param>
    /// <param name="density">Density of the fluid of that flow; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public InjectorDraw(VolumeFlow flow, Pressure differentialPressure, Density density)
        : this(flow, differentialPressure, density, null) { }

    private InjectorDraw(VolumeFlow flow, Pressure differentialPressure, Density density, VolumeFlow? commanded)
    {
        double asked = commanded is { } given ? Guard.NotNegative(given, given.InSi(), nameof(commanded)) : 0;
        law = new CappedSettings(PartMath.Coefficient(flow, differentialPressure), asked)
        {
            MeasuredDensity = Guard.Positive(density, density.InSi()),
        };
        (Flow, DifferentialPressure, Density, CommandedFlow) = (flow, differentialPressure, density, commanded);
    }

    /// <summary>The flow of all of them held open.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>The difference at that flow.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Density of the fluid of that flow.</summary>
    public Density Density { get; }

    /// <summary>Its fixed command; null where the conditions give it.</summary>
    public VolumeFlow? CommandedFlow { get; }

    /// <summary>The same draw with a command of its own.</summary>
    /// <param name="commanded">The commanded mean flow; zero closes it.</param>
    /// <returns>The draw.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow is negative or not finite.</exception>
    public InjectorDraw WithCommandedFlow(VolumeFlow commanded) => new(Flow, DifferentialPressure, Density, commanded);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Flow} at {DifferentialPressure}");

    /// <inheritdoc />
    internal override LawSettings Law => law;

    /// <inheritdoc />
    internal override PartNeeds Needs => CommandedFlow is null ? PartNeeds.CommandedFlow : PartNeeds.None;

    /// <inheritdoc />
    internal override PartReading? Reading() => CommandedFlow is null ? new CommandReading(law.Coefficient) : null;

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override ImmutableArray<string> KindInSystem => ["InjectorStage"];

    private sealed class CommandReading(double coefficient) : PartReading
    {
        /// <inheritdoc />
        internal override void Write(in PointInputs at, Span<double> settings) =>
            (settings[0], settings[1]) = (coefficient, at.DrawCommanded);
    }
}
