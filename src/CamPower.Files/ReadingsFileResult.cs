using System.Collections.Generic;
using CamPower.Commissioning;
using CamPower.Files.Readings;

namespace CamPower.Files;

/// <summary>The result of reading a file of readings: the readings, or every error of the file.</summary>
/// <remarks>Immutable. There are readings only where there is no error.</remarks>
public sealed class ReadingsFileResult
{
    internal ReadingsFileResult(RawRecord? record, IReadOnlyList<MeterReading> readings, IReadOnlyList<SiteFileError> errors)
    {
        Errors = errors;
        if (errors.Count > 0) return;
        Readings = readings;
        At = record?.At;
        By = record?.By;
        On = record?.On;
    }

    /// <summary>The readings, in the order of the file; none where it has an error.</summary>
    public IReadOnlyList<MeterReading> Readings { get; } = [];

    /// <summary>The temperatures while it was read, or null where the file has none.</summary>
    public Surroundings? At { get; }

    /// <summary>Name of the person who read the meter, or null where the file does not say.</summary>
    public string? By { get; }

    /// <summary>When, as it was written down, or null where the file does not say.</summary>
    public string? On { get; }

    /// <summary>Every error of the file, in the order of the file.</summary>
    public IReadOnlyList<SiteFileError> Errors { get; }

    /// <summary>The number of readings, or the errors, one a line; never throws.</summary>
    public override string ToString() =>
        Errors.Count == 0 ? System.FormattableString.Invariant($"{Readings.Count} readings") : string.Join('\n', Errors);
}
