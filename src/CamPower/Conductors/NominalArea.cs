namespace CamPower.Conductors;

/// <summary>A resistance worked out from the nominal cross-section: ρ·k/A, where k is the lay factor of the stranding.</summary>
/// <remarks>Immutable. Source: <see cref="Sources.Resistance"/>.</remarks>
internal sealed class NominalArea : ResistanceBasis
{
    private NominalArea()
    {
    }

    /// <inheritdoc/>
    public override string Name => "nominal area";

    /// <summary>False: a nominal area gives the expected value.</summary>
    public override bool IsMaximum => false;

    /// <inheritdoc/>
    public override Citation Source => Sources.Resistance;

    internal static NominalArea Instance { get; } = new();

    internal override double OhmsPerMeterAt20C(WireSize size, Stranding stranding, ConductorMaterial material) =>
        material.OhmMetersAt20C * stranding.LayFactor / size.SquareMeters;
}
