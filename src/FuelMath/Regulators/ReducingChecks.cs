using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>Checks of the bench readings of a reducing regulator, with the reason in the message.</summary>
internal static class ReducingChecks
{
    /// <summary>
    /// The fall of the held pressure with flow, Pa/(m³/s), from two readings, converted to one supply pressure.
    /// </summary>
    internal static double Droop(
        ReducingRegulator.BenchReading first,
        ReducingRegulator.BenchReading second,
        double influence,
        string paramName,
        string regulator
    )
    {
        (double firstFlow, double secondFlow) = (first.Flow.InSi(), second.Flow.InSi());
        if (!(Math.Abs(secondFlow - firstFlow) > Guard.EdgeTolerance * Math.Max(secondFlow, firstFlow)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Two readings at different flows are needed; both were at {first.Flow:value}.",
                paramName,
                regulator
            );
        }

        double AtNoSupply(ReducingRegulator.BenchReading reading) =>
            reading.DifferentialPressure.InSi() + (influence * reading.Supply.Si);
        double droop = (AtNoSupply(first) - AtNoSupply(second)) / (secondFlow - firstFlow);
        return droop >= 0
            ? droop
            : throw new RefusedArgumentException(
                RefusalCode.MustNotRise,
                $"At one supply the held pressure must not rise with flow, because such a regulator hunts; it was {first.DifferentialPressure:pressure} at {first.Flow:flow} from {first.Supply:supply} and {second.DifferentialPressure:secondPressure} at {second.Flow:secondFlow} from {second.Supply:secondSupply}.",
                paramName,
                regulator
            );
    }

    /// <summary>
    /// Refuses a reading that the supply could not reach, which can't have been taken while regulating.
    /// </summary>
    internal static void NotStarved(
        ReducingRegulator.BenchReading reading,
        double openLoss,
        string regulator,
        [CallerArgumentExpression(nameof(reading))] string paramName = ""
    )
    {
        double left = reading.Supply.Si - openLoss;
        if (!(left > reading.DifferentialPressure.InSi()))
        {
            throw new RefusedArgumentException(
                RefusalCode.OpenToItsStop,
                $"A reading of {reading.DifferentialPressure:value} at {reading.Flow:flow} from {reading.Supply:supply} can't be, because open to its stop it would leave no more than {SiUnits.Pressure(left).ToUnit(reading.DifferentialPressure.Unit):below}.",
                paramName,
                regulator
            );
        }
    }
}
