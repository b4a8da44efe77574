using System;
using CamPower.Sites;

namespace CamPower.Checks;

/// <summary>Ampacity of a conductor of a run against the temperature of its air, by insulation and installation method.</summary>
/// <remarks>What is not stated is assumed: an insulation of 60 °C; gauge sizes alone in a cable or raceway; for metric sizes the least
/// favorable method of the table, or the most favorable where that is asked for. A conductor below the smallest known size carries no more
/// than that size.</remarks>
internal readonly struct ConductorCapacity
{
    private static readonly InstallationMethod Alone = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);
    private static readonly InstallationMethod LeastMetric = InstallationMethod.InInsulatedWall(), MostMetric = InstallationMethod.OnWall();

    private readonly InstallationMethod _installationMethod;
    private readonly bool _isInstallationStated, _isSmaller;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(InstallationMethod installationMethod, bool isInstallationStated, Cable cable, Conductor conductor)
    {
        _installationMethod = installationMethod;
        _isInstallationStated = isInstallationStated;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? CheckConstants.UnstatedInsulation.Value;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _isSmaller = !_installationMethod.Covers(conductor.Size);
        Conductor known = _isSmaller ? _installationMethod.ThinnestLike(conductor) : conductor;
        _amperesPerRootKelvin = _installationMethod.Amperes(known, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The least ampacity where the installation method is not stated; null where nothing is known of a conductor so
    /// large.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor) =>
        In(run.InstallationMethod ?? Least(conductor), run.InstallationMethod is not null, cable, conductor);

    /// <summary>The largest ampacity where the installation method is not stated; null where nothing is known of a conductor so
    /// large.</summary>
    internal static ConductorCapacity? AtMostOf(SiteRun run, Cable cable, Conductor conductor) =>
        In(run.InstallationMethod ?? (IsMetric(conductor) ? MostMetric : Alone), run.InstallationMethod is not null, cable, conductor);

    /// <summary>The least, or null where that is no less than the most.</summary>
    internal static ConductorCapacity? WhereLess(SiteRun run, Cable cable, Conductor conductor) =>
        run.InstallationMethod is null && IsMetric(conductor) ? Of(run, cable, conductor) : null;

    /// <summary>Why nothing is known of a conductor of that size, or null where something is.</summary>
    internal static ValidityBreach? BreachOf(SiteRun run, Conductor conductor) =>
        (run.InstallationMethod ?? Least(conductor)).BreachOf(conductor);

    /// <summary>Whether the small-conductor limits of a code do not bind the conductors of an output: it claims Class 2, and its numbers do
    /// not refute that.</summary>
    internal static bool IsOfClass2(OutputFeed feed) => feed.Output.ClaimedClass == PowerLimitClass.Class2
        && feed.Box.AssessPowerLimit(feed.Output.Number, PowerLimitClass.Class2).Verdict != PowerLimitVerdict.Exceeds;

    /// <summary>Ampacity in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>What the ampacity rests on, in words.</summary>
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

    private static InstallationMethod Least(Conductor conductor) => IsMetric(conductor) ? LeastMetric : Alone;

    private static ConductorCapacity? In(InstallationMethod installationMethod, bool isStated, Cable cable, Conductor conductor) =>
        installationMethod.Covers(conductor.Size) || installationMethod.IsThinner(conductor.Size)
            ? new ConductorCapacity(installationMethod, isStated, cable, conductor)
            : null;
}
