namespace FuelMath.Tests.Networks;

internal static class OwnKinds
{
    internal static OwnKind Of(FlowPart part) =>
        part switch
        {
            Pipe { HasCheckValve: true } => OwnKind.CheckPipe,
            Pipe => OwnKind.Pipe,
            CurvedPipe => OwnKind.CurvedPipe,
            PlainFitting => OwnKind.Fitting,
            PlainFilter => OwnKind.Filter,
            PlainPump => OwnKind.Pump,
            PlainRegulator { IsBypass: true } => OwnKind.BypassRegulator,
            PlainRegulator => OwnKind.ReducingRegulator,
            CheckValve => OwnKind.CheckValve,
            Nozzle => OwnKind.Nozzle,
            InjectorDraw => OwnKind.InjectorDraw,
            _ => throw new ArgumentOutOfRangeException(nameof(part)),
        };
}
