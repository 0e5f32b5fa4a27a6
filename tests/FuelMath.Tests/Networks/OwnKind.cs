namespace FuelMath.Tests.Networks;

/// <summary>The parts by their numbers alone, one for each law and way to use it.</summary>
public enum OwnKind
{
    Pipe,
    CheckPipe,
    CurvedPipe,
    Fitting,
    Filter,
    Pump,
    BypassRegulator,
    ReducingRegulator,
    CheckValve,
    Nozzle,
    InjectorDraw,
}
