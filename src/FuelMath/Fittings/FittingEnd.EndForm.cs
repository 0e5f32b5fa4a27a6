namespace FuelMath;

public sealed partial class FittingEnd
{
    /// <summary>The form of an end: how it is held and where it seals.</summary>
    public enum EndForm
    {
        /// <summary>Flare of 37 degrees (SAE J514, ISO 8434-2): cone of metal on cone of metal.</summary>
        Flare37,

        /// <summary>
        /// Straight-thread O-ring port or stud in inch sizes (SAE J1926-1, ISO 11926-1): O-ring in the port's chamfer.
        /// </summary>
        ORingBoss,

        /// <summary>Metric O-ring port or stud (ISO 6149): O-ring in the port's chamfer.</summary>
        MetricORingPort,

        /// <summary>American taper pipe thread (NPT, ASME B1.20.1): the threads, with sealant.</summary>
        PipeTaper,

        /// <summary>American dryseal taper pipe thread (NPTF, ASME B1.20.3): crests crushed into roots.</summary>
        PipeTaperDryseal,

        /// <summary>Flare of 45 degrees (SAE J512, flare by J533): flared tube between two cones.</summary>
        Flare45,

        /// <summary>Quick connect (SAE J2044): O-rings of the coupler on a round tube end.</summary>
        QuickConnect,

        /// <summary>Hose on a barb, with a clamp.</summary>
        HoseBarb,

        /// <summary>Banjo: a hollow bolt through a ring, a washer on either side of it.</summary>
        Banjo,

        /// <summary>Parallel Whitworth pipe thread (ISO 228) with a bonded washer on a flat face.</summary>
        PipeParallelBonded,

        /// <summary>Taper Whitworth pipe thread (ISO 7): the threads, with sealant.</summary>
        PipeTaperWhitworth,

        /// <summary>
        /// Brake-type flare, tube folded inwards (double or inverted flare): cone against an inverted seat.
        /// </summary>
        InvertedFlare,

        /// <summary>Brake-type flare, tube bulged (bubble flare): rounded front against a coned seat.</summary>
        BubbleFlare,
    }
}
