using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Heat;

/// <summary>
/// The same enclosure another way: every free face has a skin of its own, each with its heat capacity, and the clock runs
/// until nothing changes any more. Air by straight lines through a table, vertical plates by the laminar correlation up to a
/// Rayleigh number of 10⁹ and the turbulent one beyond (Incropera eq. 9.27 and 9.24, from memory), horizontal ones by the two laws with their own ranges. The sun strikes the front.
/// </summary>
internal sealed class FaceByFace(Enclosure enclosure, double lossWatts, double ambientCelsius, double solarWatts)
{
    private const double Sigma = 5.67e-8, Zero = 273.15, Step = 1;

    private readonly double _emissivity = enclosure.Wall.Emissivity.DecimalFractions;
    private readonly double _ohm = enclosure.Wall.Resistance?.SquareMeterKelvinsPerWatt ?? 0;

    internal double InsideCelsius()
    {
        (EnclosureFaces Face, double Area, double Length)[] faces = [.. Faces()];
        double ambient = ambientCelsius + Zero, inside = ambient, change = double.PositiveInfinity;
        double[] skin = [.. faces.Select(_ => ambient)];
        while (change > 1e-7)
        {
            double before = inside, gained = lossWatts;
            for (int i = 0; i < faces.Length; i++)
            {
                (EnclosureFaces face, double area, double length) = faces[i];
                double inward = FromInside(face, inside, skin[i], length), outward = Flux(face, skin[i], ambient, length);
                double sun = face == EnclosureFaces.Front ? solarWatts / area : 0;
                gained -= area * inward;
                skin[i] += Step * (inward + sun - outward) / 200;
            }

            inside += Step * gained / (200 * faces.Sum(f => f.Area));
            change = Math.Abs(inside - before);
        }

        return inside - Zero;
    }

    // Through the film and the sheet in series; the temperature between them is found by halving.
    private double FromInside(EnclosureFaces face, double inside, double skin, double length)
    {
        if (_ohm == 0) return Flux(face, inside, skin, length);
        double low = Math.Min(inside, skin), high = Math.Max(inside, skin);
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            if (Flux(face, inside, middle, length) > (middle - skin) / _ohm) low = middle;
            else high = middle;
        }

        return (low - skin) / _ohm;
    }

    // From hot to cold; negative where the skin is hotter than the air inside. The lid then has its warm side down.
    private double Flux(EnclosureFaces face, double from, double to, double length)
    {
        double rise = Math.Abs(from - to), film = (from + to) / 2;
        (double viscosity, double conductivity, double diffusivity, double prandtl) = AirTable.At(film);
        double ra = 9.81 * rise * Math.Pow(length, 3) / (film * viscosity * diffusivity);
        bool helped = face == (from > to ? EnclosureFaces.Top : EnclosureFaces.Bottom);
        double nusselt = face is EnclosureFaces.Top or EnclosureFaces.Bottom
            ? helped ? (ra < 1e7 ? 0.54 * Math.Pow(ra, 0.25) : 0.15 * Math.Pow(ra, 1.0 / 3)) : 0.27 * Math.Pow(ra, 0.25)
            : ra > 1e9 ? 0.10 * Math.Pow(ra, 1.0 / 3) : 0.68 + (0.670 * Math.Pow(ra, 0.25) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9));
        double convection = nusselt * conductivity / length * (from - to);
        return convection + (_emissivity * Sigma * (Math.Pow(from, 4) - Math.Pow(to, 4)));
    }

    private IEnumerable<(EnclosureFaces Face, double Area, double Length)> Faces()
    {
        double w = enclosure.Width.Meters, h = enclosure.Height.Meters, d = enclosure.Depth.Meters, lid = w * d / (2 * (w + d));
        return new[]
        {
            (EnclosureFaces.Top, w * d, lid), (EnclosureFaces.Bottom, w * d, lid), (EnclosureFaces.Front, w * h, h),
            (EnclosureFaces.Back, w * h, h), (EnclosureFaces.Left, d * h, h), (EnclosureFaces.Right, d * h, h),
        }.Where(f => enclosure.FreeFaces.HasFlag(f.Item1));
    }
}
