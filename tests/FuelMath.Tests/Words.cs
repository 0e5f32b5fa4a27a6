namespace FuelMath.Tests;

/// <summary>What a refusal says.</summary>
internal static class Words
{
    /// <summary>Passes when the action is refused with this exception, this parameter and a message that starts so.</summary>
    internal static T Refused<T>(string paramName, string words, Action action)
        where T : ArgumentException
    {
        T error = Assert.Throws<T>(action);
        Assert.StartsWith(words, error.Message, StringComparison.Ordinal);
        Assert.Equal(paramName, error.ParamName);
        return error;
    }

    /// <summary>Passes when a table is asked outside its range and says so.</summary>
    internal static OutsideTableException OutsideTable(string words, Action action)
    {
        OutsideTableException error = Assert.Throws<OutsideTableException>(action);
        Assert.StartsWith(words, error.Message, StringComparison.Ordinal);
        return error;
    }
}
