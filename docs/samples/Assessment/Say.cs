using System.Globalization;
using UnitsNet;

namespace FuelMath.Samples.Assessment;

/// <summary>Quantities in the units of the trade, in invariant culture.</summary>
internal static class Say
{
    internal static string Verdict(Verdict.Outcome kind) =>
        kind switch
        {
            FuelMath.Verdict.Outcome.Holds => "holds",
            FuelMath.Verdict.Outcome.ActFirst => "act first",
            FuelMath.Verdict.Outcome.DoNotRun => "do not run",
            _ => "not known",
        };

    /// <summary>Which injectors a verdict is about; that a sensor fails, its findings say.</summary>
    internal static string Injectors(SystemAssessment.StateBasis basis) =>
        basis is SystemAssessment.StateBasis.AsMeasured or SystemAssessment.StateBasis.AsMeasuredUncorrected
            ? "as measured: "
            : "";

    internal static string Bar(GaugePressure pressure) => Bar(pressure.AboveAmbient);

    internal static string Bar(Pressure pressure) => Number(pressure.Bars, "0.00");

    internal static string Kilopascals(AbsolutePressure pressure) => Number(pressure.AboveVacuum.Kilopascals, "0");

    internal static string LitersPerHour(VolumeFlow flow) => Number(flow.LitersPerHour, "0.0");

    internal static string Percent(Ratio ratio) => Number(ratio.Percent, "0.0");

    internal static string Volts(ElectricPotential voltage) => Number(voltage.Volts, "0.00");

    internal static string Milliseconds(Duration duration) => Number(duration.Milliseconds, "0.000");

    /// <summary>Both bounds where the oil of a premix tells them apart.</summary>
    internal static string Mixture(Lambda? lambda, Lambda? ifOilUnburned) =>
        lambda == ifOilUnburned ? Mixture(lambda) : $"{Mixture(lambda)} to {Mixture(ifOilUnburned)}";

    internal static string Mixture(Lambda? lambda) => lambda is { } value ? value.ToString() : "-";

    /// <summary>A number that rounds to nothing carries no sign.</summary>
    internal static string Number(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.AsSpan().IndexOfAnyInRange('1', '9') < 0
            ? 0.0.ToString(format, CultureInfo.InvariantCulture)
            : text;
    }
}
