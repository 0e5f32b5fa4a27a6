using UnitsNet;

namespace FuelMath;

/// <summary>A test that tells two causes apart, with what either predicts.</summary>
/// <remarks>
/// Caution: keep to pressures that every part allows, to light load, and to a mixture no leaner than intended.
/// </remarks>
public sealed class DecidingTest
{
    internal DecidingTest(
        DecidingTestKind kind,
        string what,
        string? point,
        int? chamber,
        Ratio? ifThis,
        Ratio? ifOther,
        Ratio? separation
    )
    {
        (Kind, What, Point, Chamber) = (kind, what, point, chamber);
        (FactorIfThis, FactorIfOther, Separation) = (ifThis, ifOther, separation);
    }

    /// <summary>Which test.</summary>
    public DecidingTestKind Kind { get; }

    /// <summary>What to do and what to look for.</summary>
    public string What { get; }

    /// <summary>The observation to repeat, where the two differ most; null for a measurement without the engine.</summary>
    public string? Point { get; }

    /// <summary>The chamber to read there, counted from 1; null where none is.</summary>
    public int? Chamber { get; }

    /// <summary>Lambda over the one aimed at that this cause predicts there, with the correction as it was; null where nothing is predicted.</summary>
    public Ratio? FactorIfThis { get; }

    /// <summary>Lambda over the one aimed at that the other cause predicts there; null where nothing is predicted.</summary>
    public Ratio? FactorIfOther { get; }

    /// <summary>How far the two lie apart, in standard uncertainties of that reading; null where nothing is predicted.</summary>
    public Ratio? Separation { get; }
}
