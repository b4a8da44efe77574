using System;
using System.Collections.Generic;

namespace CamPower;

/// <summary>A run as it lies on a site: from an output or a junction to a junction.</summary>
/// <remarks>Immutable. A junction exists where a run ends; devices and further runs are connected to it by its name.</remarks>
public sealed class SiteRun
{
    /// <summary>Places a run.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Name of the junction at its far end. Not empty.</param>
    /// <param name="run">The cable and joints.</param>
    /// <param name="returnAt">Name of another run's junction to whose negative this one's far end is joined, instead of
    /// having a return conductor of its own; null where it has one.</param>
    /// <param name="installationMethod">Its installation method, which decides how warm it gets; null where it is not stated.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public SiteRun(RunOrigin from, string to, CableRun run, string? returnAt = null, InstallationMethod? installationMethod = null)
    {
        From = Require.NotNull(from, nameof(from));
        To = Require.Name(to, nameof(to));
        Run = Require.NotNull(run, nameof(run));
        ReturnAt = returnAt is null ? null : Require.Name(returnAt, nameof(returnAt));
        InstallationMethod = installationMethod;
    }

    /// <summary>Where it starts.</summary>
    public RunOrigin From { get; }

    /// <summary>Name of the junction at its far end.</summary>
    public string To { get; }

    /// <summary>The cable and joints.</summary>
    public CableRun Run { get; }

    /// <summary>Name of the junction whose negative it shares, or null where it has a return conductor of its own.</summary>
    /// <remarks>Of its own cable only the outgoing conductor is used then.</remarks>
    public string? ReturnAt { get; }

    /// <summary>Its installation method, which decides how warm it gets, or null where it is not stated.</summary>
    public InstallationMethod? InstallationMethod { get; }

    /// <summary>Both ends in words; never throws.</summary>
    public override string ToString() => $"{From} to {To}";

    /// <summary>The runs over whose return conductors the current of a junction goes back, from there to its box.</summary>
    /// <param name="junction">Name of the junction.</param>
    /// <param name="runTo">The run that ends at a junction.</param>
    internal static IEnumerable<SiteRun> WayBack(string junction, Func<string, SiteRun> runTo)
    {
        for (string? at = junction; at is not null;)
        {
            SiteRun run = runTo(at);
            if (run.ReturnAt is null) yield return run;
            at = run.ReturnAt ?? run.From.JunctionName;
        }
    }

    /// <summary>The same run from another place.</summary>
    internal SiteRun StartingAt(RunOrigin from) => new(from, To, Run, ReturnAt, InstallationMethod);

    /// <summary>The same run of other cables and joints.</summary>
    internal SiteRun Of(CableRun run) => new(From, To, run, ReturnAt, InstallationMethod);
}
