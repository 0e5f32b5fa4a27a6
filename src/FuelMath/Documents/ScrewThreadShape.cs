namespace FuelMath;

/// <summary>A screw thread.</summary>
internal static class ScrewThreadShape
{
    internal static ObjectShape<ScrewThread> Shape { get; } =
        new(o =>
        {
            o.Is("screw-thread", "A screw thread.");
            var designation = o.Required("designation", TextShape.Name, t => t.Designation)
                .Says("What it is called, such as M10x1.");
            var profile = o.Required(
                    "profile",
                    ChoiceShape.Of(
                        ("unified", ScrewThread.Profile.Unified),
                        ("metric", ScrewThread.Profile.Metric),
                        ("American taper pipe", ScrewThread.Profile.AmericanPipeTaper),
                        ("Whitworth parallel pipe", ScrewThread.Profile.WhitworthPipeParallel),
                        ("Whitworth taper pipe", ScrewThread.Profile.WhitworthPipeTaper)
                    ),
                    t => t.Form,
                    parameter: "form"
                )
                .Says("Its profile.");
            var majorDiameter = o.Required("majorDiameter", QuantityShapes.SmallLength.Positive, t => t.MajorDiameter)
                .Says("Its major diameter; of a taper thread that of its pipe or gauge plane.");
            var pitch = o.Required("pitch", QuantityShapes.SmallLength.Positive, t => t.Pitch)
                .Says("Distance from thread to thread.");
            return f => new(f.Of(designation), f.Of(profile), f.Of(majorDiameter), f.Of(pitch));
        });
}
