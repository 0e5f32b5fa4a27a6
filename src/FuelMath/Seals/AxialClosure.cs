using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Joints;

/// <summary>Lengths along one axis that leave a gap, such as an injector between rail and port.</summary>
/// <remarks>
/// <para>
/// The gap is the sum of the opening lengths minus that of the filling ones: the play of an injector, and the travel of
/// its O-rings. Too little clamps the injector or keeps the rail from seating; too much lets a ring leave its land, or
/// the clip lose its hold. The stack is axial; whether the rings seal is a radial question, for <see cref="ORingFit"/>.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/SealExamples.cs" region="Stack" />
/// </example>
/// <seealso href="../guide/seals.html">Seals</seealso>
public sealed partial class AxialClosure
{
    private const int MostParts = 12;

    /// <summary>Creates a stack.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="parts">Its parts: 2 to 12, at least one opening and one filling.</param>
    /// <exception cref="ArgumentException">The name is blank or the parts do not make a stack.</exception>
    /// <exception cref="ArgumentNullException">The list or a part is null.</exception>
    public AxialClosure(string name, IEnumerable<Part> parts)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(parts);
        Parts = [.. parts];
        foreach (Part part in Parts)
        {
            ArgumentNullException.ThrowIfNull(part, nameof(parts));
        }

        if (Parts.Length > MostParts || !Parts.Any(p => p.Opens) || Parts.All(p => p.Opens))
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A stack must have at most {MostParts:most} parts, one or more that open and one or more that fill; {Parts.Count(p => p.Opens):open} open and {Parts.Count(p => !p.Opens):fill} fill.",
                nameof(parts)
            );
        }

        Gap = Spread
            .Of(lengths => lengths.Select((l, i) => Parts[i].Opens ? l : -l).Sum(), [.. Parts.Select(p => p.Length)])
            .ToLength();
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its parts, in the order given.</summary>
    public ImmutableArray<Part> Parts { get; }

    /// <summary>The gap; negative where the parts do not fit.</summary>
    public TolerancedLength.Band<Length> Gap { get; }

    /// <summary>Checks the gap against limits.</summary>
    /// <param name="least">The least allowed gap; finite.</param>
    /// <param name="greatest">The greatest allowed gap; more than the least.</param>
    /// <param name="source">Where the limits come from: the drawing, the clip, the land of the ring.</param>
    /// <returns>The findings; empty when the gap stays within the limits at its worst.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A limit is not finite, or the greatest is not more than the least.
    /// </exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ImmutableArray<Finding> Check(Length least, Length greatest, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        double low = Guard.Finite(least, least.InSi(), part: Name);
        double high = greatest.InSi();
        if (!(high > low) || !double.IsFinite(high))
        {
            throw Guard.OutOfRange(greatest, $"finite and more than {least:above}", part: Name);
        }

        var found = ImmutableArray.CreateBuilder<Finding>();
        string limit = $"{Spread.Millimeters(low)} to {Spread.Millimeters(high)}";
        Spread gap = Gap.Si;
        if (gap.WorstLeast < low)
        {
            Add(
                FindingCode.StackTooTight,
                gap.LikelyLeast < low,
                gap.WorstLeast < 0 ? "can be clamped: its parts are longer than the room" : "can have too little play",
                "A shorter adapter, or a spacer under the rail; never pull the rail down on an injector."
            );
        }

        if (gap.WorstGreatest > high)
        {
            Add(
                FindingCode.StackTooLoose,
                gap.LikelyGreatest > high,
                "can have too much play",
                "A longer adapter or a lower rail: an O-ring that leaves its land sprays fuel on the engine."
            );
        }

        return found.ToImmutable();

        void Add(FindingCode code, bool likely, string what, string action) =>
            found.Add(
                new(
                    code,
                    likely ? Severity.Danger : Severity.Warning,
                    Name,
                    $"Stack '{Name}' {what}",
                    Gap.ToString(),
                    limit,
                    source,
                    action
                )
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: gap {Gap}");
}
