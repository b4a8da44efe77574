using System;
using CamPower.Files.Reading;

namespace CamPower.Files.Formats;

/// <summary>A member and what it holds.</summary>
internal sealed class Member<T>(string name, string description, int index, bool isRequired, Format format, Func<Place, T> standIn)
    : Member(name, description, index, isRequired)
{
    private Func<Place, T> _standIn = standIn;

    private protected override Format Format => format;

    /// <summary>What an object of the file holds in this member; the stand-in where it is missing or wrong.</summary>
    internal T this[Place part] => part[this].Value is T value ? value : _standIn(part[this]);

    /// <summary>The same, with a stand-in that goes with other members.</summary>
    internal T Or(Place part, T standIn) => part[this].Value is T value ? value : standIn;

    /// <summary>States a stand-in other than that of the format.</summary>
    internal Member<T> WithStandIn(T standIn)
    {
        _standIn = _ => standIn;
        return this;
    }

    /// <summary>States how the library calls it, where it is another word.</summary>
    internal Member<T> ForParameter(string parameter)
    {
        Parameter = parameter;
        return this;
    }
}
