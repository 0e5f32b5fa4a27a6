using UnitsNet;

namespace FuelMath;

/// <summary>A part with a caller's own law.</summary>
/// <typeparam name="TLaw">The law: a readonly struct.</typeparam>
/// <remarks>
/// <para>
/// Flow is possible in both directions; add a check valve where nothing may flow back. The constructor checks the law
/// at flows from a hundredth to a hundred times the usual one, in both directions, with fluids of low and high
/// viscosity. If the law falls at the flow of a solution, the solution is refused with the name of the line.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/CustomPartExamples.cs" region="CustomPart" />
/// </example>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class CustomPart<TLaw> : FlowPart
    where TLaw : struct, IFlowLaw
{
    private readonly CustomSettings<TLaw> law;

    /// <summary>Creates a part from a law.</summary>
    /// <param name="name">Its name in messages; not blank.</param>
    /// <param name="law">The law.</param>
    /// <param name="usualFlow">
    /// A typical flow; greater than zero. The solution starts there and does not depend on it.
    /// </param>
    /// <exception cref="ArgumentException">
    /// The name is blank, or the law is not zero at no flow, does not rise with flow, is not finite, or gives other
    /// results for several numbers at once.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The usual flow is not greater than zero.</exception>
    public CustomPart(string name, TLaw law, VolumeFlow usualFlow)
    {
        Name = Guard.Name(name);
        double usual = Guard.Positive(usualFlow, usualFlow.InSi(), part: Name);
        CustomLawChecks.All(Name, law, usual);
        (UsualFlow, this.law) = (usualFlow, new(law, usual));
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>A typical flow.</summary>
    public VolumeFlow UsualFlow { get; }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <inheritdoc />
    internal override LawSettings Law => law;
}
