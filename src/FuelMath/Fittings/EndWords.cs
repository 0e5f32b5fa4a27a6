namespace FuelMath;

/// <summary>The names of the forms of ends, and how each seals.</summary>
internal static class EndWords
{
    internal static bool HasThread(EndForm form) => form is not (EndForm.QuickConnect or EndForm.HoseBarb);

    internal static SealKind SealOf(EndForm form) =>
        form switch
        {
            EndForm.Flare37 => SealKind.MetalCones,
            EndForm.ORingBoss or EndForm.MetricORingPort => SealKind.ORingInChamfer,
            EndForm.PipeTaper or EndForm.PipeTaperWhitworth => SealKind.ThreadsWithSealant,
            EndForm.PipeTaperDryseal => SealKind.CrushedThreads,
            EndForm.QuickConnect => SealKind.ORingsOnTube,
            EndForm.HoseBarb => SealKind.ClampedHose,
            EndForm.Banjo => SealKind.WashersOnFaces,
            EndForm.PipeParallelBonded => SealKind.BondedWasher,
            _ => SealKind.FlaredTube,
        };

    internal static string Noun(FittingEnd end)
    {
        string gender = end.Gender == EndGender.Male ? "male" : "female";
        return end.Form switch
        {
            EndForm.Flare37 => $"{gender} 37 degree flare",
            EndForm.ORingBoss => end.Gender == EndGender.Male ? "O-ring boss stud" : "O-ring boss port",
            EndForm.MetricORingPort => end.Gender == EndGender.Male ? "metric O-ring stud" : "metric O-ring port",
            EndForm.PipeTaper or EndForm.PipeTaperDryseal => $"{gender} taper pipe",
            EndForm.Flare45 => $"{gender} 45 degree flare",
            EndForm.QuickConnect => end.Gender == EndGender.Male ? "quick-connect tube end" : "quick-connect coupler",
            EndForm.HoseBarb => end.Gender == EndGender.Male ? "barb for hose" : "open hose",
            EndForm.Banjo => end.Gender == EndGender.Male ? "banjo bolt" : "banjo port",
            EndForm.PipeParallelBonded => $"{gender} parallel pipe with bonded washer",
            EndForm.PipeTaperWhitworth => $"{gender} Whitworth taper pipe",
            EndForm.InvertedFlare => end.Gender == EndGender.Male ? "inverted-flare tube nut" : "inverted-flare port",
            _ => end.Gender == EndGender.Male ? "bubble-flare tube nut" : "bubble-flare port",
        };
    }

    /// <summary>Where an end of this form seals, as the object of "seals".</summary>
    internal static string Place(EndForm form) =>
        form switch
        {
            EndForm.Flare37 => "on a cone of 37 degrees",
            EndForm.ORingBoss or EndForm.MetricORingPort => "by an O-ring in the chamfer at the mouth of the port",
            EndForm.PipeTaper => "on its taper threads, with sealant",
            EndForm.PipeTaperDryseal => "on its taper threads, crest crushed into root",
            EndForm.Flare45 => "on a cone of 45 degrees",
            EndForm.QuickConnect => "by O-rings around a round tube",
            EndForm.HoseBarb => "by a hose clamped on a barb",
            EndForm.Banjo => "by washers on flat faces",
            EndForm.PipeParallelBonded => "by a bonded washer on a flat face around the thread",
            EndForm.PipeTaperWhitworth => "on its taper threads, with sealant",
            EndForm.InvertedFlare => "by the tube's inward-folded flare on a raised seat",
            _ => "by the tube's bulged flare in a hollow seat",
        };
}
