namespace CamPower;

/// <summary>Constraint on a box that shall feed what another box feeds.</summary>
public enum BoxConstraint
{
    /// <summary>The nominal voltage, and the kind of current, of the box that it replaces.</summary>
    Voltage,

    /// <summary>An output for each that is used, and the spare ones of the policy.</summary>
    Outputs,

    /// <summary>Outputs that may carry what each of those in use carries in its worst condition.</summary>
    OutputLimit,

    /// <summary>A supply that, at the temperature of the box, is loaded no further than the policy in the worst condition.</summary>
    Rating,

    /// <summary>Protective devices that, at the temperature of the box, carry what their outputs carry in every condition, and carry the
    /// start of all at once.</summary>
    Protection,

    /// <summary>Where it is in an enclosure, a supply whose efficiency is stated up to the load that it carries: otherwise
    /// the temperature inside is not known.</summary>
    InsideTemperature,
}
