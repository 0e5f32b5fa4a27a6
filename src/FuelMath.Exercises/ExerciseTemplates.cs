using System.Collections.Immutable;

namespace FuelMath.Exercises;

/// <summary>The templates of this library, in the order of the work.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public static class ExerciseTemplates
{
    /// <summary>Static flow of an injector at another pressure.</summary>
    public static ExerciseTemplate FlowOverPressure => Templates.FlowOverPressure.Template;

    /// <summary>Static mass flow of an injector with another fuel.</summary>
    public static ExerciseTemplate FlowOverDensity => Templates.FlowOverDensity.Template;

    /// <summary>Differential pressure from a gauge and an absolute reading.</summary>
    public static ExerciseTemplate GaugeAndAbsolute => Templates.GaugeAndAbsolute.Template;

    /// <summary>Mean mass flow of an injector with dead time.</summary>
    public static ExerciseTemplate DeadTimeAndDuty => Templates.DeadTimeAndDuty.Template;

    /// <summary>Operating flow of pump and system.</summary>
    public static ExerciseTemplate PumpMeetsSystem => Templates.PumpMeetsSystem.Template;

    /// <summary>Pressure loss of a hose in turbulent flow.</summary>
    public static ExerciseTemplate HoseLossTurbulent => Templates.HoseLossTurbulent.Template;

    /// <summary>Pressure loss of an oil line in laminar flow.</summary>
    public static ExerciseTemplate HoseLossLaminar => Templates.HoseLossLaminar.Template;

    /// <summary>Rail pressure that a regulator with a reference line holds.</summary>
    public static ExerciseTemplate RegulatorReference => Templates.RegulatorReference.Template;

    /// <summary>Voltage drop in a pump's wiring, supply and return.</summary>
    public static ExerciseTemplate WireDrop => Templates.WireDrop.Template;

    /// <summary>Stoichiometric ratio of a blend by volume.</summary>
    public static ExerciseTemplate BlendRatio => Templates.BlendRatio.Template;

    /// <summary>Oil for a premix by ratio.</summary>
    public static ExerciseTemplate PremixByRatio => Templates.PremixByRatio.Template;

    /// <summary>Oil for a premix by percent.</summary>
    public static ExerciseTemplate PremixByPercent => Templates.PremixByPercent.Template;

    /// <summary>Lambda from a controller's belief and the fitted injectors.</summary>
    public static ExerciseTemplate LambdaFromBelief => Templates.LambdaFromBelief.Template;

    /// <summary>Leak rate from the decay of pressure in a closed line.</summary>
    public static ExerciseTemplate PressureDecayLeak => Templates.PressureDecayLeak.Template;

    /// <summary>All templates.</summary>
    public static ImmutableArray<ExerciseTemplate> All { get; } =
    [
        GaugeAndAbsolute,
        FlowOverPressure,
        FlowOverDensity,
        DeadTimeAndDuty,
        HoseLossTurbulent,
        HoseLossLaminar,
        RegulatorReference,
        PumpMeetsSystem,
        WireDrop,
        BlendRatio,
        PremixByRatio,
        PremixByPercent,
        LambdaFromBelief,
        PressureDecayLeak,
    ];
}
