using System;
using System.Threading;
using System.Threading.RateLimiting;
using System.Threading.Tasks;

namespace PlanService;

/// <summary>So many sites are worked out at once and no more; so many wait, the oldest first; the rest are refused.</summary>
internal sealed class WorkingPlaces(PlanLimits limits) : IDisposable
{
    private readonly ConcurrencyLimiter _places = new(new ConcurrencyLimiterOptions
    {
        PermitLimit = limits.Working,
        QueueLimit = limits.Waiting,
        QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
    });

    /// <summary>Does a piece of work when a place is free; null where too many wait already.</summary>
    /// <exception cref="OperationCanceledException">It was canceled, waiting or working.</exception>
    public async Task<T?> DoAsync<T>(Func<T> work, CancellationToken cancellation)
        where T : class
    {
        using RateLimitLease place = await _places.AcquireAsync(1, cancellation);
        if (!place.IsAcquired) return null;

        // On a thread of its own: those of the pool stay free to receive and to refuse.
        return await Task.Factory.StartNew(work, cancellation, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    public void Dispose() => _places.Dispose();
}
