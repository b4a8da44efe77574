using System;
using CamPower.Files.Formats;
using CamPower.Files.Reading;

namespace CamPower.Files.Building;

/// <summary>A place in the file that something is built from.</summary>
/// <remarks>
/// What is missing or wrong has a stand-in, so that building always gives something: every other fault is then found
/// too, and none is found that only follows from the first. A file with a fault gives no site in the end.
/// </remarks>
internal sealed class Place(FaultLog faults, JsonPath path)
{
    internal JsonPath Path => path;

    /// <summary>Whether there is a fault at this place or inside it.</summary>
    internal bool IsFaulty => faults.Has(path);

    internal Place Member(string name) => new(faults, path.Member(name));

    internal Place Item(int index) => new(faults, path.Item(index));

    internal void Fault(string message) => faults.Add(path, message);

    /// <summary>The value of a member, or its stand-in where it is missing or wrong.</summary>
    internal T Value<T>(string member, Written<T>? value, T standIn) => Value(member, value is null ? standIn : value.Value, standIn);

    /// <inheritdoc cref="Value{T}(string, Written{T}?, T)"/>
    internal T Value<T>(string member, T? value, T standIn) where T : struct => Value(member, value ?? standIn, standIn);

    /// <summary>The value of a member that may be left out, or null.</summary>
    internal T? Optional<T>(string member, Written<T>? value) where T : struct => value is null || Member(member).IsFaulty ? null : value.Value;

    /// <summary>A name, or a stand-in that nobody refers to.</summary>
    internal string Name(string member, string? value)
    {
        Place at = Member(member);
        if (value is not null && string.IsNullOrWhiteSpace(value) && !at.IsFaulty) at.Fault("a name must not be empty");
        return value is null || at.IsFaulty ? at.Path.Text : value;
    }

    /// <summary>Whether a name is the stand-in for one that is missing here.</summary>
    internal bool StandsFor(string name) => string.Equals(name, path.Text, StringComparison.Ordinal);

    /// <summary>Builds a part, and notes what the part says is wrong at the member that it names.</summary>
    /// <param name="make">Builds it, with a stand-in for each member that is faulty by now.</param>
    /// <param name="standIn">Stands in for the whole where the stand-ins of its members do not go with the rest.</param>
    /// <param name="own">What parameters of the part are called here, otherwise than elsewhere.</param>
    internal T Build<T>(Func<T> make, T? standIn = null, params (string Parameter, string Member)[] own) where T : class =>
        Build(make, e => Member(CoreWords.MemberFor(e.ParamName, own)), standIn, own);

    /// <summary>Builds a part, and notes what the part says is wrong at this very place.</summary>
    internal T BuildHere<T>(Func<T> make) where T : class => Build(make, _ => this, standIn: null);

    /// <summary>A part that may be left out, or null where it has a fault.</summary>
    internal T? Sound<T>(string member, T? part) where T : class => Member(member).IsFaulty ? null : part;

    private static T Build<T>(Func<T> make, Func<ArgumentException, Place> where, T? standIn, params (string Parameter, string Member)[] own) where T : class
    {
        while (true)
        {
            try
            {
                return make();
            }
            catch (ArgumentException e) when (!where(e).IsFaulty)
            {
                // Once more, with a stand-in for what was just noted.
                where(e).Fault(CoreWords.MessageOf(e, own));
            }
            catch (ArgumentException) when (standIn is not null)
            {
                return standIn;
            }
        }
    }

    private T Value<T>(string member, T value, T standIn) => Member(member).IsFaulty ? standIn : value;
}
