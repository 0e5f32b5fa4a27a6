using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The rules by which two ends are judged.</summary>
internal static class JointRules
{
    // An end is set to a nearby standard size when it is created, and those differ by at least 1.1 %; other sizes must
    // agree closely.
    private const double SameTube = 0.003;

    // A hose stretches over its barb; the next size is at least a quarter larger.
    private const double SameHose = 0.03;

    internal static Joint Judge(FittingEnd first, FittingEnd second)
    {
        if (first.Gender == second.Gender)
        {
            return Apart(
                first,
                second,
                Joint.KnownTrap.None,
                $"Both ends are {(first.Gender == FittingEnd.EndGender.Male ? "male" : "female")}: {first} and {second}. A piece between them is needed."
            );
        }

        return first.Thread is not null && second.Thread is not null ? Threaded(first, second)
            : first.Thread is null && second.Thread is null ? Plain(first, second)
            : Apart(
                first,
                second,
                Joint.KnownTrap.None,
                $"{Capital(first)} and {second}: one has a thread and the other has none."
            );
    }

    /// <summary>Whether they seal, without the words of the verdict, for searches.</summary>
    internal static bool Seals(FittingEnd first, FittingEnd second) =>
        first.Gender != second.Gender
        && SealForm(first.Form) == SealForm(second.Form)
        && (
            (first.Thread, second.Thread) switch
            {
                ({ } one, { } other) => one.FitInto(other) == ScrewThread.Fit.Same,
                (null, null) => SameDiameter(first, second),
                _ => false,
            }
        );

    /// <summary>
    /// One form for all that seal with each other: dryseal seals with plain taper pipe, with sealant.
    /// </summary>
    internal static FittingEnd.EndForm SealForm(FittingEnd.EndForm form) =>
        form == FittingEnd.EndForm.PipeTaperDryseal ? FittingEnd.EndForm.PipeTaper : form;

    /// <summary>The greatest relative difference between the diameters of two ends that seal.</summary>
    internal const double WidestApart = SameHose;

    private static bool SameDiameter(FittingEnd first, FittingEnd second)
    {
        (double a, double b) = (first.Diameter.InSi(), second.Diameter.InSi());
        return Math.Abs(a - b) / Math.Max(a, b) <= (first.Form == FittingEnd.EndForm.HoseBarb ? SameHose : SameTube);
    }

    private static Joint Plain(FittingEnd first, FittingEnd second)
    {
        if (first.Form != second.Form)
        {
            return Apart(
                first,
                second,
                Joint.KnownTrap.None,
                $"{Capital(first)} and {second}: a quick connect needs its own tube end or coupler, and a hose a barb. A hose pushed over a smooth tube end blows off."
            );
        }

        return !SameDiameter(first, second)
                ? Apart(first, second, Joint.KnownTrap.None, $"Same form, other size: {first.Size} and {second.Size}.")
            : first.Form == FittingEnd.EndForm.HoseBarb
                ? Tight(
                    first,
                    second,
                    "The hose grips the barb and a clamp holds it there.",
                    "Only with a clamp, and only up to the pressure that hose, barb and clamp are made for together.",
                    "Use hose lined for the fuel, and a clamp that does not cut it."
                )
            : Tight(
                first,
                second,
                "The coupler's O-rings seal on the tube end and its latch holds the bead.",
                "Pull on it after it clicks. Couplers of one diameter differ in their latch: take both parts from one standard.",
                "Its O-rings must suit the fuel: ask the maker."
            );
    }

    private static Joint Threaded(FittingEnd first, FittingEnd second)
    {
        string threads = $"{first.Thread!.Designation} and {second.Thread!.Designation}";
        (FittingEnd male, FittingEnd female) =
            first.Gender == FittingEnd.EndGender.Male ? (first, second) : (second, first);
        ScrewThread.Fit fit = male.Thread!.FitInto(female.Thread!);
        if (fit == ScrewThread.Fit.Different && female.Thread!.FitInto(male.Thread!) == ScrewThread.Fit.StartsThenBinds)
        {
            return Apart(
                first,
                second,
                NearTrap(first, second),
                $"The threads {threads} are nearly the same, but the outside one is too large to start.",
                "Do not force it, and cut no thread after: neither holds."
            );
        }

        return fit switch
        {
            ScrewThread.Fit.Same => SameThread(first, second),
            ScrewThread.Fit.SameSizeOtherForm => OtherProfile(first, second, threads),
            ScrewThread.Fit.StartsThenBinds => Apart(
                first,
                second,
                NearTrap(first, second),
                $"The threads {threads} are not the same, though near enough to start.",
                "It starts by hand and then binds: force strips the softer thread, often that of the rail or tank."
            ),
            _ => Apart(first, second, Joint.KnownTrap.None, $"The threads differ: {threads}."),
        };
    }

    private static Joint.KnownTrap NearTrap(FittingEnd first, FittingEnd second) =>
        IsAmericanWithWhitworth(first, second)
            ? Joint.KnownTrap.AmericanAndWhitworthPipe
            : Joint.KnownTrap.NearlyTheSameThread;

    private static Joint OtherProfile(FittingEnd first, FittingEnd second, string threads) =>
        IsAmericanWithWhitworth(first, second)
            ? Leaks(
                first,
                second,
                Joint.KnownTrap.AmericanAndWhitworthPipe,
                $"The threads {threads} have one pitch, but flanks of 60 and of 55 degrees: they touch on lines and leave a spiral path."
            )
            : Leaks(
                first,
                second,
                Joint.KnownTrap.ParallelAndTaperPipe,
                $"One of the threads {threads} tapers and the other does not: it wedges on a turn or two before the face can press a washer, and the threads alone do not seal."
            );

    private static Joint SameThread(FittingEnd first, FittingEnd second)
    {
        if (first.Form == second.Form)
        {
            return Tight(
                first,
                second,
                $"They are made for each other: each seals {EndWords.Place(first.Form)}.",
                Care(first.Form)
            );
        }

        (FittingEnd male, FittingEnd female) =
            first.Gender == FittingEnd.EndGender.Male ? (first, second) : (second, first);
        string thread = first.Thread!.Designation;
        return (male.Form, female.Form) switch
        {
            (FittingEnd.EndForm.PipeTaper, FittingEnd.EndForm.PipeTaperDryseal)
            or (FittingEnd.EndForm.PipeTaperDryseal, FittingEnd.EndForm.PipeTaper) => new(
                first,
                second,
                Joint.Outcome.Seals,
                Joint.KnownTrap.DrysealAndPlainPipe,
                "Dryseal and plain taper pipe thread share diameter, pitch and taper, but only two dryseal threads crush into each other. With sealant they seal like two plain ones.",
                [.. Care(FittingEnd.EndForm.PipeTaper), "Not without sealant."]
            ),
            (FittingEnd.EndForm.Flare37, FittingEnd.EndForm.ORingBoss) => Leaks(
                first,
                second,
                Joint.KnownTrap.FlareInORingBoss,
                $"Both threads are {thread}, so the flare screws into the boss and feels right. But the flare seals on a cone of 37 degrees, and the boss has no cone: it seals by an O-ring in its chamfer, and the flare carries no O-ring. Nothing seals but the threads, which do not.",
                "An adapter from O-ring boss to male flare belongs between: it is one piece."
            ),
            (FittingEnd.EndForm.ORingBoss, FittingEnd.EndForm.Flare37) => Leaks(
                first,
                second,
                Joint.KnownTrap.ORingStudInFlareNut,
                $"Both threads are {thread}, so the nut runs onto the stud. But the nut's cone of 37 degrees finds no cone, and the stud's O-ring finds no chamfer: it is pinched at the rim of the nut."
            ),
            (FittingEnd.EndForm.Flare37, FittingEnd.EndForm.Flare45)
            or (FittingEnd.EndForm.Flare45, FittingEnd.EndForm.Flare37) => Leaks(
                first,
                second,
                Joint.KnownTrap.Flare37AndFlare45,
                $"Both threads are {thread}, but the cones stand at 37 and at 45 degrees: they touch on a thin ring, which leaks, or cracks the flare when it is tightened until it does not."
            ),
            (FittingEnd.EndForm.InvertedFlare, FittingEnd.EndForm.BubbleFlare)
            or (FittingEnd.EndForm.BubbleFlare, FittingEnd.EndForm.InvertedFlare) => Leaks(
                first,
                second,
                Joint.KnownTrap.InvertedAndBubbleFlare,
                $"Both nuts are {thread}, but an inverted flare sits on a raised seat and a bubble flare in a hollow one: each meets the other's seat on an edge."
            ),
            _ => Leaks(
                first,
                second,
                Joint.KnownTrap.SameThreadOtherSeal,
                $"Both threads are {thread}, but {male} seals {EndWords.Place(male.Form)}, and {female} seals {EndWords.Place(female.Form)}: neither finds its seat."
            ),
        };
    }

    private static string[] Care(FittingEnd.EndForm form) =>
        form switch
        {
            FittingEnd.EndForm.Flare37 or FittingEnd.EndForm.Flare45 =>
            [
                "Cones clean and without scratches; no sealant on a flare: it keeps the cones apart.",
            ],
            FittingEnd.EndForm.ORingBoss or FittingEnd.EndForm.MetricORingPort =>
            [
                "Its O-ring must be there, whole, oiled and of a rubber that suits the fuel: ask the maker.",
            ],
            FittingEnd.EndForm.PipeTaper or FittingEnd.EndForm.PipeTaperWhitworth =>
            [
                "Sealant that suits the fuel, none on the first thread; a taper splits a housing that is over-tightened.",
            ],
            FittingEnd.EndForm.PipeTaperDryseal => ["Once opened, a dryseal thread needs sealant."],
            FittingEnd.EndForm.Banjo =>
            [
                "New washers each time, one on either side of the ring; faces flat and clean.",
            ],
            FittingEnd.EndForm.PipeParallelBonded =>
            [
                "A bonded washer of the right size, whose rubber suits the fuel: ask the maker.",
            ],
            FittingEnd.EndForm.InvertedFlare or FittingEnd.EndForm.BubbleFlare =>
            [
                "One kind of flare on the tube, the one that the seat is made for.",
            ],
            _ => [],
        };

    private static bool IsAmericanWithWhitworth(FittingEnd first, FittingEnd second)
    {
        (ScrewThread.Profile a, ScrewThread.Profile b) = (first.Thread!.Form, second.Thread!.Form);
        return (a == ScrewThread.Profile.AmericanPipeTaper && IsWhitworth(b))
            || (b == ScrewThread.Profile.AmericanPipeTaper && IsWhitworth(a));

        static bool IsWhitworth(ScrewThread.Profile form) =>
            form is ScrewThread.Profile.WhitworthPipeParallel or ScrewThread.Profile.WhitworthPipeTaper;
    }

    private static Joint Tight(FittingEnd a, FittingEnd b, string reason, params string[] cautions) =>
        new(a, b, Joint.Outcome.Seals, Joint.KnownTrap.None, reason, [.. cautions]);

    private static Joint Leaks(
        FittingEnd a,
        FittingEnd b,
        Joint.KnownTrap trap,
        string reason,
        params string[] cautions
    ) =>
        new(
            a,
            b,
            Joint.Outcome.ThreadsButDoesNotSeal,
            trap,
            reason,
            [.. cautions, "It can hold for a while and then spray. Do not run it."]
        );

    private static Joint Apart(
        FittingEnd a,
        FittingEnd b,
        Joint.KnownTrap trap,
        string reason,
        params string[] cautions
    ) => new(a, b, Joint.Outcome.DoesNotGoTogether, trap, reason, [.. cautions]);

    private static string Capital(FittingEnd end)
    {
        string text = end.ToString();
        return char.ToUpperInvariant(text[0]) + text[1..];
    }
}
