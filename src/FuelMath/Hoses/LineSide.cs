namespace FuelMath;

/// <summary>Which side of a pump a line is on.</summary>
public enum LineSide
{
    /// <summary>Ahead of the pump, where lost pressure makes vapor.</summary>
    Suction,

    /// <summary>Behind the pump.</summary>
    Delivery,
}
