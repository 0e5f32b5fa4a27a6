using UnitsNet;

namespace FuelMath;

/// <summary>A part whose law the caller wrote.</summary>
/// <typeparam name="TLaw">The law: a readonly struct.</typeparam>
/// <remarks>
/// <para>
/// It lets flow through both ways; where nothing may flow back, put a check valve behind it. When it is made, the law
/// is tried at flows from a hundredth to a hundred times the usual one, both ways, in thin and in thick fluids. Where
/// it falls at a flow that a solution finds, the solution is refused with the name of the line.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/CustomPartExamples.cs" region="CustomPart" />
/// </example>
public sealed class CustomPart<TLaw> : FlowPart
    where TLaw : struct, IFlowLaw
{
    private readonly CustomSettings<TLaw> law;

    /// <summary>Makes a part of a law.</summary>
    /// <param name="name">Its name in messages; not blank.</param>
    /// <param name="law">The law.</param>
    /// <param name="usualFlow">A flow as it usually is; greater than zero. Solving starts there; the answer does not depend on it.</param>
    /// <exception cref="ArgumentException">
    /// The name is blank, or the law is not zero at no flow, does not rise with flow, is not finite, or says something else
    /// where several numbers are read at once.
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

    /// <summary>A flow as it usually is.</summary>
    public VolumeFlow UsualFlow { get; }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <inheritdoc />
    internal override LawSettings Law => law;
}
