using System;

namespace PlanService;

/// <summary>What one request may ask of the service; the section "Limits" of its settings.</summary>
internal sealed class PlanLimits
{
    /// <summary>The most bytes of a site file, at least 1.</summary>
    /// <remarks>A site of 16 cameras with everything declared has 9 KiB. The size bounds the longest step of the sum, between
    /// two of which it can be broken off.</remarks>
    public int MaxBytes { get; set; } = 64 * 1024;

    /// <summary>How long a request may take, from its first line to its answer; the sum is broken off then, and when the client is gone.</summary>
    public TimeSpan Timeout { get; set; } = TimeSpan.FromSeconds(10);

    /// <summary>How many sites are worked out at once, at least 1; one for each core, unless it is set.</summary>
    public int Working { get; set; } = Environment.ProcessorCount;

    /// <summary>How many site files are received at once or wait to be worked out; further requests wait their turn.</summary>
    public int AtOnce { get; set; } = 64;

    /// <summary>How many requests may wait; one more is told to come again.</summary>
    public int Waiting { get; set; } = 256;
}
