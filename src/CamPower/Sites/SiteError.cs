using System;

namespace CamPower.Sites;

/// <summary>A reason why parts do not make up a site: a name used twice, a reference to nothing.</summary>
/// <param name="List">The parameter of <see cref="Site"/> that is wrong.</param>
/// <param name="Index">The place in that list, from 0.</param>
/// <param name="Member">The member that is wrong, as the property is called.</param>
/// <param name="Message">What is wrong.</param>
internal sealed record SiteError(string List, int Index, string Member, string Message)
{
    /// <summary>The error as it is thrown: its parameter reads like "runs[3].From".</summary>
    internal ArgumentException Exception => new(Message, FormattableString.Invariant($"{List}[{Index}].{Member}"));

    /// <summary>Message of the error; never throws.</summary>
    public override string ToString() => Message;
}
