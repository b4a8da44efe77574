using System;
using CamPower.Sites;

namespace CamPower.Checks;

/// <summary>Ampacity of a conductor of a run against the temperature of its air, by insulation and installation method.</summary>
/// <remarks>What is not stated is assumed: an insulation of 60 °C, or of 90 °C where the most favorable is asked for; gauge sizes alone in
/// a cable or raceway; for metric sizes the least or the most favorable method of the table. All wires of a cable carry current, however
/// few are stated. A conductor below the smallest known size carries no more than that size. One above the largest carries at least what
/// that size does, and at most as many amperes for each square millimeter: a larger conductor sheds less of its heat (NEC Table 310.16,
/// IEC 60364-5-52 Table B.52.2).</remarks>
internal readonly struct ConductorCapacity
{
    // Of a pair, as most cables are: to make a method takes longer than to ask it.
    private static readonly InstallationMethod PairAlone = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);
    private static readonly InstallationMethod LeastOfPair = InstallationMethod.InInsulatedWall(), MostOfPair = InstallationMethod.OnWall();

    private readonly InstallationMethod _installationMethod;
    private readonly bool _isInstallationStated, _isSmaller, _isLarger;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(InstallationMethod installationMethod, bool isInstallationStated, bool isAtMost, double unstatedCelsius,
        Cable cable, Conductor conductor)
    {
        _installationMethod = installationMethod;
        _isInstallationStated = isInstallationStated;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? unstatedCelsius;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _isSmaller = _installationMethod.IsThinner(conductor.Size);
        _isLarger = IsLarger(_installationMethod, conductor.Size);
        Conductor known = _isSmaller ? _installationMethod.ThinnestLike(conductor)
            : _isLarger ? _installationMethod.ThickestLike(conductor) : conductor;
        double growth = _isLarger && isAtMost ? conductor.Size.SquareMeters / known.Size.SquareMeters : 1;
        _amperesPerRootKelvin = growth * _installationMethod.Amperes(known, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The least ampacity, of what is not stated or known.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor) => new ConductorCapacity(
        Least(run, cable, conductor), run.InstallationMethod is not null,
        isAtMost: false, CheckConstants.UnstatedInsulation.Value, cable, conductor);

    /// <summary>The largest ampacity, of what is not stated or known.</summary>
    internal static ConductorCapacity? AtMostOf(SiteRun run, Cable cable, Conductor conductor) => new ConductorCapacity(
        IsMetric(conductor) && run.InstallationMethod is null ? MostMetric(PairsOf(cable)) : Least(run, cable, conductor),
        run.InstallationMethod is not null, isAtMost: true, CheckConstants.UnstatedInsulationAtMost.Value, cable, conductor);

    /// <summary>The least, or null where that is no less than the most.</summary>
    internal static ConductorCapacity? WhereLess(SiteRun run, Cable cable, Conductor conductor)
    {
        bool isLess = cable.Insulation is null || (run.InstallationMethod is null && IsMetric(conductor))
            || IsLarger(Least(run, cable, conductor), conductor.Size);
        return isLess ? Of(run, cable, conductor) : null;
    }

    /// <summary>How far a conductor is below the sizes of which something is known, or null where it is not. Of a larger one bounds are
    /// known.</summary>
    internal static ValidityBreach? BreachOf(SiteRun run, Cable cable, Conductor conductor)
    {
        InstallationMethod method = Least(run, cable, conductor);
        return method.IsThinner(conductor.Size) ? method.BreachOf(conductor) : null;
    }

    /// <summary>Whether the small-conductor limits of a code do not bind the conductors of an output: it claims Class 2, and its numbers do
    /// not refute that.</summary>
    internal static bool IsOfClass2(OutputFeed feed) => feed.Output.ClaimedClass == PowerLimitClass.Class2
        && feed.Box.AssessPowerLimit(feed.Output.Number, PowerLimitClass.Class2).Verdict != PowerLimitVerdict.Exceeds;

    /// <summary>Ampacity in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>Whether its size is above all of which something is known, so that it may carry more.</summary>
    internal bool IsOfLargerSize => _isLarger;

    /// <summary>Basis of the ampacity, in words.</summary>
    internal string Basis(double airCelsius)
    {
        string assumed = _cable.Insulation is null ? " (assumed)" : string.Empty;
        string smaller = _isSmaller ? ", as the smallest known size" : _isLarger ? ", from the largest known size"
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
        if (stated is null && IsMetric(conductor)) return LeastMetric(PairsOf(cable));
        return stated is null || stated.Wires < WiresOf(cable) ? Alone(WiresOf(cable)) : stated;
    }

    private static InstallationMethod Alone(int wires) => wires == 2 ? PairAlone : InstallationMethod.InCableOrRaceway(wires);

    private static InstallationMethod LeastMetric(int pairs) => pairs == 1 ? LeastOfPair : InstallationMethod.InInsulatedWall(pairs);

    private static InstallationMethod MostMetric(int pairs) => pairs == 1 ? MostOfPair : InstallationMethod.OnWall(pairs);

    private static bool IsLarger(InstallationMethod method, WireSize size) => !method.Covers(size) && !method.IsThinner(size);
}
