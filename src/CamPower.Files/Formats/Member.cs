using System.Text.Json.Nodes;
using CamPower.Files.Reading;

namespace CamPower.Files.Formats;

/// <summary>A member of an object of the file.</summary>
internal abstract class Member(string name, string description, int index, bool isRequired)
{
    internal string Name { get; } = name;

    /// <summary>What it is called as a parameter of the library: the same for most.</summary>
    internal string Parameter { get => field ?? Name; private protected set; }

    /// <summary>Its number among the members of its object, from 0.</summary>
    internal int Index => index;

    internal bool IsRequired => isRequired;

    private protected abstract Format Format { get; }

    /// <summary>Reads the member of an object.</summary>
    internal void Read(Place part) => Format.Read(part[this]);

    /// <summary>Whether the file gives the member, right or wrong.</summary>
    internal bool IsGiven(Place part) => !part[this].IsMissing;

    /// <summary>Whether there is a fault in the member.</summary>
    internal bool IsFaulty(Place part) => part[this].IsFaulty;

    internal JsonObject Schema()
    {
        JsonObject schema = Format.Schema();
        schema["description"] = description + Format.Note;
        return schema;
    }
}
