namespace CamPower.Sites;

/// <summary>A reason why parts do not make up a site: a name used twice, a reference to nothing.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SiteError
{
    internal SiteError(SitePart part, int index, string member, string message)
    {
        Part = part;
        Index = index;
        Member = member;
        Message = message;
    }

    /// <summary>The list in which the fault lies.</summary>
    public SitePart Part { get; }

    /// <summary>The place in that list, from 0.</summary>
    public int Index { get; }

    /// <summary>The member that is wrong, as the property is called: "Name", "From", "To", "ReturnAt", "At", "Device", "Ground", "Box", "Cabinet", "Receptacle", "One", "Other".</summary>
    public string Member { get; }

    /// <summary>What is wrong.</summary>
    public string Message { get; }

    /// <summary>What is wrong; never throws.</summary>
    public override string ToString() => Message;
}
