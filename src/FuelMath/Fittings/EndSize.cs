namespace FuelMath;

/// <summary>The properties of an end that decide what it seals with.</summary>
internal readonly record struct EndSize(
    FittingEnd.EndForm Form,
    FittingEnd.EndGender Gender,
    double Diameter,
    ScrewThread.Profile? Profile,
    double Pitch
)
{
    internal static EndSize Of(FittingEnd end) =>
        new(
            JointRules.SealForm(end.Form),
            end.Gender,
            end.Diameter.InSi(),
            end.Thread?.Form,
            end.Thread?.Pitch.InSi() ?? 0
        );
}
