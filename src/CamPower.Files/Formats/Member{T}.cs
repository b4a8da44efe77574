using System;

namespace CamPower.Files.Formats;

/// <summary>A member and what it holds.</summary>
internal sealed class Member<T>(string name, int index, Func<Place, Member, T> standIn) : Member(name, index)
{
    private Func<Place, Member, T> _standIn = standIn;

    /// <summary>The value of this member in an object of the file; the stand-in where it is missing or wrong.</summary>
    internal T this[Place part] => part.ValueOf(this) is T value ? value : _standIn(part, this);

    /// <summary>The same, with a stand-in that goes with other members.</summary>
    internal T Or(Place part, T standIn) => part.ValueOf(this) is T value ? value : standIn;

    /// <summary>States a stand-in other than that of the format.</summary>
    internal Member<T> Else(T standIn)
    {
        _standIn = (_, _) => standIn;
        return this;
    }

    /// <summary>States how the library calls it, where it is another word.</summary>
    internal Member<T> Parameter(string name)
    {
        ParameterName = name;
        return this;
    }
}
