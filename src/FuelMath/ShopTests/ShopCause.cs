using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// One thing that, alone, would explain a reading that differs: how far off it would have to be, and how to tell.
/// </summary>
public sealed class ShopCause
{
    internal ShopCause(
        ShopCauseKind kind,
        string what,
        string needed,
        double departure,
        string howToTell,
        SystemState? state,
        double? misfit
    )
    {
        Kind = kind;
        What = what;
        Needed = needed;
        Departure = SiUnits.Ratio(departure);
        HowToTell = howToTell;
        State = state;
        Misfit = misfit is { } m ? SiUnits.Ratio(m) : null;
    }

    /// <summary>What kind of thing would be off.</summary>
    public ShopCauseKind Kind { get; }

    /// <summary>The same in words.</summary>
    public string What { get; }

    /// <summary>By how much, with what was expected beside it.</summary>
    public string Needed { get; }

    /// <summary>The same as a share of what was expected. It says how large the fault would be, not how likely.</summary>
    public Ratio Departure { get; }

    /// <summary>What to measure to tell it from the others, a sentence.</summary>
    public string HowToTell { get; }

    /// <summary>The system with this one thing off: what every gauge and meter would then read. Null where none was solved.</summary>
    public SystemState? State { get; }

    /// <summary>
    /// How far the added readings lie from that state, as a share of their tolerance, the worst of them; null where none was
    /// given to hold it against.
    /// </summary>
    public Ratio? Misfit { get; }

    /// <summary>Whether that state meets every added reading within its tolerance; true where none was given.</summary>
    public bool ExplainsAll => Misfit is not { } misfit || misfit.InSi() <= 1;

    /// <summary>Gives cause and amount.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{What}: {Needed}. {HowToTell}";
}
