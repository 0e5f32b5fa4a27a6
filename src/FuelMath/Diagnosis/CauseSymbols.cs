using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The symbols of the parameters of a diagnosis.</summary>
internal static class CauseSymbols
{
    /// <summary>The symbol of a parameter of a cause.</summary>
    internal static Symbol Parameter(MixtureDiagnosis.Cause cause, int index) =>
        cause switch
        {
            MixtureDiagnosis.Cause.InjectorFlow => LogFlow,
            MixtureDiagnosis.Cause.DeadTime => DeadTimeError,
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => index == 0 ? LogFlow : DeadTimeError,
            MixtureDiagnosis.Cause.RailPressure => PressureShare,
            MixtureDiagnosis.Cause.PressureReference => ReferenceShare,
            MixtureDiagnosis.Cause.FuelDensity => LogDensity,
            MixtureDiagnosis.Cause.StoichiometricRatio => LogStoichiometric,
            MixtureDiagnosis.Cause.AirModel => LogAir,
            MixtureDiagnosis.Cause.OneInjectorFlow => ChamberFlow,
            MixtureDiagnosis.Cause.OneInjectorLeak => LeakShare,
            _ => index == 0 ? LogAirLow : LogAirHigh,
        };

    private static Symbol LogFlow { get; } = new("ln f", "", "logarithm of static flow over the flow presumed");

    private static Symbol DeadTimeError { get; } = new("dt", "ms", "dead time less the one presumed");

    private static Symbol PressureShare { get; } = new("e", "", "pressure error over the least pressure presumed");

    private static Symbol ReferenceShare { get; } =
        new("s", "", "share of the manifold's gauge pressure that the rail misses");

    private static Symbol LogDensity { get; } = new("ln d", "", "logarithm of fuel density over the density presumed");

    private static Symbol LogStoichiometric { get; } =
        new("ln r", "", "logarithm of the stoichiometric ratio over the one presumed");

    private static Symbol LogAir { get; } = new("ln a", "", "logarithm of air over the air reckoned with");

    private static Symbol LogAirLow { get; } = new("ln a0", "", "the same at the low end");

    private static Symbol LogAirHigh { get; } = new("ln a1", "", "the same at the high end");

    private static Symbol ChamberFlow { get; } =
        new("c", "", "static flow of one chamber over the flow presumed, less one");

    private static Symbol LeakShare { get; } = new("k", "", "leak of one chamber over the static flow of its injector");
}
