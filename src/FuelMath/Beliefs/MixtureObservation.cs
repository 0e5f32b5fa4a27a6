using FuelMath.Internal;
using FuelMath.Quantities;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>What a running engine showed at one point: the pulse that was commanded, the correction in it, and lambda.</summary>
/// <remarks>
/// Correction times observed lambda over intended lambda is the factor by which the belief was off there, whether a sensor
/// held the mixture or nobody did. Immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class MixtureObservation
{
    /// <summary>Sets down an observation.</summary>
    /// <param name="name">What the point is called; not blank.</param>
    /// <param name="pulseWidth">The width that was commanded, corrections included.</param>
    /// <param name="believedDeadTime">The dead time that the controller added in it; less than the width.</param>
    /// <param name="believedDifferentialPressure">The pressure across the injectors that the controller reckoned with; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <param name="ambient">Absolute ambient pressure; greater than zero.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="correction">The factor on the fuel that was applied; 100 % for none.</param>
    /// <param name="observed">Lambda as the sensor showed it, settled.</param>
    /// <param name="target">Lambda as it was intended.</param>
    /// <param name="relativeUncertainty">Standard uncertainty of correction times lambda, as a share; above 0 % and up to 50 %.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public MixtureObservation(
        string name,
        Duration pulseWidth,
        Duration believedDeadTime,
        Pressure believedDifferentialPressure,
        AbsolutePressure manifold,
        AbsolutePressure ambient,
        RotationalSpeed speed,
        Ratio correction,
        Lambda observed,
        Lambda target,
        Ratio relativeUncertainty
    )
    {
        Name = Guard.Name(name, nameof(name));
        double dead = Guard.NotNegative(believedDeadTime, believedDeadTime.InSi(), nameof(believedDeadTime));
        WidthSi = Guard.Finite(pulseWidth, pulseWidth.InSi(), nameof(pulseWidth)) - dead;
        if (!(WidthSi > 0))
        {
            throw Guard.OutOfRange(
                pulseWidth,
                $"longer than the dead time that was added, {Guard.Show(believedDeadTime, believedDeadTime.Unit)}",
                nameof(pulseWidth)
            );
        }

        PressureSi = Guard.Positive(
            believedDifferentialPressure,
            believedDifferentialPressure.InSi(),
            nameof(believedDifferentialPressure)
        );
        Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
        Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient));
        Guard.Positive(speed, speed.InSi(), nameof(speed));
        FactorSi =
            Guard.Positive(correction, correction.InSi(), nameof(correction))
            * Guard.Positive(observed.Si, nameof(observed))
            / Guard.Positive(target.Si, nameof(target));
        Guard.Positive(relativeUncertainty, relativeUncertainty.InSi(), nameof(relativeUncertainty));
        UncertaintySi = Guard.InRange(
            relativeUncertainty,
            relativeUncertainty.InSi(),
            0,
            0.5,
            SiUnits.Ratio,
            nameof(relativeUncertainty)
        );
        (Manifold, Ambient, Speed) = (manifold, ambient, speed);
    }

    /// <summary>What the point is called.</summary>
    public string Name { get; }

    /// <summary>Commanded width less the dead time believed, in s.</summary>
    public Duration EffectiveWidth => SiUnits.Duration(WidthSi);

    /// <summary>The pressure across the injectors that the controller reckoned with, in Pa.</summary>
    public Pressure BelievedDifferentialPressure => SiUnits.Pressure(PressureSi);

    /// <summary>Absolute manifold pressure.</summary>
    public AbsolutePressure Manifold { get; }

    /// <summary>Absolute ambient pressure.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>Speed of the shaft.</summary>
    public RotationalSpeed Speed { get; }

    /// <summary>The factor by which the belief was off: correction times observed over intended lambda. Above one: too lean uncorrected.</summary>
    public Ratio Factor => SiUnits.Ratio(FactorSi);

    /// <summary>Standard uncertainty of the factor, as a share of it.</summary>
    public Ratio RelativeUncertainty => SiUnits.Ratio(UncertaintySi);

    internal double WidthSi { get; private init; }

    internal double PressureSi { get; private init; }

    internal double FactorSi { get; }

    internal double UncertaintySi { get; }

    /// <summary>Manifold pressure counted from ambient, Pa.</summary>
    internal double BoostSi => Manifold.Si - Ambient.Si;

    /// <summary>An observation with a sensor that holds lambda: only the correction says something.</summary>
    /// <param name="name">What the point is called; not blank.</param>
    /// <param name="pulseWidth">The width that was commanded, corrections included.</param>
    /// <param name="believedDeadTime">The dead time that the controller added in it; less than the width.</param>
    /// <param name="believedDifferentialPressure">The pressure across the injectors that the controller reckoned with; greater than zero.</param>
    /// <param name="manifold">Absolute manifold pressure.</param>
    /// <param name="ambient">Absolute ambient pressure; greater than zero.</param>
    /// <param name="speed">Speed of the shaft; greater than zero.</param>
    /// <param name="correction">The factor on the fuel that was applied, not at its limit.</param>
    /// <param name="relativeUncertainty">Standard uncertainty of the correction, as a share; above 0 % and up to 50 %.</param>
    /// <returns>The observation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static MixtureObservation FromCorrection(
        string name,
        Duration pulseWidth,
        Duration believedDeadTime,
        Pressure believedDifferentialPressure,
        AbsolutePressure manifold,
        AbsolutePressure ambient,
        RotationalSpeed speed,
        Ratio correction,
        Ratio relativeUncertainty
    ) =>
        new(
            name,
            pulseWidth,
            believedDeadTime,
            believedDifferentialPressure,
            manifold,
            ambient,
            speed,
            correction,
            Lambda.Stoichiometric,
            Lambda.Stoichiometric,
            relativeUncertainty
        );

    /// <summary>The same point with another rail pressure that the controller is told of, or with the fuel in more pulses.</summary>
    internal MixtureObservation After(double pressureRise, double pulses) =>
        new(this)
        {
            PressureSi = PressureSi + pressureRise,
            WidthSi = WidthSi * Math.Sqrt(PressureSi / (PressureSi + pressureRise)) / pulses,
        };

    private MixtureObservation(MixtureObservation other)
    {
        (Name, Manifold, Ambient, Speed) = (other.Name, other.Manifold, other.Ambient, other.Speed);
        (FactorSi, UncertaintySi) = (other.FactorSi, other.UncertaintySi);
    }
}
