using System;
using System.Threading;
using System.Threading.Tasks;

namespace PlanService;

/// <summary>So many sites are worked out at once and no more: the rest wait, and the machine goes on to answer.</summary>
internal sealed class WorkingPlaces(PlanLimits limits) : IDisposable
{
    private readonly SemaphoreSlim _free = new(limits.Working);

    /// <summary>Does a piece of work when a place is free.</summary>
    /// <exception cref="OperationCanceledException">It was canceled, waiting or working.</exception>
    public async Task<T> DoAsync<T>(Func<T> work, CancellationToken cancellation)
    {
        await _free.WaitAsync(cancellation);
        try
        {
            return await Task.Run(work, cancellation);
        }
        finally
        {
            _free.Release();
        }
    }

    public void Dispose() => _free.Dispose();
}
