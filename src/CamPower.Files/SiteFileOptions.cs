using System;
using System.Globalization;

namespace CamPower.Files;

/// <summary>Limits on the size of a site file.</summary>
/// <remarks>Immutable. A file beyond a limit is refused with an error, never with an exception.</remarks>
/// <example><code>SiteFileResult result = SiteFile.Read(json, new SiteFileOptions { MaxBytes = 64 * 1024 });</code></example>
public sealed class SiteFileOptions
{
    /// <summary>The limits that hold where none are given: 1 MiB and 32 levels.</summary>
    public static SiteFileOptions Default { get; } = new();

    /// <summary>The most bytes of UTF-8 that are read, at least 1. Default: 1,048,576 (1 MiB), some thousands of devices.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is less than 1.</exception>
    public int MaxBytes { get; init => field = AtLeastOne(value, nameof(MaxBytes)); } = 1024 * 1024;

    /// <summary>Greatest depth of objects and lists inside one another, at least 1. Default: 32. The format itself needs 6.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is less than 1.</exception>
    public int MaxDepth { get; init => field = AtLeastOne(value, nameof(MaxDepth)); } = 32;

    /// <summary>Both limits in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"at most {MaxBytes} bytes and {MaxDepth} levels");

    private static int AtLeastOne(int value, string name) => value >= 1
        ? value
        : throw new ArgumentOutOfRangeException(name, value.ToString(CultureInfo.InvariantCulture), $"{name} must be at least 1.");
}
