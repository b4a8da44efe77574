namespace CamPower.Supplies;

/// <summary>One row of a table of power limits: what holds up to an open-circuit voltage.</summary>
/// <param name="UpTo">The highest voltage of the band.</param>
/// <param name="Current">Limit of the current into any load. [A]</param>
/// <param name="ApparentPower">Limit of the apparent power into any load, or null. [VA]</param>
/// <param name="Nameplate">Limit of the rated apparent power, or null. [VA]</param>
/// <param name="DeviceRating">Limit of the rated current of the overcurrent device, or null where it has none. [A]</param>
internal sealed record PowerLimitBand(CitedValue UpTo, PowerLimitTerm Current, PowerLimitTerm? ApparentPower = null,
    PowerLimitTerm? Nameplate = null, PowerLimitTerm? DeviceRating = null);
