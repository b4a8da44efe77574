using System;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Classroom.Bench;

/// <summary>A number as somebody types it, and what is wrong with it.</summary>
public sealed class NumberField(string text)
{
    private const string NotANumber = "Write a plain number with a decimal point, such as 120 or 12.5.";
    private const string FrameworkPart = " (Parameter";

    public string Text { get; set; } = text;

    /// <summary>What is wrong, in the field's own name and unit where its range says so, or in the library's words; null where nothing is.</summary>
    public string? Fault { get; private set; }

    public bool TryRead(out double value) =>
        double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    /// <summary>Reads the number and makes a thing of it; what cannot be made leaves its fault behind.</summary>
    /// <param name="make">Makes it of a number in the range.</param>
    /// <param name="made">What was made.</param>
    /// <param name="range">What the field takes.</param>
    public bool TryMake<T>(Func<double, T> make, [NotNullWhen(true)] out T? made, FieldRange? range = null) where T : notnull
    {
        made = default;
        if (!TryRead(out double value))
        {
            Fault = range?.NotANumber ?? NotANumber;
            return false;
        }

        if (range?.Holds(value) == false)
        {
            Fault = range.Refusal(value);
            return false;
        }

        try
        {
            made = make(value);
            Fault = null;
            return true;
        }
        catch (Exception refusal) when (refusal is ArgumentException or OverflowException)
        {
            Fault = WithoutFrameworkPart(refusal.Message);
            return false;
        }
    }

    /// <summary>Writes the number in another unit; what is no number stays as it is.</summary>
    public void Convert(Func<double, double> convert)
    {
        if (TryRead(out double value)) Text = convert(value).ToString("G6", CultureInfo.InvariantCulture);
    }

    // The framework adds the parameter and the value, which the library's sentence already names.
    private static string WithoutFrameworkPart(string message)
    {
        int end = message.IndexOf(FrameworkPart, StringComparison.Ordinal);
        return end < 0 ? message : message[..end];
    }
}
