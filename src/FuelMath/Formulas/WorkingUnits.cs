namespace FuelMath.Formulas;

/// <summary>Workings in the reader's units.</summary>
/// <seealso href="../guide/workings.html">Ways to a working</seealso>
public static class WorkingUnits
{
    /// <summary>Returns the working with its result converted to a unit.</summary>
    /// <param name="working">The working.</param>
    /// <param name="unit">The unit wanted, of the kind of the result: <c>cm3/min</c> where that is in m³/s.</param>
    /// <returns>The working; its value stays in the SI unit.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of the result.</exception>
    public static Working In(this Working working, string unit)
    {
        ArgumentNullException.ThrowIfNull(working);
        ArgumentNullException.ThrowIfNull(unit);
        UnitKind[] kinds = [.. ReaderUnits.KindsOf(working.ResultUnit)];
        FuelMath.Unit? found = kinds.Select(k => k.Find(unit)).FirstOrDefault(u => u is not null);
        return found is not null
            ? working.EndingIn(ReaderUnits.Traceable(found))
            : throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be a unit that {working.ResultUnit:resultUnit} is converted to ({kinds.SelectMany(k => k.Units).Select(u => u.Symbol).Distinct():allowed}); it was \"{unit:given}\".",
                nameof(unit)
            );
    }
}
