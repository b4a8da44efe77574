using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Studies;

namespace CamPower;

/// <summary>A central box or an adapter for each device.</summary>
public static class AdapterComparing
{
    /// <summary>Compares a box of the site with one adapter for each device that it feeds, at the same conditions.</summary>
    /// <param name="site">The site.</param>
    /// <param name="boxName">The name of the box.</param>
    /// <param name="adapters">The supplies that there are as adapters, in any order; those of another voltage or kind of current are left out.</param>
    /// <param name="lead">The lead between an adapter and its device: the adapters stand near the devices.</param>
    /// <param name="policy">The loading that an adapter is chosen by; its spare outputs do not matter, for an adapter has none.</param>
    /// <returns>Both in figures. A device that no adapter is strong enough for has the strongest, and the loading shows it.</returns>
    /// <remarks>Each device has the smallest adapter that feeds it. An adapter warms as the condition says for the box, so
    /// state conditions that hold for both. Its negative floats: bonds to the box, and what is tied to its outputs, fall away with the box, shields stay.</remarks>
    /// <exception cref="ArgumentNullException">An argument, or a supply, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name, it feeds no device, or no adapter gives its voltage and kind of current.</exception>
    /// <example>
    /// <code>
    /// SupplyComparison comparison = site.CompareWithAdapters("yard box", [oneAmpere, twoAmperes], lead, SizingPolicy.CommonPractice);
    /// Console.WriteLine(comparison.Adapters.DevicesInWindow);
    /// </code>
    /// </example>
    public static SupplyComparison CompareWithAdapters(this Site site, string boxName, IEnumerable<Supply> adapters, CableRun lead, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(Require.Name(boxName, nameof(boxName)), nameof(boxName));
        Supply[] offered = [.. Require.Items(adapters, nameof(adapters))
            .Where(a => a.Output.Kind == box.Supply.Output.Kind && a.Output.NominalVolts.Equals(box.Supply.Output.NominalVolts))
            .OrderBy(a => a.Output.RatedAmperes)];
        if (offered.Length == 0) throw new ArgumentException($"No adapter gives the voltage and kind of current of {boxName}.", nameof(adapters));
        if (!site.Feeds.SelectMany(g => g.Feeds).Any(f => ReferenceEquals(f.Box, box) && f.Devices.Count > 0)) throw new ArgumentException($"{boxName} feeds no device.", nameof(boxName));
        return new AdapterTrial(site, box, offered, Require.NotNull(lead, nameof(lead)), Require.NotNull(policy, nameof(policy))).Compare();
    }
}
