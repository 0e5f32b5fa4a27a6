namespace FuelMath;

/// <summary>The kinds of findings, for programs: stable whatever the words of a finding are.</summary>
/// <remarks>The page on findings lists each with its limit and what to do.</remarks>
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

    /// <summary>The mean mixture is leaner than asked for.</summary>
    MixtureLean,

    /// <summary>The mean mixture is richer than asked for.</summary>
    MixtureRich,

    /// <summary>A chamber runs leaner than asked for.</summary>
    ChamberLean,

    /// <summary>A chamber gets no fuel.</summary>
    ChamberWithoutFuel,

    /// <summary>No lambda was asked for, so that the mixture is not judged.</summary>
    MixtureNotJudged,

    /// <summary>Premix: how lean the mixture is depends on how much of the oil burns.</summary>
    PremixMixture,

    /// <summary>A controller's correction is at its limit.</summary>
    CorrectionAtLimit,

    /// <summary>No correction meets the lambda asked for.</summary>
    CorrectionHunts,

    /// <summary>One sensor stands for several chambers.</summary>
    SensorHidesChambers,

    /// <summary>Injectors have no time left to close.</summary>
    InjectorHeldOpen,

    /// <summary>The duty cycle of injectors is high.</summary>
    DutyCycleHigh,

    /// <summary>A pulse is shorter than the injectors repeat.</summary>
    PulseNotRepeatable,

    /// <summary>The pressure across injectors is not what the controller was told.</summary>
    PressureNotAsTold,

    /// <summary>The controller was told another reference of the rail than the regulator has.</summary>
    RailReferenceNotAsTold,

    /// <summary>The voltage drop to the injectors is high.</summary>
    InjectorVoltageLow,

    /// <summary>The voltage drop to a pump is high.</summary>
    PumpVoltageLow,

    /// <summary>A pump delivers nothing against the pressure it meets.</summary>
    PumpStalled,

    /// <summary>The pumps can give little more at the pressure that must hold.</summary>
    PumpReserveLow,

    /// <summary>A pump of unknown principle runs in a fuel of another density than the fluid of its curve.</summary>
    PumpPrincipleNotKnown,

    /// <summary>What the pumps could still give is not known.</summary>
    PumpReserveNotKnown,

    /// <summary>A bypass regulator is shut: the pump does not supply what is drawn.</summary>
    RegulatorShut,

    /// <summary>A bypass regulator is fully open: the return path sets the pressure.</summary>
    RegulatorFullyOpen,

    /// <summary>A reducing regulator is starved.</summary>
    RegulatorStarved,

    /// <summary>A relief valve is open.</summary>
    ReliefOpen,

    /// <summary>A surge tank drains.</summary>
    SurgeTankDrains,

    /// <summary>Fuel runs fast in a hose.</summary>
    HoseVelocityHigh,

    /// <summary>A hose is above its working pressure.</summary>
    HoseOverPressure,

    /// <summary>A hose is bent too tight.</summary>
    HoseBentTight,

    /// <summary>Loss coefficients are estimates.</summary>
    LossEstimated,

    /// <summary>A filter carries more than it was tested for.</summary>
    FilterBeyondTest,

    /// <summary>A filter loses more than its element stands.</summary>
    FilterCollapse,

    /// <summary>A filter is coarser than the passage that it protects, or holds back too little.</summary>
    FiltrationTooCoarse,

    /// <summary>A filter's rating does not say what it holds back at the size that matters.</summary>
    FiltrationNotKnown,

    /// <summary>Fuel is near boiling, or boils.</summary>
    VaporMarginLow,

    /// <summary>The vapor pressure is not known, at all or at this temperature.</summary>
    VaporNotChecked,

    /// <summary>Fuel comes near boiling as the tank warms in a drive, or boils.</summary>
    TankWarmingBoils,

    /// <summary>The tank is empty before a drive ends.</summary>
    TankEmpties,

    /// <summary>Fuel in the rail boils at hot soak.</summary>
    HotSoakBoils,

    /// <summary>A pump asks for more suction head than there is.</summary>
    SuctionHeadLow,

    /// <summary>An alternator gives all it can.</summary>
    AlternatorAtLimit,

    /// <summary>A current is more than a conductor may carry.</summary>
    ConductorOverloaded,

    /// <summary>A fuse does not protect its conductor.</summary>
    FuseTooLarge,

    /// <summary>A fuse carries more than its share for long.</summary>
    FuseLoaded,

    /// <summary>A comparison of currents is no design of protection.</summary>
    ProtectionNotDesigned,

    /// <summary>A coil draws more than its driver bears.</summary>
    DriverOverloaded,

    /// <summary>A low-impedance coil has no limit of its current.</summary>
    DriverUnsuited,

    /// <summary>A limit of the owner's stands in place of another.</summary>
    LimitOfOwner,

    /// <summary>A set of injectors is not matched.</summary>
    SetNotMatched,

    /// <summary>A bench repeats too poorly to judge.</summary>
    BenchTooCoarse,

    /// <summary>An injector is off its rating.</summary>
    FlowOffRating,

    /// <summary>Readings do not settle whether an injector is within its limit.</summary>
    FlowUndecided,

    /// <summary>An injector leaks.</summary>
    InjectorLeaks,

    /// <summary>Leakage was not watched for long enough.</summary>
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

    /// <summary>Nobody corrects widths.</summary>
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

    /// <summary>An O-ring is stretched much.</summary>
    SealStretchHigh,

    /// <summary>A ring is too large for its groove.</summary>
    SealOversize,

    /// <summary>The rubber of a seal is not known.</summary>
    SealMaterialNotKnown,

    /// <summary>Lengths along an axis leave too little room, or none.</summary>
    StackTooTight,

    /// <summary>Lengths along an axis leave too much play.</summary>
    StackTooLoose,

    /// <summary>Water in the tank separates.</summary>
    WaterSeparates,

    /// <summary>Whether water in the tank separates is not known.</summary>
    WaterSeparationNotKnown,
}
