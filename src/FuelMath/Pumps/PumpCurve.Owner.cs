namespace FuelMath;

/// <content>The pump that it belongs to, which its refusals name.</content>
public sealed partial class PumpCurve
{
    // Set in the copy that belongs to a pump, and never after.
    private string? pump;

    /// <summary>The same curve of a pump, which its refusals name.</summary>
    internal PumpCurve Of(string pump)
    {
        if (this.pump == pump)
        {
            return this;
        }

        var owned = (PumpCurve)MemberwiseClone();
        owned.pump = pump;
        return owned;
    }

    /// <summary>Its name in refusals.</summary>
    private RefusalText Name
    {
        get
        {
            if (pump is null)
            {
                return $"Pump curve at {Voltage:voltage}";
            }

            return $"Pump '{pump:part}' at {Voltage:voltage}";
        }
    }
}
