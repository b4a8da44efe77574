using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>The negatives of what one transformer feeds, where video shields join them: whether its winding drives a current through
/// that.</summary>
/// <remarks>An input without a link is isolated. The resistance is that of the warmest cables, and other ways in parallel are left out: the
/// current is at least so much, until something opens or burns.</remarks>
internal sealed class JoinedCommons
{
    private JoinedCommons(Judgment current, string first, string second)
    {
        Current = current;
        First = first;
        Second = second;
    }

    /// <summary>The current, against none; a judgment of nothing where no two commons are joined.</summary>
    internal Judgment Current { get; }

    /// <summary>One end of the ring.</summary>
    internal string First { get; }

    /// <summary>The other end of it.</summary>
    internal string Second { get; }

    internal static JoinedCommons Of(Site site, DistributionBox box)
    {
        var nothing = new JoinedCommons(default, string.Empty, string.Empty);
        if (box.Supply.Output is not AcOutput output) return nothing;
        List<Common[]> joined = [.. CommonsOf(site, box).GroupBy(c => c.Ground, StringComparer.Ordinal).Select(g => g.ToArray())
            .Where(g => g.Length > 1)];
        if (joined.Count == 0) return nothing;
        JoinedCommons? worst = null;
        foreach ((Common a, Common b) in joined.SelectMany(Pairs))
        {
            double amperes = Amperes(output, a, b);
            if (!(amperes > 0) || amperes <= Value(worst)) continue;
            worst = new JoinedCommons(Judge(amperes), a.Name, b.Name);
        }

        if (worst is not null) return worst;
        return joined.Exists(g => Array.Exists(g, c => c.End == CommonEnd.NotStated))
            ? new JoinedCommons(Judgment.Unknown("AC input stage of the devices whose shields meet"), string.Empty, string.Empty)
            : new JoinedCommons(Judge(0), string.Empty, string.Empty);
    }

    private static Judgment Judge(double amperes) => Judgment.AtMost(amperes, 0, 0, a => ElectricCurrent.FromAmperes(a));

    private static double Value(JoinedCommons? found) => found?.Current.Value is ElectricCurrent current ? current.Amperes : 0;

    private static IEnumerable<(Common A, Common B)> Pairs(Common[] group) =>
        group.SelectMany((a, i) => group.Skip(i + 1).Select(b => (a, b)));

    private static double Amperes(AcOutput output, Common a, Common b)
    {
        double volts = output.EmfVolts * (1 - output.Share), ohms = output.WindingOhms + a.ShieldOhms + b.ShieldOhms;
        return (a.End, b.End) switch
        {
            (CommonEnd.Bridge, CommonEnd.Return) or (CommonEnd.Bridge, CommonEnd.Line) => ThroughBridge(a, b),
            (CommonEnd.Return, CommonEnd.Bridge) or (CommonEnd.Line, CommonEnd.Bridge) => ThroughBridge(b, a),
            (CommonEnd.Return, CommonEnd.Line) => CommonRing.Direct(volts, Positive(ohms + a.ReturnOhms + b.OutgoingOhms)),
            (CommonEnd.Line, CommonEnd.Return) => CommonRing.Direct(volts, Positive(ohms + b.ReturnOhms + a.OutgoingOhms)),
            _ => 0,
        };

        // Out over the wire of the bridge that is not the one of the other's negative, and back over that.
        double ThroughBridge(Common bridge, Common other) => CommonRing.ThroughDiode(volts, Positive(ohms + (other.End == CommonEnd.Return
            ? bridge.OutgoingOhms + other.ReturnOhms
            : bridge.ReturnOhms + other.OutgoingOhms)), RectifierDiode.Silicon);
    }

    private static double Positive(double ohms) => Math.Max(ohms, 1e-6);

    private static IEnumerable<Common> CommonsOf(Site site, DistributionBox box)
    {
        double celsius = site.Conditions.Max(c => c.At.CableCelsius);
        HashSet<string> bonded = new(site.Bonds.Where(b => string.Equals(b.Box, box.Name, StringComparison.Ordinal)).Select(b => b.Ground),
            StringComparer.Ordinal);
        foreach (GroundBond bond in site.Bonds.Where(b => string.Equals(b.Box, box.Name, StringComparison.Ordinal)))
        {
            yield return new Common($"the bond of {bond.Ground}", box.Name, CommonEnd.Return, bond.Resistance.Ohms, 0, 0);
        }

        foreach (OutputFeed feed in site.Feeds.SelectMany(g => g.Feeds).Where(f => ReferenceEquals(f.Box, box)))
        {
            double protection = feed.Output.Protection?.GreatestOhms ?? 0;
            foreach (FedDevice fed in feed.Devices.Where(d => d.Accepted is not null))
            {
                if (LinkOf(site, fed.Device) is not VideoLink link) continue;
                yield return new Common(fed.Device.Name, bonded.Contains(link.Ground) ? box.Name : link.Ground, EndOf(fed.Device),
                    link.ShieldResistance.Ohms, protection + fed.Path.Sum(r => r.Run.OutgoingOhmsAt(celsius)),
                    fed.Path.Sum(r => r.Run.ReturnOhmsAt(celsius)));
            }
        }
    }

    private static VideoLink? LinkOf(Site site, SiteDevice device) =>
        site.VideoLinks.FirstOrDefault(l => string.Equals(l.Device, device.Name, StringComparison.Ordinal));

    private static CommonEnd EndOf(SiteDevice device) => device.Model.AcStage switch
    {
        null => CommonEnd.NotStated,
        { IsRectifier: true, IsHalfWave: false } => CommonEnd.Bridge,
        _ => device.LeadsReversed ? CommonEnd.Line : CommonEnd.Return,
    };

    private enum CommonEnd
    {
        NotStated,
        Bridge,
        Return,
        Line,
    }

    private readonly record struct Common(
        string Name, string Ground, CommonEnd End, double ShieldOhms, double OutgoingOhms, double ReturnOhms);
}
