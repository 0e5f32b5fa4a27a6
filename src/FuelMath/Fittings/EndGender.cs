namespace FuelMath;

/// <summary>Whether an end goes into another or around it. Of threaded ends it is that of the thread.</summary>
public enum EndGender
{
    /// <summary>Goes into the other: outside thread, tube end, barb.</summary>
    Male,

    /// <summary>Goes around the other: inside thread, port, nut, coupler, hose.</summary>
    Female,
}
