namespace CamPower.Commissioning;

/// <summary>A group of causes at a place that no reading of a sheet tells apart: the cause that stands for them, and where.</summary>
internal readonly record struct GroupKey(Cause Cause, int Unit, int Place);
