namespace FuelMath;

/// <summary>The kinds of findings, for programs: stable whatever the words of a finding are.</summary>
/// <remarks>The page on findings lists each with its limit and action.</remarks>
/// <seealso href="../guide/findings.html">Findings</seealso>
public enum FindingCode
{
    /// <summary>A finding of an application's own.</summary>
    Custom,

    /// <summary>No steady state was found, or data do not reach the point.</summary>
    StateRefused,

    /// <summary>There was nothing to judge.</summary>
    NothingJudged,

    /// <summary>The injectors of a stage were not measured, though others were.</summary>
    SetNotMeasured,

    /// <summary>A measured set of injectors is not accepted.</summary>
    SetNotAccepted,

    /// <summary>The mean mixture is leaner than requested.</summary>
    MixtureLean,

    /// <summary>The mean mixture is richer than requested.</summary>
    MixtureRich,

    /// <summary>A chamber runs leaner than requested.</summary>
    ChamberLean,

    /// <summary>A chamber gets no fuel.</summary>
    ChamberWithoutFuel,

    /// <summary>No lambda was requested, so the mixture is not judged.</summary>
    MixtureNotJudged,

    /// <summary>What the mixture is without the sensor that holds it is not judged, because the controller's belief is not described.</summary>
    SensorFailureNotJudged,

    /// <summary>Premix: how lean the mixture is depends on how much of the oil burns.</summary>
    PremixMixture,

    /// <summary>A controller's correction is at its limit.</summary>
    CorrectionAtLimit,

    /// <summary>No correction meets the requested lambda.</summary>
    CorrectionHunts,

    /// <summary>One sensor stands for several chambers.</summary>
    SensorHidesChambers,

    /// <summary>Injectors have no time left to close.</summary>
    InjectorHeldOpen,

    /// <summary>The duty cycle of injectors is high.</summary>
    DutyCycleHigh,

    /// <summary>A pulse is shorter than the injectors repeat.</summary>
    PulseNotRepeatable,

    /// <summary>The pressure across injectors differs from the controller's belief.</summary>
    PressureNotAsTold,

    /// <summary>The controller's belief about the reference of the rail differs from the regulator's.</summary>
    RailReferenceNotAsTold,

    /// <summary>The voltage drop to the injectors is high.</summary>
    InjectorVoltageLow,

    /// <summary>The voltage drop to a pump is high.</summary>
    PumpVoltageLow,

    /// <summary>A pump delivers nothing against the pressure of the system.</summary>
    PumpStalled,

    /// <summary>The pumps have little reserve at the required pressure.</summary>
    PumpReserveLow,

    /// <summary>A pump of unknown principle runs in a fuel of another density than the fluid of its curve.</summary>
    PumpPrincipleNotKnown,

    /// <summary>The reserve of the pumps is not known.</summary>
    PumpReserveNotKnown,

    /// <summary>A bypass regulator is closed: the pump does not supply the demand.</summary>
    RegulatorShut,

    /// <summary>A bypass regulator is fully open: the return path sets the pressure.</summary>
    RegulatorFullyOpen,

    /// <summary>A reducing regulator is starved.</summary>
    RegulatorStarved,

    /// <summary>A relief valve is open.</summary>
    ReliefOpen,

    /// <summary>Fuel leaves the system and does not come back.</summary>
    FuelEscapes,

    /// <summary>A surge tank drains.</summary>
    SurgeTankDrains,

    /// <summary>The velocity in a hose is high.</summary>
    HoseVelocityHigh,

    /// <summary>A hose is above its working pressure.</summary>
    HoseOverPressure,

    /// <summary>A hose is bent too tightly.</summary>
    HoseBentTight,

    /// <summary>Loss coefficients are estimates.</summary>
    LossEstimated,

    /// <summary>What is known of a regulator is in part an estimate.</summary>
    RegulatorEstimated,

    /// <summary>The flow of a filter is beyond its tested range.</summary>
    FilterBeyondTest,

    /// <summary>The pressure loss of a filter is above its collapse limit.</summary>
    FilterCollapse,

    /// <summary>A filter is coarser than the passage that it protects, or holds back too little.</summary>
    FiltrationTooCoarse,

    /// <summary>A filter's rating does not cover the particle size that matters.</summary>
    FiltrationNotKnown,

    /// <summary>Fuel is near boiling, or boils.</summary>
    VaporMarginLow,

    /// <summary>The vapor pressure is not known, or not at this temperature.</summary>
    VaporNotChecked,

    /// <summary>The gasoline told and the class of an ethanol fuel contradict each other.</summary>
    FuelOutsideClass,

    /// <summary>Fuel is near boiling, or boils, as the tank warms during a drive.</summary>
    TankWarmingBoils,

    /// <summary>The tank is empty before a drive ends.</summary>
    TankEmpties,

    /// <summary>Fuel in the rail boils at hot soak.</summary>
    HotSoakBoils,

    /// <summary>A pump requires more suction head than is available.</summary>
    SuctionHeadLow,

    /// <summary>An alternator delivers its greatest current.</summary>
    AlternatorAtLimit,

    /// <summary>A current is more than a conductor may carry.</summary>
    ConductorOverloaded,

    /// <summary>A fuse does not protect its conductor.</summary>
    FuseTooLarge,

    /// <summary>The continuous current of a fuse is above the allowed fraction of its rating.</summary>
    FuseLoaded,

    /// <summary>A comparison of currents is not a design of protection.</summary>
    ProtectionNotDesigned,

    /// <summary>A coil draws more than the limit of its driver.</summary>
    DriverOverloaded,

    /// <summary>The current of a low-impedance coil is not limited.</summary>
    DriverUnsuited,

    /// <summary>An owner's limit replaces another.</summary>
    LimitOfOwner,

    /// <summary>A set of injectors is not matched.</summary>
    SetNotMatched,

    /// <summary>The repeatability of a bench is too poor to judge.</summary>
    BenchTooCoarse,

    /// <summary>An injector is off its rating.</summary>
    FlowOffRating,

    /// <summary>Readings do not decide whether an injector is within its limit.</summary>
    FlowUndecided,

    /// <summary>The repeats of an injector scatter more than those of the others.</summary>
    InjectorScatters,

    /// <summary>An injector leaks.</summary>
    InjectorLeaks,

    /// <summary>The leakage test was too short to decide.</summary>
    LeakageUndecided,

    /// <summary>Leakage of injectors was not read.</summary>
    LeakageNotRead,

    /// <summary>A coil is outside its band.</summary>
    CoilOutsideBand,

    /// <summary>A meter is too coarse to place a coil in its band.</summary>
    CoilUndecided,

    /// <summary>A coil differs from the median of its set.</summary>
    CoilUnlikeSet,

    /// <summary>Slots of a bench differ.</summary>
    SlotsDiffer,

    /// <summary>A dead time came out negative.</summary>
    DeadTimeNegative,

    /// <summary>Pulses deliver inside the dead time.</summary>
    DeliveryInsideDeadTime,

    /// <summary>Widths were already corrected, or would be corrected twice.</summary>
    WidthsCorrectedTwice,

    /// <summary>Widths are not corrected.</summary>
    WidthsNotCorrected,

    /// <summary>Repeats scatter less than the means depart from the line.</summary>
    LineBent,

    /// <summary>A joint does not seal, or does not go together.</summary>
    JointDoesNotSeal,

    /// <summary>A joint needs care.</summary>
    JointCaution,

    /// <summary>An O-ring is squeezed too little.</summary>
    SealSqueezeLow,

    /// <summary>An O-ring is squeezed too much.</summary>
    SealSqueezeHigh,

    /// <summary>An O-ring fills its groove.</summary>
    SealFillHigh,

    /// <summary>An O-ring is stretched too much.</summary>
    SealStretchHigh,

    /// <summary>A ring is too large for its groove.</summary>
    SealOversize,

    /// <summary>The rubber of a seal is not known.</summary>
    SealMaterialNotKnown,

    /// <summary>An axial stack has too little play, or none.</summary>
    StackTooTight,

    /// <summary>An axial stack has too much play.</summary>
    StackTooLoose,

    /// <summary>Water in the tank separates.</summary>
    WaterSeparates,

    /// <summary>Whether water in the tank separates is not known.</summary>
    WaterSeparationNotKnown,
}
