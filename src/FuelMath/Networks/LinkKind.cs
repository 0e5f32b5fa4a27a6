namespace FuelMath;

/// <summary>What a link is.</summary>
public enum LinkKind
{
    /// <summary>A straight passage: hose, tube, rail.</summary>
    Pipe,

    /// <summary>A straight passage with a check valve in it.</summary>
    CheckPipe,

    /// <summary>A passage bent all along its length, such as a coiled hose.</summary>
    CurvedPipe,

    /// <summary>A short passage without length.</summary>
    Fitting,

    /// <summary>A filter or strainer.</summary>
    Filter,

    /// <summary>A pump with its check valve.</summary>
    Pump,

    /// <summary>A regulator that holds the pressure ahead of it by bypassing what is not used.</summary>
    BypassRegulator,

    /// <summary>A regulator that holds the pressure behind it by throttling.</summary>
    ReducingRegulator,

    /// <summary>A check valve.</summary>
    CheckValve,

    /// <summary>A relief valve: a spring-loaded way back around a pump.</summary>
    ReliefValve,

    /// <summary>An opening into a space of fixed pressure.</summary>
    Orifice,

    /// <summary>Pulsed injectors that hold a commanded flow as long as the pressure suffices.</summary>
    CappedOrifice,
}
