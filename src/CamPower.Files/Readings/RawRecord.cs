using System.Collections.Generic;

namespace CamPower.Files.Readings;

/// <summary>A record as a file has it.</summary>
/// <param name="Site">Name of the site, or null.</param>
/// <param name="At">The temperatures while it was read, or null.</param>
/// <param name="By">Who read it, or null.</param>
/// <param name="On">When, or null.</param>
/// <param name="Readings">What was read.</param>
internal sealed record RawRecord(string? Site, Surroundings? At, string? By, string? On, IReadOnlyList<RawReading> Readings);
