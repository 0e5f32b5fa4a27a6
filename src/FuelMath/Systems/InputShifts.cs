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

    /// <summary>What the static flow of each injector is multiplied by.</summary>
    internal double[] InjectorFlow { get; }

    /// <summary>What is added to all dead times, s.</summary>
    internal double DeadTime { get; set; }

    /// <summary>What the flow of all pumps is multiplied by.</summary>
    internal double PumpFlow { get; set; } = 1;

    /// <summary>What is added to what all regulators hold, Pa.</summary>
    internal double SetPoint { get; set; }

    /// <summary>What the fuel's density is multiplied by.</summary>
    internal double Density { get; set; } = 1;

    /// <summary>Refuses what cannot be.</summary>
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
                "a trial",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the {what} that was drawn must be greater than zero; it was {scale:0.####} of its nominal value."
                )
            );
        }
    }
}
