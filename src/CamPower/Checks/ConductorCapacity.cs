using System;
using CamPower.Sites;

namespace CamPower.Checks;

/// <summary>Ampacity of a conductor of a run against the temperature of its air, by insulation and installation method.</summary>
/// <remarks>What is not stated is assumed: an insulation of 60 °C, or of 90 °C where the most favorable is asked for; gauge sizes alone in
/// a cable or raceway; for metric sizes the least or the most favorable method of the table. All wires of a cable carry current, however
/// few are stated. A conductor below the smallest known size carries no more than that size; one above the largest carries more.</remarks>
internal readonly struct ConductorCapacity
{
    private readonly InstallationMethod _installationMethod;
    private readonly bool _isInstallationStated, _isSmaller;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(
        InstallationMethod installationMethod, bool isInstallationStated, double unstatedCelsius, Cable cable, Conductor conductor)
    {
        _installationMethod = installationMethod;
        _isInstallationStated = isInstallationStated;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? unstatedCelsius;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _isSmaller = !_installationMethod.Covers(conductor.Size);
        Conductor known = _isSmaller ? _installationMethod.ThinnestLike(conductor) : conductor;
        _amperesPerRootKelvin = _installationMethod.Amperes(known, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The least ampacity where installation method or insulation are not stated; null where nothing is known of a conductor so
    /// large.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor) =>
        In(Least(run, cable, conductor), run, CheckConstants.UnstatedInsulation.Value, cable, conductor);

    /// <summary>The largest ampacity where installation method or insulation are not stated; null where nothing is known of a conductor so
    /// large.</summary>
    internal static ConductorCapacity? AtMostOf(SiteRun run, Cable cable, Conductor conductor) =>
        In(IsMetric(conductor) && run.InstallationMethod is null ? InstallationMethod.OnWall(PairsOf(cable)) : Least(run, cable, conductor),
            run, CheckConstants.UnstatedInsulationAtMost.Value, cable, conductor);

    /// <summary>The least, or null where that is no less than the most.</summary>
    internal static ConductorCapacity? WhereLess(SiteRun run, Cable cable, Conductor conductor) =>
        cable.Insulation is null || (run.InstallationMethod is null && IsMetric(conductor)) ? Of(run, cable, conductor) : null;

    /// <summary>Why nothing is known of a conductor of that size, or null where something is.</summary>
    internal static ValidityBreach? BreachOf(SiteRun run, Cable cable, Conductor conductor) =>
        Least(run, cable, conductor).BreachOf(conductor);

    /// <summary>Whether the small-conductor limits of a code do not bind the conductors of an output: it claims Class 2, and its numbers do
    /// not refute that.</summary>
    internal static bool IsOfClass2(OutputFeed feed) => feed.Output.ClaimedClass == PowerLimitClass.Class2
        && feed.Box.AssessPowerLimit(feed.Output.Number, PowerLimitClass.Class2).Verdict != PowerLimitVerdict.Exceeds;

    /// <summary>Ampacity in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>Basis of the ampacity, in words.</summary>
    internal string Basis(double airCelsius)
    {
        string assumed = _cable.Insulation is null ? " (assumed)" : string.Empty;
        string smaller = _isSmaller ? ", as the smallest known size"
            : _installationMethod.IsEstimatedAt(_conductor.Size) ? ", estimated from a larger size" : string.Empty;
        string method = _isInstallationStated ? string.Empty : $", {_installationMethod} (assumed)";
        return FormattableString.Invariant($"ampacity in {airCelsius:0.#} °C air, insulation {_highestCelsius:0.#} °C")
            + assumed + smaller + method;
    }

    private static bool IsMetric(Conductor conductor) =>
        conductor.Size.Series is WireSizeSeries.SquareMillimeters or WireSizeSeries.Diameter;

    // Two wires carry current in a pair, eight in four pairs that are joined.
    private static int WiresOf(Cable cable) => cable.Outgoing.Count + cable.Return.Count;

    private static int PairsOf(Cable cable) => Math.Min(InstallationMethod.MostCircuits, (WiresOf(cable) + 1) / 2);

    private static InstallationMethod Least(SiteRun run, Cable cable, Conductor conductor)
    {
        InstallationMethod? stated = run.InstallationMethod;
        if (stated is null && IsMetric(conductor)) return InstallationMethod.InInsulatedWall(PairsOf(cable));
        return stated is null || stated.Wires < WiresOf(cable) ? InstallationMethod.InCableOrRaceway(WiresOf(cable)) : stated;
    }

    private static ConductorCapacity? In(
        InstallationMethod method, SiteRun run, double unstatedCelsius, Cable cable, Conductor conductor) =>
        method.Covers(conductor.Size) || method.IsThinner(conductor.Size)
            ? new ConductorCapacity(method, run.InstallationMethod is not null, unstatedCelsius, cable, conductor)
            : null;
}
