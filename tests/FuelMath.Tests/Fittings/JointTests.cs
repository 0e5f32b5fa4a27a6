using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fittings;

[Properties(Arbitrary = [typeof(FittingArbitraries)])]
public sealed class JointTests
{
    private const FittingEnd.EndGender Male = FittingEnd.EndGender.Male;
    private const FittingEnd.EndGender Female = FittingEnd.EndGender.Female;

    /// <summary>
    /// The trap: at every size a male 37 degree flare screws into the O-ring boss and does not seal. Public tables of both
    /// standards give one thread for both.
    /// </summary>
    [Theory]
    [Trait("Source", "SAE-J1926")]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(12)]
    public void FlareInORingBoss_SameDash_ThreadsAndLeaks(int dash)
    {
        Joint joint = Joint.Between(FittingEnd.Flare37(dash, Male), FittingEnd.ORingBoss(dash, Female));

        Assert.Equal(Joint.Outcome.ThreadsButDoesNotSeal, joint.Verdict);
        Assert.Equal(Joint.KnownTrap.FlareInORingBoss, joint.Trap);
        Assert.Contains(
            "the flare seals on a cone of 37 degrees, and the boss has no cone: it seals by an O-ring in its chamfer",
            joint.Reason,
            StringComparison.Ordinal
        );
        Assert.Contains(
            joint.Cautions,
            c => c.StartsWith("An adapter from O-ring boss to male flare", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ORingStudInFlareNut_SameDash_IsTheReversedTrap() =>
        Is(
            FittingEnd.ORingBoss(6, Male),
            FittingEnd.Flare37(6, Female),
            Joint.Outcome.ThreadsButDoesNotSeal,
            Joint.KnownTrap.ORingStudInFlareNut
        );

    /// <summary>A public note on both standards: intermixing sizes 2, 3, 4, 5, 8 and 10 "will result in leakage".</summary>
    [Theory]
    [Trait("Source", "SAE-J512")]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(10)]
    public void Flare37WithFlare45_SharedThread_Leaks(int dash) =>
        Is(
            FittingEnd.Flare37(dash, Male),
            FittingEnd.Flare45(dash, Female),
            Joint.Outcome.ThreadsButDoesNotSeal,
            Joint.KnownTrap.Flare37AndFlare45
        );

    /// <summary>A public table's note: NPT and ISO 7 threads should not be mixed, 60 and 55 degrees.</summary>
    [Theory]
    [Trait("Source", "ASME-B1.20.1")]
    [InlineData("1/8", Joint.Outcome.DoesNotGoTogether)]
    [InlineData("1/4", Joint.Outcome.DoesNotGoTogether)]
    [InlineData("3/8", Joint.Outcome.DoesNotGoTogether)]
    [InlineData("1/2", Joint.Outcome.ThreadsButDoesNotSeal)]
    [InlineData("3/4", Joint.Outcome.ThreadsButDoesNotSeal)]
    public void AmericanWithWhitworthPipe_OneSize_NeverSeals(string size, Joint.Outcome expected) =>
        Is(
            FittingEnd.PipeTaper(size, Male),
            FittingEnd.PipeTaperWhitworth(size, Female),
            expected,
            Joint.KnownTrap.AmericanAndWhitworthPipe
        );

    [Fact]
    public void ParallelWithTaperPipe_OneSize_Leaks() =>
        Is(
            FittingEnd.PipeParallelBonded("1/4", Male),
            FittingEnd.PipeTaperWhitworth("1/4", Female),
            Joint.Outcome.ThreadsButDoesNotSeal,
            Joint.KnownTrap.ParallelAndTaperPipe
        );

    [Fact]
    public void DrysealWithPlain_SealsWithSealantOnly()
    {
        Joint joint = Joint.Between(FittingEnd.PipeTaperDryseal("1/4", Male), FittingEnd.PipeTaper("1/4", Female));

        Assert.Equal(Joint.Outcome.Seals, joint.Verdict);
        Assert.Equal(Joint.KnownTrap.DrysealAndPlainPipe, joint.Trap);
        Assert.Contains("Not without sealant.", joint.Cautions);
    }

    [Fact]
    public void MetricThreads_ShareM10x1_AndDoNotSealAcross()
    {
        ScrewThread m10 = ScrewThread.FromMetric(Length.FromMillimeters(10), Length.FromMillimeters(1));
        FittingEnd nut = FittingEnd.FromThread(FittingEnd.EndForm.InvertedFlare, Male, m10, FittingArbitraries.Drawing);
        FittingEnd bubble = FittingEnd.FromThread(
            FittingEnd.EndForm.BubbleFlare,
            Female,
            m10,
            FittingArbitraries.Drawing
        );
        FittingEnd bolt = FittingEnd.FromThread(FittingEnd.EndForm.Banjo, Male, m10, FittingArbitraries.Drawing);

        Is(nut, bubble, Joint.Outcome.ThreadsButDoesNotSeal, Joint.KnownTrap.InvertedAndBubbleFlare);
        Is(bolt, bubble, Joint.Outcome.ThreadsButDoesNotSeal, Joint.KnownTrap.SameThreadOtherSeal);
        Is(
            bolt,
            FittingEnd.MetricORingPort(10, Female),
            Joint.Outcome.ThreadsButDoesNotSeal,
            Joint.KnownTrap.SameThreadOtherSeal
        );
        Is(bolt, FittingEnd.ORingBoss(3, Female), Joint.Outcome.DoesNotGoTogether, Joint.KnownTrap.NearlyTheSameThread);
    }

    [Fact]
    public void SameThreadOtherSeal_NamesBothSeats() =>
        Assert.StartsWith(
            "Both threads are 1/2-20 UNF, but male 45 degree flare -5 (1/2-20 UNF) seals on a cone of 45 degrees, and O-ring boss port -5 (1/2-20 UNF) seals by an O-ring in the chamfer at the mouth of the port: neither finds its seat.",
            Joint.Between(FittingEnd.ORingBoss(5, Female), FittingEnd.Flare45(5, Male)).Reason,
            StringComparison.Ordinal
        );

    [Fact]
    public void OtherSizeGenderOrKind_DoesNotGoTogether()
    {
        Is(
            FittingEnd.Flare37(6, Male),
            FittingEnd.Flare37(8, Female),
            Joint.Outcome.DoesNotGoTogether,
            Joint.KnownTrap.None
        );
        Is(
            FittingEnd.Flare37(6, Male),
            FittingEnd.Flare37(6, Male),
            Joint.Outcome.DoesNotGoTogether,
            Joint.KnownTrap.None
        );
        Is(
            FittingEnd.Flare37(6, Male),
            FittingEnd.OpenHose(Mm(8)),
            Joint.Outcome.DoesNotGoTogether,
            Joint.KnownTrap.None
        );
        Is(
            FittingEnd.QuickConnect(Mm(8), Male),
            FittingEnd.OpenHose(Mm(8)),
            Joint.Outcome.DoesNotGoTogether,
            Joint.KnownTrap.None
        );
        Is(
            FittingEnd.QuickConnect(Mm(8), Male),
            FittingEnd.QuickConnect(Mm(7.89), Female),
            Joint.Outcome.DoesNotGoTogether,
            Joint.KnownTrap.None
        );
    }

    /// <summary>Sizes of the standard are parts of their own: whatever was measured goes with one of them at most.</summary>
    [Theory]
    [InlineData(7.94, 7.89, true)]
    [InlineData(7.94, 8, false)]
    [InlineData(7.96, 8, true)]
    [InlineData(7.96, 7.89, false)]
    [InlineData(9.525, 9.49, true)]
    [InlineData(9.89, 10, false)]
    [InlineData(6.35, 6.3, true)]
    [InlineData(7.7, 7.89, false)]
    [InlineData(7.7, 7.71, true)]
    [Trait("Source", "SAE-J2044")]
    public void QuickConnect_MeasuredTube_GoesWithOneSize(double measured, double coupler, bool seals) =>
        Assert.Equal(
            seals,
            Joint
                .Between(FittingEnd.QuickConnect(Mm(measured), Male), FittingEnd.QuickConnect(Mm(coupler), Female))
                .Verdict == Joint.Outcome.Seals
        );

    [Fact]
    public void HoseOnBarb_SealsWithItsClamp()
    {
        Joint joint = Joint.Between(FittingEnd.HoseBarb(Mm(8)), FittingEnd.OpenHose(Mm(7.94)));

        Assert.Equal(Joint.Outcome.Seals, joint.Verdict);
        Assert.StartsWith("Only with a clamp", joint.Cautions[0], StringComparison.Ordinal);
    }

    [Property]
    public void Between_WithItsMate_Seals(AnyEnd end)
    {
        Joint joint = Joint.Between(end.End, end.End.Mate);

        Assert.Equal(Joint.Outcome.Seals, joint.Verdict);
        Assert.NotEmpty(joint.Cautions);
    }

    [Property(MaxTest = 400)]
    public void Between_TheOtherWayRound_IsTheSame(AnyEnd a, AnyEnd b)
    {
        Joint one = Joint.Between(a.End, b.End);
        Joint other = Joint.Between(b.End, a.End);

        Assert.Equal((one.Verdict, one.Trap), (other.Verdict, other.Trap));
        Assert.Equal<string>(one.Cautions, other.Cautions);
    }

    /// <summary>Over all pairs: what seals has one form (or is the dryseal pair), other genders and fitting sizes; a leak names its trap.</summary>
    [Fact]
    public void Between_AllPairs_KeepTheRules()
    {
        var all = FittingArbitraries.AllEnds;
        Joint[] joints = [.. all.SelectMany(a => all.Select(b => Joint.Between(a, b)))];

        Assert.All(
            joints.Where(j => j.Verdict == Joint.Outcome.Seals),
            j =>
            {
                Assert.NotEqual(j.First.Gender, j.Second.Gender);
                Assert.True(
                    j.First.Form == j.Second.Form || j.Trap == Joint.KnownTrap.DrysealAndPlainPipe,
                    j.ToString()
                );
            }
        );
        Assert.All(
            joints.Where(j => j.Verdict == Joint.Outcome.ThreadsButDoesNotSeal),
            j =>
            {
                Assert.NotEqual(Joint.KnownTrap.None, j.Trap);
                Assert.Contains("It can hold for a while and then spray. Do not run it.", j.Cautions);
            }
        );
        Assert.Equal(Enum.GetValues<Joint.KnownTrap>(), joints.Select(j => j.Trap).Distinct().Order());
    }

    [Fact]
    public void ToString_SaysItInALine() =>
        Assert.StartsWith(
            "male 37 degree flare -6 (9/16-18 UNF) with O-ring boss port -6 (9/16-18 UNF): ThreadsButDoesNotSeal. Both threads are",
            Joint.Between(FittingEnd.Flare37(6, Male), FittingEnd.ORingBoss(6, Female)).ToString(),
            StringComparison.Ordinal
        );

    private static void Is(FittingEnd a, FittingEnd b, Joint.Outcome verdict, Joint.KnownTrap trap)
    {
        Joint joint = Joint.Between(a, b);
        Assert.Equal((verdict, trap), (joint.Verdict, joint.Trap));
    }

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
