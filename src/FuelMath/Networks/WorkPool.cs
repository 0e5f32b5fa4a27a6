using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Workspaces of one network for one scalar. Renting and giving back take no lock and allocate nothing.</summary>
internal sealed class WorkPool<T>(NetworkPlan plan)
    where T : struct, IScalar<T>
{
    private readonly NetworkWork<T>?[] spare = new NetworkWork<T>?[2 * Environment.ProcessorCount];

    internal NetworkWork<T> Rent()
    {
        for (int i = 0; i < spare.Length; i++)
        {
            if (spare[i] is not null && Interlocked.Exchange(ref spare[i], null) is { } found)
            {
                found.Reset();
                return found;
            }
        }

        return new NetworkWork<T>(plan, this);
    }

    internal void Return(NetworkWork<T> work)
    {
        for (int i = 0; i < spare.Length; i++)
        {
            if (spare[i] is null && Interlocked.CompareExchange(ref spare[i], work, null) is null)
            {
                return;
            }
        }
    }
}
