using FuelMath.Formulas;
using FuelMath.Scalars;
using FuelMath.Uncertainty;

namespace FuelMath.Beliefs;

/// <summary>What one cause does to the logarithm of the factor at each observation.</summary>
/// <remarks>
/// Parameters of order one: the logarithm of a ratio, a dead time in ms, a pressure as a share of the least one believed, a
/// share of the manifold pressure.
/// </remarks>
internal sealed class CauseModel : IFitModel
{
    private readonly MixtureObservation[] observations;
    private readonly (double Low, double High) load;
    private readonly (double Low, double High) speed;

    internal CauseModel(BeliefCause cause, IReadOnlyList<MixtureObservation> observations)
    {
        Cause = cause;
        this.observations = [.. observations];
        load = (observations.Min(o => o.Manifold.Si), observations.Max(o => o.Manifold.Si));
        speed = (observations.Min(Speed), observations.Max(Speed));
        LeastPressure = observations.Min(o => o.PressureSi);
    }

    private CauseModel(CauseModel other, MixtureObservation[] observations)
    {
        (Cause, load, speed, LeastPressure) = (other.Cause, other.load, other.speed, other.LeastPressure);
        this.observations = observations;
    }

    internal BeliefCause Cause { get; }

    internal double LeastPressure { get; }

    /// <inheritdoc />
    public int ParameterCount =>
        Cause switch
        {
            BeliefCause.Nothing => 0,
            BeliefCause.FlowAndDeadTime or BeliefCause.AirOverLoad or BeliefCause.AirOverSpeed => 2,
            _ => 1,
        };

    /// <summary>Why the observations cannot show this cause at all; null when they can.</summary>
    internal string? WhyNot =>
        observations.Length < ParameterCount ? $"needs {ParameterCount} observations or more"
        : Cause == BeliefCause.FlowAndDeadTime && Same(o => o.WidthSi) ? "needs observations at different pulse widths"
        : Cause == BeliefCause.PressureReference && observations.All(o => o.BoostSi == 0)
            ? "needs observations at a manifold pressure other than ambient"
        : Cause == BeliefCause.AirOverLoad && load.Low == load.High
            ? "needs observations at different manifold pressures"
        : Cause == BeliefCause.AirOverSpeed && speed.Low == speed.High ? "needs observations at different speeds"
        : null;

    /// <summary>The same cause, with the same meaning of its parameters, at other observations.</summary>
    internal CauseModel With(IEnumerable<MixtureObservation> others) => new(this, [.. others]);

    /// <inheritdoc />
    public bool IsDefined(double[] parameters) =>
        observations.All(o =>
            Cause switch
            {
                BeliefCause.DeadTime => o.WidthSi > parameters[0] * 1e-3,
                BeliefCause.FlowAndDeadTime => o.WidthSi > parameters[1] * 1e-3,
                BeliefCause.Pressure => o.PressureSi + (parameters[0] * LeastPressure) > 0,
                BeliefCause.PressureReference => o.PressureSi - (parameters[0] * o.BoostSi) > 0,
                _ => true,
            }
        ) && Array.TrueForAll(parameters, double.IsFinite);

    /// <inheritdoc />
    public T At<T>(T[] parameters, int reading)
        where T : struct, IScalar<T> => T.Log(Factor(parameters, reading, T.Of(observations[reading].WidthSi)));

    /// <summary>The factor at an observation, whose effective width is handed in so that a working can name it.</summary>
    internal T Factor<T>(T[] parameters, int reading, T width)
        where T : struct, IScalar<T>
    {
        MixtureObservation o = observations[reading];
        T one = T.Of(1);
        (T air, T flow, T pressure, T dead) = (one, one, one, T.Of(0));
        switch (Cause)
        {
            case BeliefCause.Flow:
                flow = T.Exp(parameters[0]);
                break;
            case BeliefCause.DeadTime:
                dead = parameters[0] * 1e-3;
                break;
            case BeliefCause.FlowAndDeadTime:
                (flow, dead) = (T.Exp(parameters[0]), parameters[1] * 1e-3);
                break;
            case BeliefCause.Pressure:
                pressure = 1 + (parameters[0] * (LeastPressure / o.PressureSi));
                break;
            case BeliefCause.PressureReference:
                pressure = 1 - (parameters[0] * (o.BoostSi / o.PressureSi));
                break;
            case BeliefCause.Air:
                air = T.Exp(parameters[0]);
                break;
            case BeliefCause.AirOverLoad:
                air = Between(parameters, (o.Manifold.Si - load.Low) / (load.High - load.Low));
                break;
            case BeliefCause.AirOverSpeed:
                air = Between(parameters, (Speed(o) - speed.Low) / (speed.High - speed.Low));
                break;
            default:
                break;
        }

        return MixtureError.LambdaFactor(air, flow, pressure, width, dead);
    }

    internal static double Speed(MixtureObservation observation) => Internal.SiUnits.InSi(observation.Speed);

    private static T Between<T>(T[] ends, double share)
        where T : struct, IScalar<T> => T.Exp(((1 - share) * ends[0]) + (share * ends[1]));

    private bool Same(Func<MixtureObservation, double> of) =>
        observations.Max(of) - observations.Min(of) <= 1e-9 * observations.Max(of);
}
