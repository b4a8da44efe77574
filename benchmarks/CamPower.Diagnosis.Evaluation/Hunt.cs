using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;

namespace CamPower.Evaluation;

/// <summary>One hunt: from the symptoms alone, reading after reading, until it is settled.</summary>
/// <remarks>The readings are those that the diagnosis asks for, or those of a fixed order: box, then the outputs with a complaint, then the rest;
/// of an output its voltage, current and insulation, then its devices from the middle outward.</remarks>
internal sealed class Hunt
{
    private Hunt(Case made, Func<Commissioning.Diagnosis, HashSet<ReadingPoint>, ReadingPoint?> choose)
    {
        var readings = new List<MeterReading>();
        var taken = new HashSet<ReadingPoint>();
        IReadOnlyList<Symptom> seen = made.Seen();
        ReadingPoint[] all = [.. All(made)];
        FullCost = all.Sum(ReadingCost.Of);
        FullCount = all.Length;
        while (true)
        {
            Commissioning.Diagnosis found = made.Study.Of(readings, seen);
            IsSettled = found.IsSettled;
            IsRight = IsSettled && made.TrueKeysOfFullSheet().Contains(found.OfFullSheet[0].Key);
            if (IsSettled || choose(found, taken) is not ReadingPoint next) break;
            taken.Add(next);
            readings.Add(made.Read(next));
            Cost += ReadingCost.Of(next);
        }

        Count = readings.Count;
        if (!IsSettled) (Cost, Count) = (FullCost, FullCount);
    }

    internal double Cost { get; }

    internal int Count { get; }

    internal double FullCost { get; }

    internal int FullCount { get; }

    internal bool IsSettled { get; }

    internal bool IsRight { get; }

    internal static Hunt Asked(Case made) => new(made, (found, _) => found.Next?.Point);

    internal static Hunt HalfSplit(Case made)
    {
        ReadingPoint[] order = [.. Order(made)];
        return new Hunt(made, (_, taken) => order.FirstOrDefault(point => !taken.Contains(point)));
    }

    private static IEnumerable<ReadingPoint> All(Case made) => Enumerable.Range(0, made.Study.Model.Units)
        .SelectMany(unit => Enumerable.Range(0, made.Study.Model.PointsOf(unit)).Select(point => made.Study.Points.Of(unit, point)));

    private static IEnumerable<ReadingPoint> Order(Case made)
    {
        DiagnosisModel model = made.Study.Model;
        HashSet<string> complaints = [.. made.Seen().Where(s => s.Kind != SymptomKind.Works).Select(s => s.Device!)];
        FeedModel[] feeds = [.. model.Feeds.OrderByDescending(f => f.Feed.Devices.Count(d => complaints.Contains(d.Device.Name)))];
        foreach (BoxModel box in model.Boxes)
        {
            for (int point = UnitPoints.OfBox - 1; point >= 0; point--) yield return made.Study.Points.Of(box.Unit, point);
        }

        int[] ofOutput = [UnitPoints.OutputDay, UnitPoints.AmperesDay, UnitPoints.Insulation, UnitPoints.AmperesNight, UnitPoints.OutputNight, UnitPoints.OutputUnplugged];
        int[] ofDevice = [UnitPoints.Day, UnitPoints.Loop, UnitPoints.Night, UnitPoints.Plug];
        foreach (FeedModel feed in feeds)
        {
            foreach (int point in ofOutput) yield return made.Study.Points.Of(feed.Unit, feed.OutputPoint(point));
            IEnumerable<int> fromTheMiddle = Enumerable.Range(0, feed.Devices).OrderBy(d => Math.Abs((2 * d) - feed.Devices + 1));
            foreach (int device in fromTheMiddle)
            {
                foreach (int point in ofDevice) yield return made.Study.Points.Of(feed.Unit, FeedModel.PointOf(device, point));
            }
        }
    }
}
