namespace FuelMath;

/// <summary>What a link is doing in a solved network.</summary>
public enum LinkCondition
{
    /// <summary>Pipe, fitting, filter, check valve, relief valve, orifice: it lets flow through.</summary>
    Open,

    /// <summary>Check valve, relief valve, one-way pipe or orifice, injectors commanded shut: nothing flows.</summary>
    Shut,

    /// <summary>Pump: it delivers.</summary>
    Running,

    /// <summary>
    /// Pump: it runs against a closed line. Nothing flows, and behind it stands the pressure that it gives at no flow.
    /// </summary>
    DeadHeaded,

    /// <summary>Pump: the pressure against it is above what it can give, and its check valve is shut.</summary>
    Stalled,

    /// <summary>Pump: its switch lets it stand still.</summary>
    Stopped,

    /// <summary>
    /// Regulator: shut. A bypass regulator because the pressure ahead of it is below its set point; a reducing one because
    /// the pressure behind it is above.
    /// </summary>
    Seated,

    /// <summary>Regulator: it holds its set point.</summary>
    Regulating,

    /// <summary>
    /// Regulator: open to its stop. The pressure ahead of a bypass regulator is above its set point; the one behind a
    /// reducing regulator is below.
    /// </summary>
    FullyOpen,

    /// <summary>Capped orifice: it delivers the commanded flow.</summary>
    Commanded,

    /// <summary>Capped orifice: held open all the time, it delivers less than commanded.</summary>
    HeldOpen,
}
