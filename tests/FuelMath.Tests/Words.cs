using FuelMath.Tests.Refusals;

namespace FuelMath.Tests;

/// <summary>What a refusal says: exception, parameter, numbers and names as data, whatever its sentence.</summary>
internal static class Words
{
    /// <summary>
    /// Passes when the action is refused with this exception and parameter, and the numbers and quoted names of a text are data
    /// of the refusal. Other words of the text only tell the reader what is meant.
    /// </summary>
    internal static T Refused<T>(string paramName, string facts, Action action)
        where T : ArgumentException
    {
        T error = Assert.Throws<T>(action);
        Assert.Equal(paramName, error.ParamName);
        Assert.Equal([], German.Lacks(Refusal.Of(error)!, facts));
        return error;
    }

    /// <summary>Passes when the action is refused with this exception and parameter.</summary>
    internal static T Refused<T>(string paramName, Action action)
        where T : ArgumentException => Refused<T>(paramName, "", action);

    /// <summary>Passes when the numbers and quoted names of a text are data of a refusal.</summary>
    internal static void Says(string facts, Exception error) =>
        Assert.Equal([], German.Lacks(Refusal.Of(error)!, facts));

    /// <summary>Passes when a table is asked outside its range, with these numbers and names.</summary>
    internal static OutsideTableException OutsideTable(string facts, Action action)
    {
        OutsideTableException error = Assert.Throws<OutsideTableException>(action);
        Assert.Equal([], German.Lacks(Refusal.Of(error)!, facts));
        return error;
    }
}
