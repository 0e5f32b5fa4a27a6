using System.Globalization;

namespace FuelMath;

/// <summary>How a trial's inputs differ from the description. Immutable once it is handed out.</summary>
internal sealed class InputShifts
{
    internal InputShifts(int seats)
    {
        InjectorFlow = new double[seats];
        Array.Fill(InjectorFlow, 1);
    }

    /// <summary>Factor on the static flow of each injector.</summary>
    internal double[] InjectorFlow { get; }

    /// <summary>Difference added to all dead times, s.</summary>
    internal double DeadTime { get; set; }

    /// <summary>Factor on the flow of all pumps.</summary>
    internal double PumpFlow { get; set; } = 1;

    /// <summary>Difference added to the pressures held by all regulators, Pa.</summary>
    internal double SetPoint { get; set; }

    /// <summary>Factor on the fuel's density.</summary>
    internal double Density { get; set; } = 1;

    /// <summary>Refuses impossible shifts.</summary>
    /// <exception cref="NoSolutionException">A factor is not greater than zero.</exception>
    internal InputShifts Checked()
    {
        foreach (double scale in InjectorFlow)
        {
            Positive(scale, "injector flow");
        }

        Positive(PumpFlow, "pump flow");
        Positive(Density, "fuel density");
        return this;
    }

    private static void Positive(double scale, string what)
    {
        if (!(scale > 0))
        {
            throw Guard.NoSolution(
                RefusalCode.EstimateNegative,
                "a trial",
                $"the {what:subject} that was drawn must be greater than {0:above}; it was {scale:value} of its nominal value."
            );
        }
    }
}
