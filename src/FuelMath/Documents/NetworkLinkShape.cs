namespace FuelMath;

/// <summary>A link of a network, of any kind.</summary>
internal static class NetworkLinkShape
{
    internal static UnionShape<NetworkLink> Shape { get; } =
        new(
            NetworkPassageShapes.Pipe,
            NetworkPassageShapes.CheckPipe,
            NetworkPassageShapes.CurvedPipe,
            NetworkPassageShapes.Fitting,
            NetworkPassageShapes.Filter,
            NetworkValveShapes.Pump,
            NetworkValveShapes.BypassRegulator,
            NetworkValveShapes.ReducingRegulator,
            NetworkValveShapes.CheckValve,
            NetworkValveShapes.ReliefValve,
            NetworkOpeningShapes.Orifice,
            NetworkOpeningShapes.CappedOrifice
        );
}
