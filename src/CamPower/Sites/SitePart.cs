namespace CamPower.Sites;

/// <summary>The lists that a site is made of.</summary>
public enum SitePart
{
    /// <summary>The conditions.</summary>
    Conditions,

    /// <summary>The boxes and adapters.</summary>
    Boxes,

    /// <summary>The runs.</summary>
    Runs,

    /// <summary>The devices.</summary>
    Devices,

    /// <summary>The shields of video cables.</summary>
    VideoLinks,

    /// <summary>The bonds between grounds and boxes.</summary>
    Bonds,

    /// <summary>The outputs that somebody joined.</summary>
    Ties,
}
