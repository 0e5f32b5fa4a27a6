namespace FuelMath;

/// <summary>The names of the forms of ends, and how each seals.</summary>
internal static class EndWords
{
    internal static bool HasThread(FittingEnd.EndForm form) =>
        form is not (FittingEnd.EndForm.QuickConnect or FittingEnd.EndForm.HoseBarb);

    internal static FittingEnd.SealKind SealOf(FittingEnd.EndForm form) =>
        form switch
        {
            FittingEnd.EndForm.Flare37 => FittingEnd.SealKind.MetalCones,
            FittingEnd.EndForm.ORingBoss or FittingEnd.EndForm.MetricORingPort => FittingEnd.SealKind.ORingInChamfer,
            FittingEnd.EndForm.PipeTaper or FittingEnd.EndForm.PipeTaperWhitworth => FittingEnd
                .SealKind
                .ThreadsWithSealant,
            FittingEnd.EndForm.PipeTaperDryseal => FittingEnd.SealKind.CrushedThreads,
            FittingEnd.EndForm.QuickConnect => FittingEnd.SealKind.ORingsOnTube,
            FittingEnd.EndForm.HoseBarb => FittingEnd.SealKind.ClampedHose,
            FittingEnd.EndForm.Banjo => FittingEnd.SealKind.WashersOnFaces,
            FittingEnd.EndForm.PipeParallelBonded => FittingEnd.SealKind.BondedWasher,
            _ => FittingEnd.SealKind.FlaredTube,
        };

    internal static string Noun(FittingEnd end)
    {
        string gender = end.Gender == FittingEnd.EndGender.Male ? "male" : "female";
        return end.Form switch
        {
            FittingEnd.EndForm.Flare37 => $"{gender} 37 degree flare",
            FittingEnd.EndForm.ORingBoss => end.Gender == FittingEnd.EndGender.Male
                ? "O-ring boss stud"
                : "O-ring boss port",
            FittingEnd.EndForm.MetricORingPort => end.Gender == FittingEnd.EndGender.Male
                ? "metric O-ring stud"
                : "metric O-ring port",
            FittingEnd.EndForm.PipeTaper or FittingEnd.EndForm.PipeTaperDryseal => $"{gender} taper pipe",
            FittingEnd.EndForm.Flare45 => $"{gender} 45 degree flare",
            FittingEnd.EndForm.QuickConnect => end.Gender == FittingEnd.EndGender.Male
                ? "quick-connect tube end"
                : "quick-connect coupler",
            FittingEnd.EndForm.HoseBarb => end.Gender == FittingEnd.EndGender.Male ? "barb for hose" : "open hose",
            FittingEnd.EndForm.Banjo => end.Gender == FittingEnd.EndGender.Male ? "banjo bolt" : "banjo port",
            FittingEnd.EndForm.PipeParallelBonded => $"{gender} parallel pipe with bonded washer",
            FittingEnd.EndForm.PipeTaperWhitworth => $"{gender} Whitworth taper pipe",
            FittingEnd.EndForm.InvertedFlare => end.Gender == FittingEnd.EndGender.Male
                ? "inverted-flare tube nut"
                : "inverted-flare port",
            _ => end.Gender == FittingEnd.EndGender.Male ? "bubble-flare tube nut" : "bubble-flare port",
        };
    }

    /// <summary>Where an end of this form seals, as the object of "seals".</summary>
    internal static string Place(FittingEnd.EndForm form) =>
        form switch
        {
            FittingEnd.EndForm.Flare37 => "on a cone of 37 degrees",
            FittingEnd.EndForm.ORingBoss or FittingEnd.EndForm.MetricORingPort =>
                "by an O-ring in the chamfer at the mouth of the port",
            FittingEnd.EndForm.PipeTaper => "on its taper threads, with sealant",
            FittingEnd.EndForm.PipeTaperDryseal => "on its taper threads, crest crushed into root",
            FittingEnd.EndForm.Flare45 => "on a cone of 45 degrees",
            FittingEnd.EndForm.QuickConnect => "by O-rings around a round tube",
            FittingEnd.EndForm.HoseBarb => "by a hose clamped on a barb",
            FittingEnd.EndForm.Banjo => "by washers on flat faces",
            FittingEnd.EndForm.PipeParallelBonded => "by a bonded washer on a flat face around the thread",
            FittingEnd.EndForm.PipeTaperWhitworth => "on its taper threads, with sealant",
            FittingEnd.EndForm.InvertedFlare => "by the tube's inward-folded flare on a raised seat",
            _ => "by the tube's bulged flare in a hollow seat",
        };
}
