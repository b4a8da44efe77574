using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Backup;
using CamPower.Commissioning;
using CamPower.Faults;
using CamPower.Mains;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>Asks a site: solved in every condition, its faults, its receptacles, where a supply may be set, which box it needs.</summary>
/// <remarks>Every question is here, each answered by the room that the answer belongs to.</remarks>
public static class SiteQuestions
{
    /// <summary>The site solved in every one of its conditions.</summary>
    /// <param name="site">The site.</param>
    /// <param name="cancellationToken">Cancels it; a large site whose returns are shared takes long.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// SiteAssessment assessment = site.Assess();
    /// foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device.Worst);
    /// </code>
    /// </example>
    public static SiteAssessment Assess(this Site site, CancellationToken cancellationToken = default) =>
        SiteSolver.Solve(Require.NotNull(site, nameof(site)), cancellationToken);

    /// <summary>A short at every place of every used output: terminals, joints, junctions and cameras.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Breaks off the study of a short, which starts when it is first asked for and then throws
    /// <see cref="OperationCanceledException"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <remarks>
    /// Over the real way of runs. A run that shares another's negative counts by its own outgoing pole and that other way back, and is
    /// shorted at its end alone; what video shields carry back is left out, so that the least current is not overstated. The least current
    /// is what a supply in overload leaves while its other outputs take the most that they do in any condition; for the largest they take
    /// nothing.
    /// <para>Faults start fires. A study on paper does not replace the local code and a licensed electrician.</para>
    /// </remarks>
    /// <example>
    /// <code>
    /// foreach (OutputFaults output in site.Assess().StudyFaults()) Console.WriteLine(output);
    /// </code>
    /// </example>
    public static IReadOnlyList<OutputFaults> StudyFaults(this SiteAssessment assessment, CancellationToken cancellationToken = default) =>
        SiteFaultStudy.Of(Require.NotNull(assessment, nameof(assessment)), cancellationToken);

    /// <summary>Every receptacle that a box is plugged into, in the order of the boxes, in every condition.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (ReceptacleAssessment receptacle in site.Assess().StudyReceptacles()) Console.WriteLine(receptacle);
    /// </code>
    /// </example>
    public static IReadOnlyList<ReceptacleAssessment> StudyReceptacles(this SiteAssessment assessment) =>
        ReceptacleAssessment.AllOf(Require.NotNull(assessment, nameof(assessment)));

    /// <summary>Every circuit breaker that a receptacle states: the start of all supplies on it, and their leakage.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (BreakerAssessment breaker in site.Assess().StudyBreakers()) Console.WriteLine(breaker);
    /// </code>
    /// </example>
    public static IReadOnlyList<BreakerAssessment> StudyBreakers(this SiteAssessment assessment) =>
        BreakerAssessment.Of(assessment.StudyReceptacles());

    /// <summary>Every uninterruptible supply before a box: what its boxes take, and how long it carries them.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (UninterruptibleAssessment standby in site.Assess().StudyUninterruptible()) Console.WriteLine(standby);
    /// </code>
    /// </example>
    public static IReadOnlyList<UninterruptibleAssessment> StudyUninterruptible(this SiteAssessment assessment) =>
        UninterruptibleAssessment.Of(assessment.StudyReceptacles());

    /// <summary>What all boxes take from the mains in each condition, and in a year by the hours of the conditions.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// EnergyAssessment energy = site.Assess().StudyEnergy();
    /// </code>
    /// </example>
    public static EnergyAssessment StudyEnergy(this SiteAssessment assessment) => new(Require.NotNull(assessment, nameof(assessment)));

    /// <summary>Every box with a battery: how long it runs in each condition that lasts, and its fuse and charger.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (BackupAssessment backup in site.Assess().StudyBackup()) Console.WriteLine(backup.Worst?.New.ToFirstDropOut);
    /// </code>
    /// </example>
    public static IReadOnlyList<BackupAssessment> StudyBackup(this SiteAssessment assessment) =>
        BackupStudy.Of(Require.NotNull(assessment, nameof(assessment)));

    /// <summary>Every box with a second supply: what each of the two gives, and what the reserve does when the main one fails.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Cancels it: the site is solved again for each such box.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    /// <example>
    /// <code>
    /// foreach (ReserveAssessment reserve in site.Assess().StudyReserves()) Console.WriteLine(reserve);
    /// </code>
    /// </example>
    public static IReadOnlyList<ReserveAssessment> StudyReserves(
        this SiteAssessment assessment, CancellationToken cancellationToken = default) =>
        ReserveAssessment.Of(Require.NotNull(assessment, nameof(assessment)), cancellationToken);

    /// <summary>A box on its battery, from full to the end.</summary>
    /// <param name="site">The site.</param>
    /// <param name="boxName">Name of a box with a battery.</param>
    /// <param name="conditions">The conditions from the loss of the mains, one after the other for its duration; the last one lasts to the
    /// end. At least one.</param>
    /// <remarks>The battery is as warm as the surroundings of the box; its capacity is that of the coldest condition. All
    /// other boxes are off. The voltage of each device is its lowest: the maximum resistance of protective devices. The
    /// times are exact to better than 1e-5 of themselves.</remarks>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">There is no such box, it has no battery, there is no condition, or one before the last states no
    /// duration.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The battery states no capacity or resistance at the temperature around the box.
    /// </exception>
    /// <example>
    /// <code>
    /// BatteryRun run = site.RunOnBattery("yard box", night);
    /// Console.WriteLine(run.ToFirstDropOut);
    /// </code>
    /// </example>
    public static BatteryRun RunOnBattery(this Site site, string boxName, params Condition[] conditions) => BackupStudy.Run(
        Require.NotNull(site, nameof(site)), boxName, Require.Items(conditions, nameof(conditions)));

    /// <summary>The smallest battery of a catalog on which every device of a box runs as long as wanted.</summary>
    /// <param name="site">The site.</param>
    /// <param name="boxName">Name of the box; the battery that it has does not count.</param>
    /// <param name="catalog">The batteries to choose from, in any order.</param>
    /// <param name="policy">What must be left for age and margin.</param>
    /// <param name="wanted">The time until the first device is off, at least 0. [h]</param>
    /// <param name="conditions">The conditions from the loss of the mains, as for <see cref="RunOnBattery"/>.</param>
    /// <returns>The run of the battery that was chosen, at the end of its life and without its margin; null where none lasts.</returns>
    /// <remarks>A battery that has more volts at rest than the charger gives is never full, and is passed over.</remarks>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">As for <see cref="RunOnBattery"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The supply gives alternating current.</exception>
    /// <example>
    /// <code>
    /// BatteryRun? chosen = site.SmallestBatteryFor(
    ///     "yard box", BatteryCatalog.Generic12Volt, BackupPolicy.CommonPractice, Duration.FromHours(14), night);
    /// </code>
    /// </example>
    public static BatteryRun? SmallestBatteryFor(this Site site, string boxName, IEnumerable<Battery> catalog, BackupPolicy policy,
        Duration wanted, params Condition[] conditions) => BackupStudy.Smallest(Require.NotNull(site, nameof(site)),
        site.BoxNamed(boxName, nameof(boxName)), Require.Items(catalog, nameof(catalog)), Require.NotNull(policy, nameof(policy)),
        wanted, Require.Items(conditions, nameof(conditions)));

    /// <summary>The interval of set point in which every device of a box is up and inside its accepted range, in every condition.</summary>
    /// <param name="site">The site. The other boxes keep their set points.</param>
    /// <param name="boxName">The name of the box or adapter.</param>
    /// <param name="cancellationToken">Cancels it; a large site whose returns are shared takes long.</param>
    /// <returns>The window with the limit at each end named; it may be empty.</returns>
    /// <remarks>
    /// The whole site is solved at set points, and each end found by bisection to 1 nV. With one return a device more
    /// source voltage always means more voltage at every device, so what is inside the ends holds throughout. Where
    /// returns are shared that is no law: the range is walked in a hundred steps first, and a spot between two steps can
    /// be missed. A device that does not accept the supply's kind of current is left out: no set point helps it.
    /// Limits are sought up to 100 kV; one that says so is never met.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// TrimWindow window = site.TrimWindowOf("yard box");
    /// Site trimmed = site.With(window.Box.WithSetPoint(window.Middle));
    /// </code>
    /// </example>
    public static TrimWindow TrimWindowOf(this Site site, string boxName, CancellationToken cancellationToken = default)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(boxName, nameof(boxName));
        return new TrimSearch(Converters.Solved(site, cancellationToken), box, cancellationToken).Window();
    }

    /// <summary>The smallest box of a catalog that can feed what a box of the site feeds.</summary>
    /// <param name="site">The site, its runs included: a device at the end of a long cable draws more.</param>
    /// <param name="boxName">The name of the box that is to be chosen.</param>
    /// <param name="catalog">The boxes to choose from, in any order. They may bear any names.</param>
    /// <param name="policy">The room that it must leave.</param>
    /// <returns>The choice, and of every box of the catalog why it will or will not do; none is an answer.</returns>
    /// <remarks>
    /// The site is solved with each supply in the place of the present one, set as that is where its trim range allows and as it is listed
    /// otherwise; a box that declares no enclosure is taken to be in that of the present one. A box in an enclosure whose efficiency is
    /// not stated up to its load will not do: its inside temperature is not known. Outputs may be wired anew: the strongest gets the
    /// largest current. Whether the devices get enough voltage is not a matter of size: <see cref="TrimWindowOf"/> answers that.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a box of the catalog, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <example>
    /// <code>
    /// BoxChoice choice = site.SmallestBoxFor("yard box", BoxCatalog.Generic, SizingPolicy.CommonPractice);
    /// foreach (BoxCandidate candidate in choice.Candidates) Console.WriteLine(candidate);
    /// </code>
    /// </example>
    public static BoxChoice SmallestBoxFor(this Site site, string boxName, IEnumerable<DistributionBox> catalog, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(boxName, nameof(boxName));
        return new BoxTrial(site, box, Require.NotNull(policy, nameof(policy))).Choose(Require.Items(catalog, nameof(catalog)));
    }

    /// <summary>The fewest boxes of a catalog that can feed what a box of the site feeds, and what goes to which.</summary>
    /// <param name="site">The site, its runs included.</param>
    /// <param name="boxName">The name of the box that is to be divided.</param>
    /// <param name="catalog">The boxes to choose from, each as often as wanted, in any order.</param>
    /// <param name="policy">The room that each must leave.</param>
    /// <returns>The boxes, a lower bound on their number with what sets it, and the site with them; none is an answer.</returns>
    /// <remarks>
    /// Each box must pass what <see cref="SmallestBoxFor"/> asks for. Outputs whose returns meet stay together. The bound is
    /// what the whole needs over what the best box of the catalog has, in outputs and in current; where no way of dividing
    /// the outputs among so many boxes is left untried and none will do, it rises by one. A search that would take too long
    /// ends with more boxes than the bound, and says so. The same input always gives the same boxes. Where the boxes hang,
    /// and whether the devices get enough voltage, is not asked: the runs stay as they are. Each box that brings no enclosure of its own
    /// is taken to hang in one like the present one, alone in it also where the present one is in a cabinet beside others; one that
    /// declares no receptacle is plugged into that of the present one. Outputs that are tied stay tied: an end at an output that feeds
    /// nothing goes to a free one of the same box as the other end, and the tie falls away where there is none.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a box of the catalog, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <example>
    /// <code>
    /// BoxSplit split = site.SplitFor("yard box", BoxCatalog.Generic, SizingPolicy.CommonPractice);
    /// Console.WriteLine($"{split.Boxes.Count} boxes, proven least: {split.IsProvenLeast}");
    /// SiteAssessment divided = split.Site.Assess();
    /// </code>
    /// </example>
    public static BoxSplit SplitFor(this Site site, string boxName, IEnumerable<DistributionBox> catalog, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(boxName, nameof(boxName));
        return new BoxSplitSearch(site, box, Require.NotNull(policy, nameof(policy)), Require.Items(catalog, nameof(catalog))).Split();
    }

    /// <summary>How a box of the site feeds its devices, in the figures that ways of feeding them are compared by.</summary>
    /// <param name="site">The site.</param>
    /// <param name="boxName">The name of the box.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name, or it feeds no device.</exception>
    /// <example>
    /// <code>
    /// SupplyLayout central = site.LayoutOf("yard box");
    /// SupplyLayout adapters = site.LayoutWithAdapters("yard box", [oneAmpere, twoAmperes], lead, SizingPolicy.CommonPractice);
    /// </code>
    /// </example>
    public static SupplyLayout LayoutOf(this Site site, string boxName) =>
        new(Require.NotNull(site, nameof(site)), AdapterTrial.FedBy(site, FeedingBox(site, boxName)));

    /// <summary>The same devices with an adapter for each in the place of the box, at the same conditions.</summary>
    /// <param name="site">The site.</param>
    /// <param name="boxName">The name of the box.</param>
    /// <param name="adapters">The supplies that there are as adapters, in any order; those of another voltage or kind of current are left
    /// out.</param>
    /// <param name="lead">The lead between an adapter and its device: the adapters are near the devices.</param>
    /// <param name="policy">The loading that an adapter is chosen by; its spare outputs do not matter, for an adapter has none.</param>
    /// <returns>The figures. A device that no adapter is strong enough for has the strongest, and the loading shows it.</returns>
    /// <remarks>Each device has the smallest adapter that feeds it. An adapter warms as the condition says for the box, so state conditions
    /// that hold for both. Its negative floats: bonds to the box, and what is tied to its outputs, fall away with the box, shields stay.
    /// Where receptacles are, who may mount them and what it costs no figure here knows.</remarks>
    /// <exception cref="ArgumentNullException">An argument, or a supply, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name, it feeds no device, or no adapter gives its voltage and kind
    /// of current.</exception>
    /// <example>
    /// <code>
    /// Console.WriteLine(site.LayoutWithAdapters("yard box", [oneAmpere], lead, SizingPolicy.CommonPractice).DevicesInWindow);
    /// </code>
    /// </example>
    public static SupplyLayout LayoutWithAdapters(
        this Site site, string boxName, IEnumerable<Supply> adapters, CableRun lead, SizingPolicy policy)
    {
        DistributionBox box = FeedingBox(Require.NotNull(site, nameof(site)), boxName);
        Supply[] offered = [.. Require.Items(adapters, nameof(adapters))
            .Where(a => a.Output.Kind == box.Supply.Output.Kind && a.Output.NominalVolts.Equals(box.Supply.Output.NominalVolts))
            .OrderBy(a => a.Output.RatedAmperes)];
        if (offered.Length == 0)
        {
            throw new ArgumentException($"No adapter gives the voltage and kind of current of {boxName}.", nameof(adapters));
        }

        return new AdapterTrial(site, box, offered, Require.NotNull(lead, nameof(lead)), Require.NotNull(policy, nameof(policy))).Layout();
    }

    /// <summary>What removes each finding of a site: the changes that are sold, each tried by a full assessment and check.</summary>
    /// <param name="site">The site.</param>
    /// <param name="rules">The rules that find, and that every changed site is checked against.</param>
    /// <param name="prices">What is sold, and what it costs.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>Every finding that has a number, or is a Danger or a Failure, with its remedies, the cheapest first.</returns>
    /// <remarks>A remedy removes its finding, adds no finding and raises no severity. Tried are larger sizes, a second cable in parallel,
    /// set points inside the trim window, protective devices, larger supplies, a second box, other outputs, and a cable of its own for a
    /// device that shares one; two changes together where no single one helps. Of sizes, ratings and protective devices the first that
    /// helps is named. Other places for a box are not tried: no file has the distances.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// foreach (FindingRemedies found in site.FindRemedies(RuleSet.Standard, PriceList.Neutral)) Console.WriteLine(found);
    /// </code>
    /// </example>
    public static IReadOnlyList<FindingRemedies> FindRemedies(
        this Site site, RuleSet rules, PriceList prices, CancellationToken cancellationToken = default) => RemedySearch.All(
        Require.NotNull(site, nameof(site)), Require.NotNull(rules, nameof(rules)), Require.NotNull(prices, nameof(prices)),
        cancellationToken);

    /// <summary>The cheapest set of changes after which no Danger and no Failure is left.</summary>
    /// <param name="site">The site.</param>
    /// <param name="rules">The rules that find.</param>
    /// <param name="prices">What is sold, and what it costs.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The changes, the changed site and what is left; whether every cheaper set was tried.</returns>
    /// <remarks>The changes that are tried are those of <see cref="FindRemedies"/>. The same input always gives the same set.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example><code>SiteRepair repair = site.CheapestRepair(RuleSet.Standard, PriceList.Neutral);</code></example>
    public static SiteRepair CheapestRepair(
        this Site site, RuleSet rules, PriceList prices, CancellationToken cancellationToken = default) => RepairSearch.Of(
        Require.NotNull(site, nameof(site)), Require.NotNull(rules, nameof(rules)), Require.NotNull(prices, nameof(prices)),
        cancellationToken);

    /// <summary>What is different from another version of the site.</summary>
    /// <param name="after">The site as it is now.</param>
    /// <param name="before">The site as it was.</param>
    /// <param name="rules">The rules that both are checked against.</param>
    /// <param name="prices">What material costs.</param>
    /// <returns>Parts, findings, margins and material that differ. A site compared with itself differs in nothing.</returns>
    /// <remarks>Margins are those of the worst condition: of devices up to both ends of their range, of outputs up to their limit, of boxes
    /// up to their derated rating. Material is counted by <see cref="MaterialPolicy.CommonPractice"/>.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <example>
    /// <code>
    /// Console.WriteLine(after.ComparedWith(before, RuleSet.Standard, PriceList.Neutral));
    /// </code>
    /// </example>
    public static SiteComparison ComparedWith(this Site after, Site before, RuleSet rules, PriceList prices) => new SiteDifference(
        Require.NotNull(before, nameof(before)), Require.NotNull(after, nameof(after)), Require.NotNull(rules, nameof(rules)),
        Require.NotNull(prices, nameof(prices))).Compare();

    /// <summary>Where one more device may be connected: at every output and every junction, the best place first.</summary>
    /// <param name="site">The site.</param>
    /// <param name="model">The device.</param>
    /// <param name="lead">The run between the place and the device.</param>
    /// <param name="rules">The rules that the site with the device is checked against.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>Each place with its answer: those without a caution first, then those that leave the most voltage to everyone.</returns>
    /// <remarks>The lead is the same from every place: ask again with its length where a place is farther away.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// foreach (DevicePlace place in site.PlacesFor(dome, lead, RuleSet.Standard)) Console.WriteLine(place);
    /// </code>
    /// </example>
    public static IReadOnlyList<DevicePlace> PlacesFor(
        this Site site, Device model, CableRun lead, RuleSet rules, CancellationToken cancellationToken = default) => PlaceTrial.All(
        Require.NotNull(site, nameof(site)), Require.NotNull(model, nameof(model)), Require.NotNull(lead, nameof(lead)),
        Require.NotNull(rules, nameof(rules)), cancellationToken);

    /// <summary>The bill of materials of a site, with its pull list and labels.</summary>
    /// <param name="site">The site.</param>
    /// <param name="policy">What is ordered above what is drawn; null for <see cref="MaterialPolicy.CommonPractice"/>.</param>
    /// <param name="prices">What it costs; null for <see cref="PriceList.Neutral"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <example><code>foreach (MaterialLine line in site.ListMaterial().Lines) Console.WriteLine(line);</code></example>
    public static MaterialList ListMaterial(this Site site, MaterialPolicy? policy = null, PriceList? prices = null) => new(
        Require.NotNull(site, nameof(site)), policy ?? MaterialPolicy.CommonPractice, prices ?? PriceList.Neutral);

    /// <summary>What is most probably wrong with a site, from readings of its sheet and what was seen, and what to read next.</summary>
    /// <param name="sheet">The sheet: the site, its tolerances, the meter and the temperatures.</param>
    /// <param name="readings">What was read, in any order; as few as none.</param>
    /// <param name="symptoms">What was seen; null for nothing.</param>
    /// <param name="priors">How often each cause is met; null for common practice.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/>, <paramref name="readings"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A reading or a symptom is of what the site does not have.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <remarks>
    /// Every cause is put into the circuit of the site at every place where it may be, in every size, and the readings are held against
    /// what each predicts; pairs of causes where one alone leaves a misfit.
    /// <para>It advises low-voltage readings only. Local codes and licensed practice come first.</para>
    /// </remarks>
    /// <example>
    /// <code>
    /// Diagnosis found = sheet.Diagnose(readings, [Symptom.FlickersAtDusk("slipway head")]);
    /// Console.WriteLine(found.Groups[0]);
    /// </code>
    /// </example>
    public static Diagnosis Diagnose(this CommissioningSheet sheet, IEnumerable<MeterReading> readings,
        IEnumerable<Symptom>? symptoms = null,
        CausePriors? priors = null,
        CancellationToken cancellationToken = default) =>
        new DiagnosisStudy(Require.NotNull(sheet, nameof(sheet)), priors ?? CausePriors.CommonPractice)
            .Of(Require.Items(readings, nameof(readings)), Require.Items(symptoms ?? [], nameof(symptoms)), cancellationToken);

    private static DistributionBox FeedingBox(Site site, string boxName)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(boxName, nameof(boxName));
        return AdapterTrial.FedBy(site, box).Count > 0 ? box : throw new ArgumentException($"{boxName} feeds no device.", nameof(boxName));
    }
}
