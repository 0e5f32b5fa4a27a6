using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// The first answer to a brief: the verdict with every estimate at its value, and which estimate matters most.
/// </summary>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/AssessmentExamples.cs" region="Brief" />
/// </example>
/// <seealso href="../guide/documents.html">Documents</seealso>
public sealed partial class BriefAssessment
{
    /// <summary>Assesses a brief: one solve for each point, and one for each end of each estimate's range.</summary>
    /// <param name="brief">The brief.</param>
    /// <exception cref="ArgumentNullException"><paramref name="brief"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// At an end of an estimate's range its parts contradict each other, such as a regulator whose pressure would be below its
    /// reference at no flow.
    /// </exception>
    public BriefAssessment(SystemBrief brief)
    {
        ArgumentNullException.ThrowIfNull(brief);
        Brief = brief;
        Assessment = new(brief.System, brief.OperatingPoints);
        Influences = [.. brief.Estimates.Select(Influence).OrderByDescending(i => i.Weight)];
    }

    /// <summary>The brief.</summary>
    public SystemBrief Brief { get; }

    /// <summary>The assessment with every estimate at its value.</summary>
    public SystemAssessment Assessment { get; }

    /// <summary>How much each estimate changes the output; the most influential comes first.</summary>
    /// <remarks>
    /// Ordered by the movement of an end towards or past a limit, as a fraction of the distance to it: from one on, the
    /// estimate alone can reverse a judgment. An end without an answer comes first.
    /// </remarks>
    public ImmutableArray<EstimateInfluence> Influences { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Brief}: {Assessment}");

    private EstimateInfluence Influence(SystemBrief.Estimate estimate)
    {
        (SystemAssessment low, SystemAssessment high) = (At(estimate.Least), At(estimate.Greatest));
        var movements = ImmutableArray.CreateBuilder<OutputMovement>();
        foreach (Output output in Enum.GetValues<Output>())
        {
            for (int p = 0; p < Assessment.Points.Length; p++)
            {
                if (Value(Assessment.Points[p], output) is { } value)
                {
                    movements.Add(
                        new(
                            output,
                            Assessment.Points[p].Point.Name,
                            value,
                            Value(low.Points[p], output),
                            Value(high.Points[p], output),
                            Limit(output)
                        )
                    );
                }
            }
        }

        return new(estimate, movements.ToImmutable(), low.Verdict, high.Verdict, Assessment.Verdict.Kind);

        SystemAssessment At(UnitsNet.IQuantity end)
        {
            (FuelSystem system, ImmutableArray<OperatingPoint> points) = Brief.With(estimate.Input, end);
            return new(system, points);
        }
    }

    private double Limit(Output output) =>
        output switch
        {
            Output.DutyCycle => Brief.System.Limits.DutyCycle.InSi(),
            Output.LeanDeviation => Brief.System.Limits.MixtureDeviation.InSi(),
            _ => Brief.System.Limits.PumpReserve.InSi(),
        };

    private static double? Value(SystemAssessment.PointAssessment point, Output output)
    {
        if (point.Of(SystemAssessment.StateBasis.AsDescribed)?.State is not { } state)
        {
            return null;
        }

        double drawn = state.Injectors.Sum(i => i.MeanFlow.InSi());
        return output switch
        {
            Output.DutyCycle => state.Stages.Max(s => s.DutyCycle.InSi()),
            Output.LeanDeviation => state.Chambers.All(c => c.Lambda is not null) && state.TargetLambda is { } target
                ? (state.Chambers.Max(c => c.Lambda!.Value.Si) / target.Si) - 1
                : null,
            _ => state.PumpReserve is { } reserve && drawn > 0 ? reserve.InSi() / drawn : null,
        };
    }
}
