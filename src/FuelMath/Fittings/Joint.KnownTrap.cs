namespace FuelMath;

public sealed partial class Joint
{
    /// <summary>A known mistake with ends that look alike.</summary>
    public enum KnownTrap
    {
        /// <summary>None of these.</summary>
        None,

        /// <summary>A male 37 degree flare screwed into an O-ring boss of the same thread.</summary>
        FlareInORingBoss,

        /// <summary>
        /// An O-ring boss stud screwed into a 37 degree flare nut of the same thread: the same trap, reversed.
        /// </summary>
        ORingStudInFlareNut,

        /// <summary>A 37 degree and a 45 degree flare of the same thread.</summary>
        Flare37AndFlare45,

        /// <summary>
        /// American and Whitworth pipe thread of one size: 60 and 55 degrees, most sizes with another pitch.
        /// </summary>
        AmericanAndWhitworthPipe,

        /// <summary>A parallel and a taper pipe thread of one size.</summary>
        ParallelAndTaperPipe,

        /// <summary>Dryseal and plain taper pipe thread: they seal only with sealant.</summary>
        DrysealAndPlainPipe,

        /// <summary>Inverted and bubble flare under the same tube nut.</summary>
        InvertedAndBubbleFlare,

        /// <summary>Another pair of forms that share a thread.</summary>
        SameThreadOtherSeal,

        /// <summary>Threads that are not the same but start in each other, such as M10x1 in 3/8-24.</summary>
        NearlyTheSameThread,
    }
}
