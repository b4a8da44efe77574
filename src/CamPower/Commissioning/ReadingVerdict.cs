namespace CamPower.Commissioning;

/// <summary>What a reading says against what is expected.</summary>
public enum ReadingVerdict
{
    /// <summary>Not read yet.</summary>
    NotRead,

    /// <summary>Within what the tolerances of the site and the accuracy of the meter explain.</summary>
    Inside,

    /// <summary>Outside that: something differs from the site file.</summary>
    Outside,

    /// <summary>No site could give it, whatever is wrong with it: the meter, its range or its leads are.</summary>
    Impossible,
}
