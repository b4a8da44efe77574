namespace CamPower.Tests.Circuits.Ngspice;

/// <summary>A node of a simulated network: the loop that feeds it, its load, and the voltage that the simulator found.</summary>
/// <param name="Parent">Index of the node that feeds it, smaller than its own; -1 for the source.</param>
/// <param name="Ohms">Loop resistance from there, above 0. [Ω]</param>
/// <param name="Watts">Share of constant power. [W]</param>
/// <param name="Amperes">Share of constant current. [A]</param>
/// <param name="LoadOhms">Share of constant resistance, or null. [Ω]</param>
/// <param name="Volts">What the simulator found, or null where it found nothing. [V]</param>
internal sealed record SimulatedNode(int Parent, double Ohms, double Watts, double Amperes, double? LoadOhms, double? Volts);
