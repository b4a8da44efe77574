using System;

namespace CamPower.Files.Formats;

/// <summary>A member and what it holds.</summary>
internal sealed class Member<T>(string name, int index, Func<Place, T> standIn) : Member(name, index)
{
    private Func<Place, T> _standIn = standIn;

    /// <summary>What an object of the file holds in this member; the stand-in where it is missing or wrong.</summary>
    internal T this[Place part] => part[this].Value is T value ? value : _standIn(part[this]);

    /// <summary>The same, with a stand-in that goes with other members.</summary>
    internal T Or(Place part, T standIn) => part[this].Value is T value ? value : standIn;

    /// <summary>States a stand-in other than that of the format.</summary>
    internal Member<T> Else(T standIn)
    {
        _standIn = _ => standIn;
        return this;
    }

    /// <summary>States how the library calls it, where it is another word.</summary>
    internal Member<T> Parameter(string name)
    {
        ParameterName = name;
        return this;
    }
}
