using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>One of the forms that an object can take: members that belong together. An object takes exactly one of its forms.</summary>
/// <param name="members">The members that the form needs.</param>
internal sealed class Form(params Member[] members)
{
    /// <summary>A member that the form may have, and other forms may not.</summary>
    internal Member? Optional { get; init; }

    /// <summary>A member that the form needs, and other forms may have.</summary>
    internal Member? Needs { get; init; }

    /// <summary>Every member that the form needs.</summary>
    internal IEnumerable<Member> AllNeeded => Needs is null ? members : members.Append(Needs);

    /// <summary>Every member that this form alone may have.</summary>
    private IEnumerable<Member> AllOwn => Optional is null ? members : members.Append(Optional);

    /// <summary>Whether an object has one of its members.</summary>
    internal bool IsBegun(Place at) => AllOwn.Any(member => member.IsGiven(at));

    /// <summary>The first of its members that an object has, in the order of the file.</summary>
    internal Place FirstIn(Place at) =>
        AllOwn.Where(member => member.IsGiven(at)).Select(member => at[member]).MinBy(place => place.Offset)!;

    /// <summary>Its own members are required, those of the others are not allowed.</summary>
    internal JsonObject Schema(IEnumerable<Form> others)
    {
        var forbidden = new JsonObject();
        foreach (Member member in others.SelectMany(other => other.AllOwn)) forbidden[member.Name] = false;
        return new JsonObject
        {
            ["required"] = new JsonArray([.. AllNeeded.Select(m => (JsonNode)m.Name)]),
            ["properties"] = forbidden,
        };
    }

    /// <summary>The members in words: "outputs and outputLimit".</summary>
    public override string ToString() => Phrase.List(members.Select(m => m.Name), "and");
}
