namespace FuelMath;

/// <content>A regulator of which only the set point is known.</content>
public sealed partial class BypassRegulator
{
    /// <summary>
    /// A regulator of which only the set point is known. Everything else is an estimate, and findings and evidence say so: the
    /// held pressure rises by 5 kPa for each 100 L/h that it passes (1 kPa to 25 kPa are met), and
    /// <see cref="RegulatorMechanics.Estimated"/>. Source: [Common-practice] no single work.
    /// </summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="setPoint">The reading at which it was set.</param>
    /// <param name="reference">What acts on the spring side of the diaphragm.</param>
    /// <param name="source">Where the set point comes from.</param>
    /// <returns>The regulator.</returns>
    /// <exception cref="ArgumentException">The name is blank, or the set point contradicts the estimate.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public static BypassRegulator FromSetPoint(
        string name,
        BenchReading setPoint,
        RegulatorReference reference,
        DataSource source
    ) =>
        new BypassRegulator(
            name,
            setPoint,
            new(
                SiUnits.Pressure(setPoint.DifferentialPressure.InSi() + RegulatorMechanics.UsualStepSi),
                SiUnits.VolumeFlow(setPoint.BypassedFlow.InSi() + RegulatorMechanics.UsualStepFlowSi)
            ),
            RegulatorMechanics.Estimated,
            reference,
            source
        ).AsEstimate($"5 kPa for each 100 L/h, {RegulatorMechanics.Estimated.EstimateBasis}");

    /// <summary>The same regulator, marked as an estimate: results that depend on it say so.</summary>
    /// <param name="basis">What of it is an estimate, and on what basis, one clause; not blank.</param>
    /// <returns>The regulator.</returns>
    /// <exception cref="ArgumentException"><paramref name="basis"/> is blank.</exception>
    public BypassRegulator AsEstimate(string basis) =>
        new(Name, SetPoint, SecondReading, Mechanics, Reference, Source)
        {
            referenceRatio = referenceRatio,
            EstimateBasis = Guard.Name(basis, part: Name),
        };
}
