using System.Collections.Generic;
using static CamPower.DerivationStep;

namespace CamPower.Heat;

/// <summary>The steps from the heat in an enclosure to the temperature of its air.</summary>
internal static class HeatDerivation
{
    internal static IEnumerable<DerivationStep> Steps(HeatedEnclosure heated)
    {
        Enclosure box = heated.Enclosure;
        double area = box.FreeSquareMeters, skin = heated.SkinCelsius, sheet = heated.SkinCelsius + heated.SheetRise;
        if (heated.SolarWatts > 0)
        {
            yield return new("S", "Sunlight that the skin takes up", "alpha*G*As", @"S = \alpha\,G\,A_s",
                $"{Number(box.Wall.AbsorptanceShare)}*{Number(heated.SunWattsPerSquareMeter)}*{Number(box.SunlitSquareMeters)}",
                    heated.SolarWatts, "W", Sources.GraySurface);
        }

        yield return new("A", "Area of the free faces: sides, top, bottom", "Av + At + Ab", "A = A_v + A_t + A_b",
            $"{Number(box.SideSquareMeters)} + {Number(box.TopSquareMeters)} + {Number(box.BottomSquareMeters)}", area, "m²",
                Sources.EnclosureHeatBalance);
        foreach (DerivationStep step in Film(box, heated.Outside, "o", "outside", "skin")) yield return step;
        if (heated.Outside.Rise > 0)
        {
            yield return new("To", "Skin", "Ta + (Q + S)/(A*ho)", @"T_o = T_a + \frac{Q + S}{A\,h_o}",
                $"{Number(heated.AmbientCelsius)} + ({Number(heated.LossWatts)} + "
                    + $"{Number(heated.SolarWatts)})/({Number(area)}*{Number(heated.Outside.Coefficient)})", skin, "°C",
                    Sources.EnclosureHeatBalance);
        }

        if (heated.SheetRise > 0)
        {
            yield return new("Tw", "Inner face of the wall", "To + Q*Rw/A", @"T_w = T_o + \frac{Q\,R_w}{A}",
                $"{Number(skin)} + {Number(heated.LossWatts)}*{Number(box.Wall.SquareMeterKelvinsPerWatt)}/{Number(area)}", sheet, "°C",
                    Sources.EnclosureHeatBalance);
        }

        foreach (DerivationStep step in Film(box, heated.InsideFilm, "i", "inside", "wall")) yield return step;
        if (heated.InsideFilm.Rise > 0)
        {
            yield return new("Ti", "Air inside", "Tw + Q/(A*hi)", @"T_i = T_w + \frac{Q}{A\,h_i}",
                $"{Number(sheet)} + {Number(heated.LossWatts)}/({Number(area)}*{Number(heated.InsideFilm.Coefficient)})",
                    heated.InsideCelsius, "°C", Sources.EnclosureHeatBalance);
        }
    }

    // A film that carries no heat has no coefficient to tell.
    private static IEnumerable<DerivationStep> Film(Enclosure box, Film film, string side, string where, string wall)
    {
        if (!(film.Rise > 0)) yield break;
        AirProperties air = film.Air;
        string k = Number(air.Conductivity), length = Number(box.LidLengthMeters);
        string ofSide = Number(air.Rayleigh(film.Rise, box.HeightMeters));
        string ofLid = Number(air.Rayleigh(film.Rise, box.LidLengthMeters));
        yield return new($"hv{side}", $"Convection {where}, at the sides",
            "k/H*max(0.68 + 0.670*Ra^(1/4)/(1 + (0.492/Pr)^(9/16))^(4/9), 0.10*Ra^(1/3))",
            $@"h_{{v{side}}} = \frac{{k}}{{H}}\max\left(0.68 + "
                + @"\frac{0.670\,Ra^{1/4}}{(1 + (0.492/Pr)^{9/16})^{4/9}}, 0.10\,Ra^{1/3}\right)",
            $"{k}/{Number(box.HeightMeters)}*max(0.68 + 0.670*{ofSide}^(1/4)/(1 "
                + $"+ (0.492/{Number(air.Prandtl)})^(9/16))^(4/9), 0.10*{ofSide}^(1/3))",
            film.Side, "W/(m²·K)", Sources.VerticalPlate);
        yield return new($"ht{side}", $"Convection {where}, at the top", "k/L*max(0.54*Ra^(1/4), 0.15*Ra^(1/3))",
            $@"h_{{t{side}}} = \frac{{k}}{{L}}\max(0.54\,Ra^{{1/4}}, 0.15\,Ra^{{1/3}})",
            $"{k}/{length}*max(0.54*{ofLid}^(1/4), 0.15*{ofLid}^(1/3))", film.Top, "W/(m²·K)", Sources.HorizontalPlate);
        yield return new($"hb{side}", $"Convection {where}, at the bottom", "k/L*0.27*Ra^(1/4)",
            $@"h_{{b{side}}} = 0.27\,\frac{{k}}{{L}}\,Ra^{{1/4}}", $"{k}/{length}*0.27*{ofLid}^(1/4)", film.Bottom, "W/(m²·K)",
                Sources.HorizontalPlate);
        string cold = Number(film.ColdKelvins), warm = Number(film.ColdKelvins + film.Rise);
        yield return new($"hr{side}", $"Radiation {where}, between the {wall} and the air's temperature",
            "eps*sigma*(Tc^2 + Th^2)*(Tc + Th)",
            $@"h_{{r{side}}} = \epsilon\,\sigma\,(T_c^2 + T_h^2)(T_c + T_h)",
            $"{Number(box.Wall.EmissivityShare)}*{Number(HeatConstants.StefanBoltzmann.Value)}*({cold}^2 "
                + $"+ {warm}^2)*({cold} + {warm})", film.Radiation, "W/(m²·K)", Sources.GraySurface);
        yield return new($"h{side}", $"Film {where}", $"hr{side} + (Av*hv{side} + At*ht{side} + Ab*hb{side})/A",
            $@"h_{side} = h_{{r{side}}} + \frac{{A_v h_{{v{side}}} + A_t h_{{t{side}}} + A_b h_{{b{side}}}}}{{A}}",
            $"{Number(film.Radiation)} + ({Number(box.SideSquareMeters)}*{Number(film.Side)} + "
                + $"{Number(box.TopSquareMeters)}*{Number(film.Top)} + "
                    + $"{Number(box.BottomSquareMeters)}*{Number(film.Bottom)})/{Number(box.FreeSquareMeters)}",
            film.Coefficient, "W/(m²·K)", Sources.EnclosureHeatBalance);
    }
}
