using CamPower.Checks;

namespace CamPower;

/// <summary>Severity of a finding, from least to most pressing: it says what a person should do.</summary>
/// <remarks>A scale of this library, for a design on paper. It is not the scale of injury levels on the label of a product.</remarks>
public enum Severity
{
    /// <summary>Know it: something is not stated, assumed, or known to be harmless.</summary>
    Note,

    /// <summary>Think again: it works with less margin than it should have, or goes dark for seconds.</summary>
    /// <remarks>Seconds are up to <see cref="CheckConstants.LongestDark"/>, 60 s: a camera takes about a minute to start, and a gap of that
    /// length looks like a restart (common practice, no source). What stays dark for longer is a <see cref="Failure"/>.</remarks>
    Caution,

    /// <summary>Correct it before use.</summary>
    Failure,

    /// <summary>Do not energize: something may burn, or someone may be hurt.</summary>
    Danger,
}
