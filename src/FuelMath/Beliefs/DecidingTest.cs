using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>A test that tells two causes apart, with what either predicts.</summary>
/// <remarks>
/// Caution: keep to pressures that every part allows, to light load, and to a mixture no leaner than intended. Immutable
/// and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class DecidingTest
{
    internal DecidingTest(
        DecidingTestKind kind,
        string what,
        string? point,
        Ratio? ifThis,
        Ratio? ifOther,
        Ratio? separation
    ) =>
        (Kind, What, Point, FactorIfThis, FactorIfOther, Separation) = (kind, what, point, ifThis, ifOther, separation);

    /// <summary>Which test.</summary>
    public DecidingTestKind Kind { get; }

    /// <summary>What to do and what to look for.</summary>
    public string What { get; }

    /// <summary>The observation to repeat, where the two differ most; null for a measurement without the engine.</summary>
    public string? Point { get; }

    /// <summary>The factor that this cause predicts there; null for a measurement without the engine.</summary>
    public Ratio? FactorIfThis { get; }

    /// <summary>The factor that the other cause predicts there; null for a measurement without the engine.</summary>
    public Ratio? FactorIfOther { get; }

    /// <summary>How far the two lie apart, in standard uncertainties of that observation; null for a measurement without the engine.</summary>
    public Ratio? Separation { get; }
}
