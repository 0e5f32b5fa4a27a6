namespace FuelMath;

/// <summary>A way to solve many points of one system: <see cref="SystemBatch.Run"/> or <see cref="SystemBatch.RunAlone"/>.</summary>
internal delegate void SystemRun(
    SystemPath path,
    ISystemPoints points,
    int count,
    IProgress<int>? progress,
    CancellationToken cancellation
);
