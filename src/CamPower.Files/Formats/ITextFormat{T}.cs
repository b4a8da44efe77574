using System;

namespace CamPower.Files.Formats;

/// <inheritdoc/>
internal interface ITextFormat<T> : ITextFormat
{
    /// <summary>Reads the text.</summary>
    /// <exception cref="FormatException">The text is no such value; the message says why.</exception>
    T Parse(string text);

    /// <summary>Writes the value so that <see cref="Parse"/> gives it back.</summary>
    /// <exception cref="NotSupportedException">The format cannot express the value.</exception>
    string Format(T value);
}
