using CamPower.Commissioning;
using UnitsNet;

namespace CamPower.Files.Readings;

/// <summary>A reading as a file has it, before anybody looked whether the site has its place.</summary>
/// <param name="Kind">What was read.</param>
/// <param name="Where">The place, as it is written.</param>
/// <param name="State">The state.</param>
/// <param name="Value">What the meter showed; null over its range.</param>
/// <param name="Meter">Which meter.</param>
/// <param name="Time">When.</param>
/// <param name="Remark">What else was seen.</param>
internal sealed record RawReading(
    ReadingKind Kind, string Where, ReadingState State, IQuantity? Value, string? Meter, string? Time, string? Remark);
