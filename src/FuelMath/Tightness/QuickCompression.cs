using FuelMath.Formulas;

namespace FuelMath.ShopTests;

/// <summary>A closed volume that is pressurized from ambient, slowly (isothermal) or quickly (adiabatic).</summary>
internal static class QuickCompression
{
    /// <summary>
    /// Upper bound of isentropic over isothermal bulk modulus: fuels lie from 1.2 to 1.35. Source: [Poling-2001]
    /// relations of heat capacity and compressibility.
    /// </summary>
    private const double MostQuickShare = 1.35;

    /// <summary>The volume to press in from ambient to a gauge pressure, in a slow or an adiabatic change.</summary>
    internal static double PressedIn(ClosedVolume volume, double gauge, bool keepsHeat) =>
        PressureRise
            .PressedInVolume(
                new Real(volume.Liquid),
                new Real(keepsHeat ? Modulus(volume) : volume.Modulus),
                new Real(volume.Swells),
                new Real(volume.Gas / volume.Outside),
                new Real(volume.Outside),
                new Real(gauge + volume.Outside),
                new Real(keepsHeat ? PressureRise.AdiabaticExponentOfAir : 1)
            )
            .Value;

    /// <summary>
    /// The compliance at a gauge pressure during pressurization from ambient, with another gas content, m³ at ambient.
    /// </summary>
    internal static double Compliance(ClosedVolume volume, double gasAtAmbient, double gauge, bool keepsHeat) =>
        PressureRise
            .Compliance(
                new Real(volume.Liquid),
                new Real(keepsHeat ? Modulus(volume) : volume.Modulus),
                new Real(volume.Swells),
                new Real(gasAtAmbient),
                new Real(volume.Outside),
                new Real(gauge + volume.Outside),
                new Real(keepsHeat ? PressureRise.AdiabaticExponentOfAir : 1)
            )
            .Value;

    /// <summary>The isentropic bulk modulus where the heat capacity is known, else its upper bound, Pa.</summary>
    private static double Modulus(ClosedVolume volume)
    {
        LiquidHeatCapacity heat = volume.Fuel.HeatCapacity;
        bool known = heat.IsKnown && volume.Kelvins >= heat.Law.Lowest && volume.Kelvins <= heat.Law.Highest;
        return known
            ? LiquidElasticity
                .IsentropicModulus(
                    new Real(volume.Modulus),
                    new Real(volume.FuelExpands),
                    new Real(volume.Fuel.DensityAt(volume.Temperature).InSi()),
                    new Real(heat.Law.At(volume.Temperature)),
                    new Real(volume.Kelvins)
                )
                .Value
            : MostQuickShare * volume.Modulus;
    }
}
