using FuelMath.Formulas;
using FuelMath.Internal;
using FuelMath.Quantities;
using FuelMath.Scalars;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>Air and fuel of one cylinder or rotor in one working cycle.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class ChamberMixture
{
    internal ChamberMixture(int chamber, Mass air, Mass fuel, Lambda? lambda)
    {
        Chamber = chamber;
        Air = air;
        Fuel = fuel;
        Lambda = lambda;
    }

    /// <summary>The cylinder or rotor, counted from 1.</summary>
    public int Chamber { get; }

    /// <summary>Air in one cycle.</summary>
    public Mass Air { get; }

    /// <summary>Fuel in one cycle.</summary>
    public Mass Fuel { get; }

    /// <summary>The mixture; null when there is no fuel.</summary>
    public Lambda? Lambda { get; }

    /// <summary>The mixture of a chamber, counted from 1; masses in kg.</summary>
    internal static ChamberMixture Of(int chamber, double air, double fuel, double stoichiometric) =>
        new(chamber, SiUnits.Mass(air), SiUnits.Mass(fuel), MeanOf([air], [fuel], stoichiometric));

    /// <summary>Lambda as one sensor behind chambers sees it; null when they get no fuel.</summary>
    internal static Lambda? MeanOf(ReadOnlySpan<double> air, ReadOnlySpan<double> fuel, double stoichiometric)
    {
        Span<Real> airs = stackalloc Real[air.Length];
        Span<Real> fuels = stackalloc Real[fuel.Length];
        double total = 0;
        for (int i = 0; i < air.Length; i++)
        {
            (airs[i], fuels[i]) = (new Real(air[i]), new Real(fuel[i]));
            total += fuel[i];
        }

        return total > 0
            ? Quantities.Lambda.FromRatio(MixtureError.MeanLambda<Real>(airs, fuels, new Real(stoichiometric)).Value)
            : null;
    }
}
