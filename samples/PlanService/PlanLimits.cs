using System;

namespace PlanService;

/// <summary>What one request may ask of the service; the section "Limits" of its settings.</summary>
internal sealed class PlanLimits
{
    /// <summary>The most bytes of a site file, at least 1.</summary>
    /// <remarks>A site of 16 cameras with everything declared has 9 KiB. The size bounds the longest step of the sum, between
    /// two of which it can be broken off.</remarks>
    public int MaxBytes { get; set; } = 64 * 1024;

    /// <summary>How long a request may take: its head to arrive, and then its body to arrive and its answer to be made.</summary>
    public TimeSpan Timeout { get; set; } = TimeSpan.FromSeconds(10);

    /// <summary>How many sites are worked out at once, at least 1; one for each core, unless it is set.</summary>
    public int Working { get; set; } = Environment.ProcessorCount;

    /// <summary>How many sites that have arrived may wait to be worked out; one more is refused at once.</summary>
    /// <remarks>So few that the last of them is answered within <see cref="Timeout"/>, on a busy machine too: 8 pages of 16 cameras take a
    /// core little more than 1 s.</remarks>
    public int Waiting { get; set; } = 8 * Environment.ProcessorCount;

    /// <summary>How many site files may arrive, wait and be worked out together; one more is refused before its body is read.</summary>
    /// <remarks>It bounds the memory: each holds at most <see cref="MaxBytes"/>.</remarks>
    public int AtOnce { get; set; } = 512;

    /// <summary>The first setting that is out of its range, as a sentence; null where all are within.</summary>
    public string? Error() => this switch
    {
        { MaxBytes: < 1 } => "Limits:MaxBytes must be at least 1.",
        { Timeout.Ticks: <= 0 } => "Limits:Timeout must be longer than nothing.",
        { Working: < 1 } => "Limits:Working must be at least 1.",
        { Waiting: < 0 } => "Limits:Waiting must be 0 or more.",
        { AtOnce: < 1 } => "Limits:AtOnce must be at least 1.",
        _ => null,
    };
}
