using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Workspaces of one network for one scalar. Renting and giving back take no lock and allocate nothing.</summary>
internal sealed class WorkPool<T>(NetworkPlan plan)
    where T : struct, IScalar<T>
{
    private readonly Spares<NetworkWork<T>> spares = new();

    internal NetworkWork<T> Rent()
    {
        if (spares.Take() is not { } found)
        {
            return new NetworkWork<T>(plan, this);
        }

        found.Reset();
        return found;
    }

    internal void Return(NetworkWork<T> work) => spares.Give(work);
}
