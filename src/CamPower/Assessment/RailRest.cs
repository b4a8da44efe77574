namespace CamPower.Assessment;

/// <summary>Where a rail that fell has come to rest.</summary>
internal readonly struct RailRest(double volts, bool isBalance)
{
    /// <summary>Its voltage: of a balance, or of the moment at which the last device let go that was too much; 0 where there is none.
    /// [V]</summary>
    internal double Volts => volts;

    /// <summary>Whether the supply gives enough there.</summary>
    internal bool IsBalance => isBalance;
}
