using UnitsNet;

namespace FuelMath;

/// <summary>A screw thread.</summary>
internal static class ScrewThreadShape
{
    private static readonly ValueProperty<ScrewThread, string> Designation = new(
        "designation",
        "What it is called, such as M10x1.",
        TextShape.Name,
        t => t.Designation
    );

    private static readonly ValueProperty<ScrewThread, ThreadForm> Profile = new(
        "profile",
        "Its profile.",
        new ChoiceShape<ThreadForm>(
            ("unified", ThreadForm.Unified),
            ("metric", ThreadForm.Metric),
            ("American taper pipe", ThreadForm.AmericanPipeTaper),
            ("Whitworth parallel pipe", ThreadForm.WhitworthPipeParallel),
            ("Whitworth taper pipe", ThreadForm.WhitworthPipeTaper)
        ),
        t => t.Form
    )
    {
        Parameter = "form",
    };

    private static readonly ValueProperty<ScrewThread, Length> MajorDiameter = new(
        "majorDiameter",
        "Its major diameter; of a taper thread that of its pipe or gauge plane.",
        QuantityShapes.SmallLength,
        t => t.MajorDiameter
    );

    private static readonly ValueProperty<ScrewThread, Length> Pitch = new(
        "pitch",
        "Distance from thread to thread.",
        QuantityShapes.SmallLength,
        t => t.Pitch
    );

    internal static ObjectShape<ScrewThread> Shape { get; } =
        new(
            "screw-thread",
            "A screw thread.",
            [Designation, Profile, MajorDiameter, Pitch],
            f => new(f.Of(Designation), f.Of(Profile), f.Of(MajorDiameter), f.Of(Pitch))
        );
}
