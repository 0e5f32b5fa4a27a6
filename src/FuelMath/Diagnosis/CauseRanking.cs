using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using FuelMath.Statistics;
using MathNet.Numerics.LinearAlgebra;

namespace FuelMath;

/// <summary>Fits every cause to readings, ranks them, and finds those that can't be distinguished.</summary>
internal sealed class CauseRanking
{
    /// <summary>
    /// Least separation, in standard deviations, of two distinguishable causes. Scatter brings readings nearer to the
    /// wrong one of two causes that are d standard deviations apart with probability Phi(-d/2): 16 % at two, 2.3 % at
    /// four.
    /// </summary>
    internal const double Apart = 4;

    /// <summary>
    /// The least p-value of the residual sum of squares: below it a cause does not explain the readings.
    /// </summary>
    private const double LeastProbability = 0.01;

    /// <summary>
    /// The condition index from which the effects of two causes are nearly the same. Source: [Belsley-1980] chapter 3.
    /// </summary>
    private const double NearlySame = 30;

    /// <summary>The condition index from which they are the same except for rounding.</summary>
    private const double ExactlySame = 1e6;

    /// <summary>A singular value that counts as zero: the readings do not determine all parameters.</summary>
    private const double None = 1e-9;

    /// <summary>Relative difference below which criteria count as equal.</summary>
    private const double Equal = 1e-6;

    private readonly FittedInjectors set;
    private readonly SeenMixture[] readings;
    private readonly double[] logs;
    private readonly double[] uncertainties;
    private readonly List<(CauseModel Model, CurveFit Fit)> fits = [];

    internal CauseRanking(FittedInjectors set, IReadOnlyList<MixtureObservation> observations)
    {
        this.set = set;
        readings = [.. observations.SelectMany((o, i) => new ObservedState(set, o, i).Readings())];
        logs = [.. readings.Select(r => r.Log)];
        uncertainties = [.. readings.Select(r => r.Uncertainty)];
        ObservedChecks.Predicted(set, readings);
        var notTried = ImmutableArray.CreateBuilder<string>();
        foreach ((CauseKind kind, int chamber) in Tried())
        {
            var model = new CauseModel(set, kind, chamber, readings);
            if (WhyNot(model) is { } reason)
            {
                notTried.Add($"{model.Name}: {reason}");
            }
            else if (CauseFit.Of(model, logs, uncertainties) is var fit && fit.HasStandardErrors)
            {
                fits.Add((model, fit));
            }
            else
            {
                notTried.Add($"{model.Name}: the readings leave its size open");
            }
        }

        NotTried = notTried.ToImmutable();
        double[] criteria =
        [
            .. fits.Select(f => ModelComparison.Criterion(f.Fit.ChiSquared, f.Model.ParameterCount, Prior(f.Model))),
        ];
        double[] weights = ModelComparison.Weights(criteria);
        Causes = Ordered(fits.Select((f, i) => Rank(f.Model, f.Fit, criteria[i], weights[i])));

        (CauseModel Model, CurveFit Fit)[] single = [.. fits.Where(f => f.Model.ParameterCount == 1)];
        Compared = [.. single.Select(f => f.Model.Name)];
        Matrix<double> design = Matrix<double>.Build.DenseOfColumnVectors(single.Select(f => f.Fit.Design.Column(0)));
        SingularValues = [.. ModelComparison.ScaledSingularValues(design).Select(SiUnits.Ratio)];
    }

    internal ImmutableArray<MixtureDiagnosis.RankedCause> Causes { get; }

    internal ImmutableArray<string> NotTried { get; }

    internal ImmutableArray<string> Compared { get; }

    internal ImmutableArray<UnitsNet.Ratio> SingularValues { get; }

    internal int ReadingCount => readings.Length;

    internal string ReadingName(int reading) => readings[reading].Name;

    internal Working WorkingFor(MixtureDiagnosis.Cause cause, int? chamber, int reading)
    {
        (CauseModel model, CurveFit fit) = fits.Single(f =>
            f.Model.Cause == cause && f.Model.Chamber == (chamber ?? 0) - 1
        );
        Traced[] parameters = [.. fit.Parameters.Select((p, i) => Traced.Input(model.Kind.Parameters[i].Symbol, p))];
        return model.At(parameters, reading).ToWorking();
    }

    /// <summary>All causes; those of one chamber for each chamber in a reading, where there is more than one.</summary>
    private IEnumerable<(CauseKind Kind, int Chamber)> Tried()
    {
        foreach (CauseKind kind in CauseKind.All)
        {
            if (!kind.IsOfOneChamber)
            {
                yield return (kind, -1);
                continue;
            }

            // With a single chamber a weak injector is an error of injector flow.
            foreach (int chamber in readings.SelectMany(r => r.Chambers).Distinct().Order())
            {
                if (set.ChamberCount > 1 || kind is OneInjectorLeakCause)
                {
                    yield return (kind, chamber);
                }
            }
        }
    }

    /// <summary>
    /// The prior probability: one half for no error, equal for all kinds of error, and equal for all chambers, so that
    /// the number of causes tried favors none of them.
    /// </summary>
    private double Prior(CauseModel model)
    {
        if (model.Kind is NoErrorCause)
        {
            return 0.5;
        }

        int kinds = fits.Select(f => f.Model.Cause).Distinct().Count() - 1;
        return 0.5 / kinds / fits.Count(f => f.Model.Cause == model.Cause);
    }

    /// <summary>The best first; causes that are equal except for rounding in the order of their names.</summary>
    private static ImmutableArray<MixtureDiagnosis.RankedCause> Ordered(
        IEnumerable<MixtureDiagnosis.RankedCause> causes
    )
    {
        MixtureDiagnosis.RankedCause[] all = [.. causes.OrderBy(c => c.Criterion)];
        var ordered = ImmutableArray.CreateBuilder<MixtureDiagnosis.RankedCause>(all.Length);
        for (int i = 0; i < all.Length; )
        {
            double least = all[i].Criterion;
            MixtureDiagnosis.RankedCause[] equal =
            [
                .. all.Skip(i).TakeWhile(c => c.Criterion - least <= Equal * (1 + Math.Abs(least))),
            ];
            ordered.AddRange(equal.OrderBy(c => c.Cause).ThenBy(c => c.Chamber));
            i += equal.Length;
        }

        return ordered.MoveToImmutable();
    }

    /// <summary>Why the readings can't show a cause; null when they can.</summary>
    private string? WhyNot(CauseModel model)
    {
        int needed = model.ParameterCount;
        if (needed == 0)
        {
            return null;
        }

        if (readings.Length < needed)
        {
            return $"needs {needed} readings or more";
        }

        Matrix<double> design = CurveFit.DesignOf(model, uncertainties, new double[needed]);
        double least = ModelComparison.ScaledSingularValues(design)[^1];
        return least > None ? null : model.Kind.Missing;
    }

    private MixtureDiagnosis.RankedCause Rank(CauseModel model, CurveFit fit, double criterion, double weight)
    {
        int degrees = logs.Length - model.ParameterCount;
        double? probability = degrees > 0 ? ModelComparison.Probability(fit.ChiSquared, degrees) : null;
        return new(
            model.Cause,
            model.Chamber < 0 ? null : model.Chamber + 1,
            model.Name,
            Estimates(model, fit),
            Remarks(model, fit),
            fit.ChiSquared,
            degrees,
            probability is { } p ? SiUnits.Ratio(p) : null,
            probability is null or >= LeastProbability,
            criterion,
            SiUnits.Ratio(weight),
            () => Inseparable(model, fit)
        );
    }

    /// <summary>The parameters of a fit as quantities, each with its interval.</summary>
    private static ImmutableArray<MixtureDiagnosis.Estimate> Estimates(CauseModel model, CurveFit fit) =>
        [.. model.Kind.Parameters.Select((p, i) => p.Estimate(model, fit.Parameters[i], fit.StandardError(i)))];

    private static ImmutableArray<string> Remarks(CauseModel model, CurveFit fit)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        if (model.Beyond(fit.Parameters) is { } beyond)
        {
            remarks.Add(beyond);
        }

        if (model.IsAtEnd(fit.Parameters))
        {
            remarks.Add("The estimate is at the end of what is possible: this cause alone can't explain more.");
        }

        return remarks.ToImmutable();
    }

    private ImmutableArray<MixtureDiagnosis.InseparableCause> Inseparable(CauseModel model, CurveFit fit)
    {
        double[] said = [.. Enumerable.Range(0, logs.Length).Select(i => model.At(fit.Parameters, i))];
        return
        [
            .. fits.Where(f => f.Model != model)
                .Select(f => Compare(model, fit, said, f.Model, f.Fit))
                .OfType<MixtureDiagnosis.InseparableCause>()
                .OrderBy(s => s.Separation.InSi()),
        ];
    }

    /// <summary>How nearly another cause can imitate this one; null when the readings distinguish them.</summary>
    private MixtureDiagnosis.InseparableCause? Compare(
        CauseModel model,
        CurveFit fit,
        double[] said,
        CauseModel other,
        CurveFit otherFit
    )
    {
        bool nothing = model.Kind is NoErrorCause;
        if (other.Kind.Contains(model.Kind) && !nothing)
        {
            // A cause that contains this one is not a rival: Akaike's criterion judges its extra parameters.
            return null;
        }

        // No error predicts no effect: then the readings themselves show how much a cause would explain.
        CurveFit mimic = nothing ? otherFit : CauseFit.Of(other, said, uncertainties);
        double separation = Math.Sqrt(Math.Max(nothing ? fit.ChiSquared - otherFit.ChiSquared : mimic.ChiSquared, 0));

        // At a bound the condition index does not apply: the other cause can't follow any further.
        double? index =
            nothing || other.Kind is NoErrorCause || other.IsAtEnd(mimic.Parameters)
                ? null
                : Math.Min(ModelComparison.ConditionIndex(fit.Design, mimic.Design), ExactlySame);
        if (separation >= Apart && !(index > NearlySame))
        {
            return null;
        }

        bool exact = index >= ExactlySame && separation < Apart;
        string why =
            exact ? "exactly the same shape in these readings"
            : index > NearlySame ? $"nearly the same shape in these readings, condition index {Number(index.Value)}"
            : $"no more than {Number(separation)} standard deviations of these readings apart";
        return new(
            other.Cause,
            other.Chamber < 0 ? null : other.Chamber + 1,
            other.Name,
            SiUnits.Ratio(separation),
            exact || index is null ? null : SiUnits.Ratio(index.Value),
            why,
            new DecidingTests(set, model, fit.Parameters, other, mimic.Parameters).Of(separation)
        );
    }

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
