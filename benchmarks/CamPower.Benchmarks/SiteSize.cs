using System;
using System.Globalization;

namespace CamPower.Benchmarks;

/// <summary>How large a made-up site is: so many boxes, each with so many outputs, one camera on each.</summary>
public readonly record struct SiteSize(int Boxes, int Outputs)
{
    /// <summary>All the outputs, and so all the cameras, of the site.</summary>
    public int Count => Boxes * Outputs;

    /// <summary>Reads what <see cref="ToString"/> writes.</summary>
    internal static SiteSize Parse(string text)
    {
        string[] numbers = text.Split('x');
        return new SiteSize(int.Parse(numbers[0], CultureInfo.InvariantCulture), int.Parse(numbers[1], CultureInfo.InvariantCulture));
    }

    public override string ToString() => FormattableString.Invariant($"{Boxes}x{Outputs}");
}
