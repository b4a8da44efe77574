using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A member of an object of the file.</summary>
internal abstract class Member(string name, int index)
{
    internal string Name { get; } = name;

    /// <summary>Its number among the members of its object, from 0.</summary>
    internal int Index => index;
    internal required bool IsRequired { get; init; }

    /// <summary>Its name as a parameter of the library.</summary>
    internal string ParameterName { get; private protected set; } = name;

    /// <summary>Reads what is at the place of the member.</summary>
    internal required Action<Place> Read { get; init; }

    /// <summary>Its schema, description included.</summary>
    internal required Func<JsonObject> Schema { get; init; }

    /// <summary>Whether the file gives the member, right or wrong.</summary>
    internal bool IsGiven(Place part) => part.Has(this);
}
