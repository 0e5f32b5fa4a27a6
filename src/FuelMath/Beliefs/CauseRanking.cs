using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Internal;
using FuelMath.Scalars;
using FuelMath.Uncertainty;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath.Beliefs;

/// <summary>Fits every cause to observations, ranks them, and says which cannot be told apart.</summary>
internal sealed class CauseRanking
{
    /// <summary>Scatter alone leaves as much over in this share of cases: below it a cause does not explain the observations.</summary>
    private const double LeastProbability = 0.01;

    /// <summary>From this on the shapes of two causes are nearly the same. Source: [Belsley-1980] chapter 3.</summary>
    private const double NearlySame = 30;

    /// <summary>From this on they are the same but for rounding.</summary>
    private const double ExactlySame = 1e6;

    /// <summary>Standard deviations that tell two causes apart.</summary>
    private const double Apart = 2;

    private readonly ImmutableArray<MixtureObservation> observations;
    private readonly double[] factors;
    private readonly double[] uncertainties;
    private readonly List<(CauseModel Model, CurveFit Fit)> fits = [];

    internal CauseRanking(ImmutableArray<MixtureObservation> observations)
    {
        this.observations = observations;
        factors = [.. observations.Select(o => Math.Log(o.FactorSi))];
        uncertainties = [.. observations.Select(o => o.UncertaintySi)];
        var notTried = ImmutableArray.CreateBuilder<string>();
        foreach (BeliefCause cause in Enum.GetValues<BeliefCause>())
        {
            var model = new CauseModel(cause, observations);
            if (model.WhyNot is { } reason)
            {
                notTried.Add($"{CauseWords.Name(cause)}: {reason}");
            }
            else
            {
                fits.Add((model, Fit(model, factors)));
            }
        }

        NotTried = notTried.ToImmutable();
        double[] criteria = [.. fits.Select(f => ModelComparison.Criterion(f.Fit.ChiSquared, f.Model.ParameterCount))];
        double[] weights = ModelComparison.Weights(criteria);
        Causes = [.. fits.Select((f, i) => Rank(f.Model, f.Fit, criteria[i], weights[i])).OrderBy(c => c.Criterion)];

        (CauseModel Model, CurveFit Fit)[] single = [.. fits.Where(f => f.Model.ParameterCount == 1)];
        Compared = [.. single.Select(f => f.Model.Cause)];
        Matrix<double> design = Matrix<double>.Build.DenseOfColumnVectors(single.Select(f => f.Fit.Design.Column(0)));
        SingularValues = [.. ModelComparison.ScaledSingularValues(design).Select(SiUnits.Ratio)];
    }

    internal ImmutableArray<RankedCause> Causes { get; }

    internal ImmutableArray<string> NotTried { get; }

    internal ImmutableArray<BeliefCause> Compared { get; }

    internal ImmutableArray<UnitsNet.Ratio> SingularValues { get; }

    internal Working WorkingFor(BeliefCause cause, int observation)
    {
        (CauseModel model, CurveFit fit) = fits.Single(f => f.Model.Cause == cause);
        Traced[] parameters = [.. fit.Parameters.Select((p, i) => Traced.Input(BeliefSymbols.Parameter(cause, i), p))];
        Traced width = Traced.Input(BeliefSymbols.ObservedWidth, observations[observation].WidthSi);
        return model.Factor(parameters, observation, width).ToWorking();
    }

    private CurveFit Fit(CauseModel model, double[] to) =>
        CurveFit.Of(model, to, uncertainties, new double[model.ParameterCount]);

    private RankedCause Rank(CauseModel model, CurveFit fit, double criterion, double weight)
    {
        int degrees = factors.Length - model.ParameterCount;
        double? probability = degrees > 0 ? ModelComparison.Probability(fit.ChiSquared, degrees) : null;
        var same = ImmutableArray.CreateBuilder<IndistinguishableCause>();
        foreach ((CauseModel other, CurveFit otherFit) in fits)
        {
            if (CauseWords.Share(model.Cause, other.Cause))
            {
                continue;
            }

            if (Compare(model, fit, other, otherFit) is { } indistinguishable)
            {
                same.Add(indistinguishable);
            }
        }

        return new(
            model.Cause,
            CauseWords.Estimates(model, fit),
            fit.ChiSquared,
            degrees,
            probability is { } p ? SiUnits.Ratio(p) : null,
            probability is null or >= LeastProbability,
            criterion,
            SiUnits.Ratio(weight),
            [.. same.OrderBy(s => s.Separation.InSi())]
        );
    }

    /// <summary>How near another cause comes to what this one says; null when the observations tell them apart.</summary>
    private IndistinguishableCause? Compare(CauseModel model, CurveFit fit, CauseModel other, CurveFit otherFit)
    {
        double[] said =
        [
            .. Enumerable.Range(0, factors.Length).Select(i => DecidingTests.LogFactor(model, fit.Parameters, i)),
        ];
        CurveFit mimic = Fit(other, said);
        double separation = Math.Sqrt(mimic.ChiSquared);
        double index = ModelComparison.ConditionIndex(fit.Design, otherFit.Design);
        if (separation >= Apart && index <= NearlySame)
        {
            return null;
        }

        bool exact = index > ExactlySame;
        string why =
            exact ? "exactly the same shape at these points"
            : index > NearlySame ? $"nearly the same shape at these points, condition index {Number(index)}"
            : $"no more than {Number(separation)} standard deviations of these observations apart";
        return new(
            other.Cause,
            SiUnits.Ratio(separation),
            exact ? null : SiUnits.Ratio(index),
            why,
            DecidingTests.Of(model, fit.Parameters, other, mimic.Parameters, observations)
        );
    }

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
