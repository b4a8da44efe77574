using UnitsNet;

namespace CamPower.Files.Readings;

/// <summary>The value that a meter showed.</summary>
/// <param name="Quantity">The quantity; null where the resistance is over its range.</param>
internal sealed record ReadValue(IQuantity? Quantity);
