using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Checks of the bench readings of a regulator, with the reason in the message.</summary>
internal static class ReadingChecks
{
    /// <summary>The areas in m², with a seat smaller than the diaphragm.</summary>
    internal static (double Diaphragm, double Seat) Areas(Area diaphragm, Area seat)
    {
        double whole = Guard.Positive(diaphragm, diaphragm.InSi());
        double part = Guard.Positive(seat, seat.InSi());
        return part < whole
            ? (whole, part)
            : throw Guard.OutOfRange(seat, $"smaller than the diaphragm, {diaphragm:below}");
    }

    /// <summary>Loss per density and flow squared, 1/m⁴.</summary>
    internal static double OpenCoefficient(
        RegulatorMechanics.Restriction restriction,
        [CallerArgumentExpression(nameof(restriction))] string paramName = ""
    )
    {
        double flow = Guard.Positive(restriction.Flow, restriction.Flow.InSi(), paramName);
        return BypassValve
            .FullyOpenCoefficient(
                new Real(restriction.PressureLoss.InSi()),
                new Real(restriction.Density.InSi()),
                new Real(flow)
            )
            .Value;
    }

    internal static RegulatorReference Known(
        RegulatorReference reference,
        string regulator,
        [CallerArgumentExpression(nameof(reference))] string paramName = ""
    ) => Enum.IsDefined(reference) ? reference : throw Guard.NoChoice(reference, paramName, regulator);

    /// <summary>The rise of the held pressure with flow, Pa/(m³/s), from two readings.</summary>
    internal static double Slope(
        BypassRegulator.BenchReading first,
        BypassRegulator.BenchReading second,
        string paramName,
        string regulator
    )
    {
        (double firstFlow, double secondFlow) = (first.BypassedFlow.InSi(), second.BypassedFlow.InSi());
        if (!(Math.Abs(secondFlow - firstFlow) > Guard.EdgeTolerance * Math.Max(secondFlow, firstFlow)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Two readings at different bypassed flows are needed; both were at {first.BypassedFlow:value}.",
                paramName,
                regulator
            );
        }

        (double firstRise, double secondRise) = (first.DifferentialPressure.InSi(), second.DifferentialPressure.InSi());
        double slope = (secondRise - firstRise) / (secondFlow - firstFlow);
        if (slope < 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.MustNotFall,
                $"The held pressure must not fall as the bypassed flow rises, because such a regulator hunts; it was {first.DifferentialPressure:pressure} at {first.BypassedFlow:flow} and {second.DifferentialPressure:secondPressure} at {second.BypassedFlow:secondFlow}.",
                paramName,
                regulator
            );
        }

        double opening = firstRise - (slope * firstFlow);
        return opening > 0
            ? slope
            : throw new RefusedArgumentException(
                RefusalCode.OpensBelowReference,
                $"{first.DifferentialPressure:pressure} at {first.BypassedFlow:flow} and {second.DifferentialPressure:secondPressure} at {second.BypassedFlow:secondFlow} would put the pressure at no flow at {SiUnits.Pressure(opening).ToUnit(first.DifferentialPressure.Unit):value}; it must lie above the reference.",
                paramName,
                regulator
            );
    }

    /// <summary>
    /// Refuses a reading below the loss of the open passage, which can't have been taken while regulating.
    /// </summary>
    internal static void NotFullyOpen(
        BypassRegulator.BenchReading reading,
        double openLoss,
        string regulator,
        [CallerArgumentExpression(nameof(reading))] string paramName = ""
    )
    {
        if (openLoss >= reading.DifferentialPressure.InSi())
        {
            throw new RefusedArgumentException(
                RefusalCode.OpenToItsStop,
                $"A reading of {reading.DifferentialPressure:value} at {reading.BypassedFlow:flow} can't be, because open to its stop it would already lose {SiUnits.Pressure(openLoss).ToUnit(reading.DifferentialPressure.Unit):above} at that flow.",
                paramName,
                regulator
            );
        }
    }
}
