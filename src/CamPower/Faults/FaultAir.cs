namespace CamPower.Faults;

/// <summary>The temperatures of one condition as a fault finds them.</summary>
/// <param name="ConductorCelsius">Of the conductors, and of the air around them. [°C]</param>
/// <param name="DeviceCelsius">Of the air around the protective device; null where it is not known. [°C]</param>
internal readonly record struct FaultAir(double ConductorCelsius, double? DeviceCelsius);
