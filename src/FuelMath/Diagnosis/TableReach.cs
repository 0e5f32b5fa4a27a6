namespace FuelMath;

/// <summary>Which data of an injector do not reach a pressure.</summary>
internal static class TableReach
{
    /// <summary>
    /// A sentence on data of an injector that do not reach a pressure and refuse it; null when all reach it.
    /// </summary>
    internal static string? Beyond(Injector injector, double pressure)
    {
        if (injector.DeadTime is { DependsOnPressure: true, Outside: OutsideRange.Refuse } table)
        {
            (double low, double high) = (table.DifferentialPressures[0].InSi(), table.DifferentialPressures[^1].InSi());
            if (!Guard.IsWithin(pressure, low, high))
            {
                return $"The dead-time table of '{injector.Name}' reaches from {Show.Bar(low)} to {Show.Bar(high)} and was held at its end for {Show.Bar(pressure)}.";
            }
        }

        if (injector.Rating.Exponent is { Outside: OutsideRange.Refuse } exponent)
        {
            (double low, double high) = (
                exponent.LowestDifferentialPressure.InSi(),
                exponent.HighestDifferentialPressure.InSi()
            );
            if (!Guard.IsWithin(pressure, low, high))
            {
                return $"The power of pressure of '{injector.Name}' was measured from {Show.Bar(low)} to {Show.Bar(high)} and carried on to {Show.Bar(pressure)}.";
            }
        }

        return null;
    }
}
