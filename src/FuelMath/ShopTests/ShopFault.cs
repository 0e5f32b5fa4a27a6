namespace FuelMath.ShopTests;

/// <summary>One thing that is off by some amount, as the model of the system has it.</summary>
/// <param name="most">The largest amount that is looked at.</param>
/// <param name="alter">The system, and the point, that are off by an amount greater than zero.</param>
internal sealed class ShopFault(double most, Func<double, (FuelSystem System, OperatingPoint Point)> alter)
{
    /// <summary>Steps from no fault to the largest, short at first.</summary>
    private const int Steps = 20;

    /// <summary>Rounds of a search in one step, enough to halve it to a digit that no solve can tell.</summary>
    private const int Rounds = 50;

    /// <summary>How near, as a share of the largest amount, the two ends of a search count as one.</summary>
    private const double Near = 1e-13;

    /// <summary>The golden section.</summary>
    private const double Golden = 0.6180339887498949;

    /// <summary>The amount at which a reading is met, and the state there; null where the data end before.</summary>
    /// <param name="sound">The state without a fault.</param>
    /// <param name="departure">What an amount and its state read, less what was measured; zero where the reading is met.</param>
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
                // Met within this step, or the data end in it: then look on the way to their end.
                return Met(last, next, Try);
            }

            if (next.Off > last.Off && last.Off < before.Off && Lowest(before.Amount, next.Amount, Try) is { } low)
            {
                // A reading that turns round, as a choked return first lowers and then lifts the rail.
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

    /// <summary>Where a reading meets or passes the measured one between two amounts that do not; null where it does not.</summary>
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

    /// <summary>Regula falsi, its standing end halved, between an amount that falls short and one that meets or has no state.</summary>
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

        // Where the data end first, the search stands at their end and the reading is not met.
        return high.State is { } state ? (high.Amount, state) : null;
    }

    /// <summary>An amount, its state, and how far it falls short of the reading; not a number without a state.</summary>
    private readonly struct Trial(double amount, SystemState? state, double off)
    {
        internal double Amount { get; } = amount;

        internal SystemState? State { get; } = state;

        internal double Off { get; } = off;

        internal bool IsShort => Off > 0;
    }
}
