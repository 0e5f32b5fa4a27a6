namespace FuelMath.ShopTests;

/// <summary>A single fault of variable size within the model of the system.</summary>
/// <param name="most">The largest amount tried.</param>
/// <param name="alter">The system and the operating point with a fault of an amount greater than zero.</param>
internal sealed class ShopFault(double most, Func<double, (FuelSystem System, OperatingPoint Point)> alter)
{
    /// <summary>Steps from no fault to the largest, short at first.</summary>
    private const int Steps = 20;

    /// <summary>Rounds of a search in one step, enough for bisection down to the accuracy of a solve.</summary>
    private const int Rounds = 50;

    /// <summary>The width of a search, relative to the largest amount, that counts as converged.</summary>
    private const double Near = 1e-13;

    /// <summary>The golden section.</summary>
    private const double Golden = 0.6180339887498949;

    /// <summary>The amount that explains a reading, and the state there; null where the data end before.</summary>
    /// <param name="sound">The state without a fault.</param>
    /// <param name="departure">The reading of an amount and its state minus the measured one.</param>
    internal (double Amount, SystemState State)? Explaining(
        SystemState sound,
        Func<double, SystemState, double> departure
    )
    {
        double sign = Math.Sign(departure(0, sound));
        Trial Try(double amount) => Of(amount, sign, departure);
        var before = new Trial(0, sound, sign * departure(0, sound));
        Trial last = before;
        for (int i = 1; i <= Steps; i++)
        {
            Trial next = Try(most * i * i / (Steps * Steps));
            if (!next.IsShort)
            {
                // Met within this step, or the data end in it: then search up to their end.
                return Met(last, next, Try);
            }

            if (next.Off > last.Off && last.Off < before.Off && Lowest(before.Amount, next.Amount, Try) is { } low)
            {
                // A non-monotonic reading, as a restricted return first lowers and then raises the rail pressure.
                return Met(before, low, Try);
            }

            (before, last) = (last, next);
        }

        return null;
    }

    private Trial Of(double amount, double sign, Func<double, SystemState, double> departure)
    {
        (FuelSystem system, OperatingPoint point) = alter(amount);
        try
        {
            SystemState state = system.Solve(point);
            return new(amount, state, sign * departure(amount, state));
        }
        catch (Exception refused) when (refused is IRefusal)
        {
            return new(amount, null, double.NaN);
        }
    }

    /// <summary>
    /// Where the reading reaches the measured one between two amounts that do not; null where it does not.
    /// </summary>
    private static Trial? Lowest(double low, double high, Func<double, Trial> at)
    {
        for (int i = 0; i < Rounds && high - low > 1e-6 * high; i++)
        {
            Trial left = at(high - (Golden * (high - low)));
            Trial right = at(low + (Golden * (high - low)));
            if (!left.IsShort || !right.IsShort)
            {
                return left.IsShort ? right : left;
            }

            (low, high) = left.Off < right.Off ? (low, right.Amount) : (left.Amount, high);
        }

        return null;
    }

    /// <summary>
    /// Regula falsi with the Illinois modification, between an amount that falls short and one that reaches the reading
    /// or has no state.
    /// </summary>
    private (double Amount, SystemState State)? Met(Trial low, Trial high, Func<double, Trial> at)
    {
        (double lowOff, double highOff) = (low.Off, high.Off);
        for (int i = 0; i < Rounds && high.Amount - low.Amount > Near * most && high.Off != 0; i++)
        {
            double share = high.State is null ? 0.5 : lowOff / (lowOff - highOff);
            Trial middle = at(low.Amount + (Math.Clamp(share, 1e-9, 1 - 1e-9) * (high.Amount - low.Amount)));
            if (middle.IsShort)
            {
                (low, lowOff, highOff) = (middle, middle.Off, highOff / 2);
            }
            else
            {
                (high, highOff, lowOff) = (middle, middle.Off, lowOff / 2);
            }
        }

        // Where the data end first, the search stops at their end and the reading is not met.
        return high.State is { } state ? (high.Amount, state) : null;
    }

    /// <summary>An amount, its state, and how far it falls short of the reading; NaN without a state.</summary>
    private readonly struct Trial(double amount, SystemState? state, double off)
    {
        internal double Amount { get; } = amount;

        internal SystemState? State { get; } = state;

        internal double Off { get; } = off;

        internal bool IsShort => Off > 0;
    }
}
