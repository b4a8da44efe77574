using System;

namespace PlanService;

/// <summary>What one request may ask of the service; the section "Limits" of its settings.</summary>
internal sealed class PlanLimits
{
    /// <summary>The most bytes of a site file, at least 1.</summary>
    /// <remarks>The size bounds the sum, which nothing stops once it runs: some 1,500 devices fit into 256 KiB, and all
    /// of them in one chain, the costliest way, take a second or two. A site of 32 cameras has 6 KiB.</remarks>
    public int MaxBytes { get; set; } = 256 * 1024;

    /// <summary>How long a request may take, from its first line to the last byte of its answer.</summary>
    public TimeSpan Timeout { get; set; } = TimeSpan.FromSeconds(10);

    /// <summary>How many site files are received and worked on at once; further requests wait their turn.</summary>
    public int AtOnce { get; set; } = 64;

    /// <summary>How many requests may wait; one more is told to come again.</summary>
    public int Waiting { get; set; } = 256;
}
