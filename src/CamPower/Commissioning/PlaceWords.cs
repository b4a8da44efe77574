using System.Linq;

namespace CamPower.Commissioning;

/// <summary>Where a group of causes is, in words.</summary>
internal static class PlaceWords
{
    internal static string Of(DiagnosisModel model, GroupKey key)
    {
        if (key.Cause == Cause.None) return string.Empty;
        if (key.Unit == model.Meter)
        {
            return (MeterQuantity)key.Place switch
            {
                MeterQuantity.Volts => "every voltage",
                MeterQuantity.Amperes => "every current",
                _ => "every resistance",
            };
        }

        if (model.IsBox(key.Unit)) return model.Boxes[key.Unit - model.FirstBox].Box.Name;
        FeedModel feed = model.Feeds[key.Unit];
        string output = OutputOf(feed);
        return key.Cause switch
        {
            Cause.PoorJoint or Cause.OpenConductor => $"{output}, run {RunOf(feed.Feed.Runs[key.Place])}",
            Cause.ReversedLeads or Cause.ShieldCarriesReturn => $"{output}, {feed.Feed.Devices[key.Place].Device.Name}",
            Cause.LoadTooLarge => $"{output}, {DevicesOf(feed, key.Place)}",
            Cause.WrongOutput when key.Place >= 0 => $"{output} and {OutputOf(model.Feeds[key.Place])}",
            _ => output,
        };
    }

    private static string DevicesOf(FeedModel feed, int junction) =>
        string.Join(" or ", feed.Feed.Devices.Where(d => d.RunIndex == junction).Select(d => d.Device.Name));

    private static string RunOf(SiteRun run) => run.From.JunctionName is string from ? $"from {from} to {run.To}" : $"to {run.To}";

    private static string OutputOf(FeedModel feed) => RunOrigin.NameOf(feed.Feed.Box.Name, feed.Feed.Output.Number);
}
