using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <content>How its answers are made, step by step.</content>
public sealed partial class Hose
{
    /// <summary>The working of the pressure lost: formula, inserted values, result, source.</summary>
    /// <param name="flow">Volume flow; the loss has its sign.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>
    /// The working; inputs are shown in their own units. <see cref="WorkingUnits.In"/> sets that of the result.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="density"/> or <paramref name="viscosity"/> is not greater than zero, or the flow in a coil
    /// exceeds the range of its friction law.
    /// </exception>
    public Working LossWorkingAt(VolumeFlow flow, Density density, DynamicViscosity viscosity)
    {
        (double rate, double rho, double mu) = Checked(flow, density, viscosity);
        return RoundLoss
            .Of(
                ReaderUnits.Input(Symbols.VolumeFlow, flow, rate),
                ReaderUnits.Input(Symbols.Bore, Bore, bore),
                ReaderUnits.Input(Symbols.Length, Length, length),
                ReaderUnits.Input(Symbols.Roughness, Roughness, roughness),
                ReaderUnits.Input(Symbols.LossCoefficient, LossCoefficient, coefficient),
                coil is { } bent ? ReaderUnits.Input(RoundLoss.CoilDiameter, CoilDiameter!.Value, bent) : null,
                ReaderUnits.Input(Symbols.Density, density, rho),
                ReaderUnits.Input(Symbols.DynamicViscosity, viscosity, mu)
            )
            .ToWorking();
    }
}
