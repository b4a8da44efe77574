namespace CamPower.Tests.Heat;

/// <summary>
/// Air at atmospheric pressure. Source: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th
/// edition (2007), Table A.4, from memory: temperature in K, kinematic viscosity in m²/s, conductivity in W/(m·K),
/// diffusivity in m²/s, Prandtl's number.
/// </summary>
internal static class AirTable
{
    internal static readonly (double Kelvins, double Viscosity, double Conductivity, double Diffusivity, double Prandtl)[] Rows =
    [
        (200, 7.590e-6, 18.1e-3, 10.3e-6, 0.737),
        (250, 11.44e-6, 22.3e-3, 15.9e-6, 0.720),
        (300, 15.89e-6, 26.3e-3, 22.5e-6, 0.707),
        (350, 20.92e-6, 30.0e-3, 29.9e-6, 0.700),
        (400, 26.41e-6, 33.8e-3, 38.3e-6, 0.690),
    ];

    /// <summary>Between two rows straight.</summary>
    internal static (double Viscosity, double Conductivity, double Diffusivity, double Prandtl) At(double kelvins)
    {
        int above = 1;
        while (above < Rows.Length - 1 && Rows[above].Kelvins < kelvins) above++;
        var (low, high) = (Rows[above - 1], Rows[above]);
        double share = (kelvins - low.Kelvins) / (high.Kelvins - low.Kelvins);
        return (low.Viscosity + (share * (high.Viscosity - low.Viscosity)), low.Conductivity + (share * (high.Conductivity - low.Conductivity)),
            low.Diffusivity + (share * (high.Diffusivity - low.Diffusivity)), low.Prandtl + (share * (high.Prandtl - low.Prandtl)));
    }
}
