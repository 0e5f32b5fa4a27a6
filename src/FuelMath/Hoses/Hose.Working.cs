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
    /// <returns>The working; what was given in a usual unit is shown in it. <see cref="WorkingUnits.In"/> chooses that of the result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside what is allowed, or the flow in a coil is faster than its law was measured for.
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
