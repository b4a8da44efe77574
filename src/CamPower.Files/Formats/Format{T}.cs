using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <inheritdoc/>
internal abstract class Format<T> : Format
{
    /// <summary>Writes the value so that reading gives it back.</summary>
    /// <exception cref="System.NotSupportedException">The format cannot express the value.</exception>
    internal abstract void Write(SiteWriter writer, T value);

    /// <summary>A harmless value in the place of one that is missing or wrong: no check that follows fails because of it.</summary>
    internal abstract T StandIn(Place at);
}
