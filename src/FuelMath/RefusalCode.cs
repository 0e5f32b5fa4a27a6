namespace FuelMath;

/// <summary>
/// What is wrong, as <see cref="Refusal.Code"/> says it. Codes stay when words change; the page of refusals lists the data of each.
/// </summary>
/// <seealso href="../guide/refusals.html">Refusals</seealso>
public enum RefusalCode
{
    /// <summary>A number is below the least or above the greatest that is allowed.</summary>
    OutOfRange,

    /// <summary>A number is not finite, or too large to calculate with.</summary>
    NotFinite,

    /// <summary>A value lies outside the data of a table, which is neither held nor extended.</summary>
    OutsideData,

    /// <summary>A name, a choice, a unit or a size is none of those allowed.</summary>
    NotOneOf,

    /// <summary>There are more or fewer than there must be.</summary>
    Count,

    /// <summary>A name or an entry is there twice.</summary>
    Duplicate,

    /// <summary>A text is blank.</summary>
    Blank,

    /// <summary>A text holds a character that it must not hold.</summary>
    ControlCharacter,

    /// <summary>A list holds null.</summary>
    Null,

    /// <summary>Something that is needed is not given.</summary>
    Missing,

    /// <summary>Something is given that must not be given here.</summary>
    NotNeeded,

    /// <summary>Of things that belong together some are given and some are not.</summary>
    BelongTogether,

    /// <summary>A name refers to something that is not there.</summary>
    NotThere,

    /// <summary>Something is of another kind than is needed.</summary>
    WrongKind,

    /// <summary>Things that must agree differ.</summary>
    NotAlike,

    /// <summary>Things that must differ are the same.</summary>
    NotDifferent,

    /// <summary>Values that must differ in part are all the same.</summary>
    AllAlike,

    /// <summary>Something belongs to another network.</summary>
    OfAnother,

    /// <summary>Shares do not add up.</summary>
    Sum,

    /// <summary>Values must rise from point to point.</summary>
    MustRise,

    /// <summary>Values must fall from point to point.</summary>
    MustFall,

    /// <summary>Values must not rise.</summary>
    MustNotRise,

    /// <summary>Values must not fall.</summary>
    MustNotFall,

    /// <summary>A curve that rises and falls can't be read backwards.</summary>
    NotMonotone,

    /// <summary>Data that must overlap have no range in common.</summary>
    NoCommonRange,

    /// <summary>There are too few readings, or too few different ones.</summary>
    TooFewReadings,

    /// <summary>Nothing measures the scatter of readings.</summary>
    NoScatter,

    /// <summary>No part of the readings lies on one line.</summary>
    NoLine,

    /// <summary>A line is level, so that it crosses zero nowhere.</summary>
    LineLevel,

    /// <summary>The slope of a line does not differ from zero.</summary>
    SlopeNotSignificant,

    /// <summary>Correlations can't hold together.</summary>
    CorrelationsImpossible,

    /// <summary>An input is exact where an uncertain one is needed.</summary>
    InputExact,

    /// <summary>Inputs that err together can't be drawn.</summary>
    CorrelatedNotNormal,

    /// <summary>The degrees of freedom are not known, or have no limit.</summary>
    FreedomUnknown,

    /// <summary>Too many random trials have no result.</summary>
    TrialsRefused,

    /// <summary>A formula has no result for these arguments.</summary>
    NoResult,

    /// <summary>No state satisfies the equations; thrown by an application's own code.</summary>
    NoSolution,

    /// <summary>An iteration did not converge.</summary>
    NotConverged,

    /// <summary>There may be several states where one is needed.</summary>
    SeveralStates,

    /// <summary>There is no state to ask.</summary>
    StateRefused,

    /// <summary>Nothing was solved yet.</summary>
    NotSolved,

    /// <summary>A value that was asked for is never reached.</summary>
    NotReached,

    /// <summary>A property of a fuel or an oil is not known.</summary>
    PropertyUnknown,

    /// <summary>A value that can't be negative came out negative.</summary>
    EstimateNegative,

    /// <summary>A cause was not tried.</summary>
    NotTried,

    /// <summary>An outcome contradicts an earlier one.</summary>
    Contradiction,

    /// <summary>There are too many combinations to try.</summary>
    TooManyCombinations,

    /// <summary>Two columns share memory in part.</summary>
    MemoryOverlaps,

    /// <summary>A text, a document or a formula is too long.</summary>
    TooLong,

    /// <summary>A formula in one cell has no other cells.</summary>
    OneCellOnly,

    /// <summary>A condition is no part of a formula.</summary>
    ConditionInFormula,

    /// <summary>A document has no place or word for something.</summary>
    NotWritable,

    /// <summary>A document is not what it should be; thrown by an application's own code.</summary>
    DocumentInvalid,

    /// <summary>An object of a document lacks a property.</summary>
    PropertyMissing,

    /// <summary>An object of a document must have exactly one of several properties.</summary>
    OneOfThese,

    /// <summary>A value is of another form than it should be.</summary>
    NotAsWanted,

    /// <summary>A part of a document is used nowhere.</summary>
    NotUsed,

    /// <summary>A text is not JSON.</summary>
    NotJson,

    /// <summary>A text holds half a character.</summary>
    BrokenCharacter,

    /// <summary>A document is of an old version.</summary>
    OldVersion,

    /// <summary>A quotation mark is opened and not closed.</summary>
    QuoteOpen,

    /// <summary>A text is not a number with a unit of the wanted kind.</summary>
    NotAQuantity,

    /// <summary>A node must have a fixed pressure.</summary>
    FixedPressureNeeded,

    /// <summary>A node must have no fixed pressure.</summary>
    JunctionNeeded,

    /// <summary>There is no way between things that must be connected.</summary>
    Unconnected,

    /// <summary>A network was given no conditions.</summary>
    ConditionsNeeded,

    /// <summary>A pump is needed.</summary>
    PumpNeeded,

    /// <summary>A surge tank has no lift pump.</summary>
    LiftPumpNeeded,

    /// <summary>A hose is needed.</summary>
    HoseNeeded,

    /// <summary>A system lacks the parts for a test.</summary>
    PartsLacking,

    /// <summary>Pumps are in series where they must be in parallel.</summary>
    PumpsInSeries,

    /// <summary>A line is joined to another and does not stand still without it.</summary>
    JoinedByAnother,

    /// <summary>A switch watches the pump that it stops.</summary>
    WatchesItself,

    /// <summary>With any set of running pumps a switch changes it.</summary>
    NoPumpSetLasts,

    /// <summary>Every way to a node is shut, so that its pressure is not determined.</summary>
    PressureUndetermined,

    /// <summary>A node of a system has a fixed draw.</summary>
    DrawFixed,

    /// <summary>A regulator refers to one of several tanks and stands at none.</summary>
    TankUnclear,

    /// <summary>A reducing regulator has no return line.</summary>
    NoReturnLine,

    /// <summary>The curve of a pump has a hump.</summary>
    CurveHumped,

    /// <summary>A pump curve begins at a flow, and does not fall from there.</summary>
    CurveBeginsLate,

    /// <summary>A network asks for just what a pump gives, along a whole stretch.</summary>
    MeetsAlong,

    /// <summary>A network barely meets a pump curve with a hump.</summary>
    BarelyMeets,

    /// <summary>A network meets a pump curve nowhere.</summary>
    NeverMeets,

    /// <summary>The loss of an application's own part can't be solved.</summary>
    LawUnusable,

    /// <summary>A part must lose pressure, and loses none.</summary>
    NoLoss,

    /// <summary>Nothing flows that way.</summary>
    NoFlow,

    /// <summary>Nothing can flow to where a pump draws.</summary>
    NoWayIn,

    /// <summary>Draws need more than can flow.</summary>
    TooLittleFlow,

    /// <summary>No pressure builds.</summary>
    NoPressure,

    /// <summary>Wear leaves nothing of a pump curve.</summary>
    NothingLeft,

    /// <summary>A pump draws no power there.</summary>
    NoPower,

    /// <summary>A pump would give out more power than it takes in.</summary>
    MorePowerOutThanIn,

    /// <summary>A pump is stalled.</summary>
    PumpStalled,

    /// <summary>A regulator would open below its reference.</summary>
    OpensBelowReference,

    /// <summary>A regulator would be open to its stop, where it does not regulate.</summary>
    OpenToItsStop,

    /// <summary>A port stands inside a line.</summary>
    PortNotAtEnd,

    /// <summary>A surge tank does not drain.</summary>
    NeverEmpty,

    /// <summary>The pressure ahead of an injector is not above the pressure it sprays against.</summary>
    NoFuelPasses,

    /// <summary>A chamber gets no fuel.</summary>
    NoFuel,

    /// <summary>Injectors held open give too little fuel.</summary>
    TooLittleFuel,

    /// <summary>The smallest pulses give too much fuel.</summary>
    TooMuchFuel,

    /// <summary>A correction takes away more than the width.</summary>
    CorrectionTooLarge,

    /// <summary>Widths were corrected already.</summary>
    CorrectedAlready,

    /// <summary>Everything was read, so that nothing is to be estimated.</summary>
    NothingToFill,

    /// <summary>Pulses are at the smallest width.</summary>
    PulsesTooShort,

    /// <summary>Injectors do not close between pulses.</summary>
    PulsesTooLong,

    /// <summary>A correction is at its limit and hides how much was needed.</summary>
    CorrectionAtLimit,

    /// <summary>An observation holds no reading of a sensor.</summary>
    SensorNeeded,

    /// <summary>A cause belongs to one chamber, which is not named.</summary>
    ChamberNeeded,

    /// <summary>A cause belongs to all chambers, and one is named.</summary>
    ChamberNotAllowed,

    /// <summary>Banks do not name each chamber once.</summary>
    ChambersNotOnce,

    /// <summary>A stage does not feed all chambers alike.</summary>
    ChambersNotAlike,

    /// <summary>Numbers have gaps.</summary>
    NumbersHaveGaps,

    /// <summary>Seats can't be divided into equal groups.</summary>
    UnevenGroups,

    /// <summary>A stage can't join where it is told to.</summary>
    StageCannotJoin,

    /// <summary>Something is defined for one stage, and there are more.</summary>
    OneStageOnly,

    /// <summary>There are too few injectors for the seats.</summary>
    TooFewForSeats,

    /// <summary>A loading test does not begin with the clean element.</summary>
    CleanPointNeeded,

    /// <summary>Nothing in it burns.</summary>
    NothingBurns,

    /// <summary>There is no mixture.</summary>
    NoMixture,

    /// <summary>Parts would bring more oxygen than the whole holds.</summary>
    TooMuchOxygen,

    /// <summary>There is too little ethanol to count as a fuel.</summary>
    TooLittleEthanol,

    /// <summary>The leanest premix holds more oil than the richest.</summary>
    MoreOilThanRichest,

    /// <summary>A tank must be drained first.</summary>
    DrainFirst,

    /// <summary>A tank is empty.</summary>
    TankEmpty,

    /// <summary>Fuel boils before that.</summary>
    FuelBoils,

    /// <summary>Warming lowers the pressure, and hides no leak.</summary>
    WarmingHidesLeak,

    /// <summary>No voltage is left at an injector.</summary>
    NoVoltageLeft,

    /// <summary>The wiring takes the whole voltage.</summary>
    WiringTakesAll,

    /// <summary>Sources without resistance set one voltage twice.</summary>
    SourcesInALoop,

    /// <summary>No current flows.</summary>
    NoCurrent,

    /// <summary>No voltage drop is expected there.</summary>
    NoDropExpected,

    /// <summary>No wire gauge is near an area.</summary>
    NoGauge,
}
