using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using CamPower.Evaluation;

// dotnet run -c Release --project benchmarks/CamPower.Diagnosis.Evaluation -- 500 [--hunts 50] [--from 100000] [--minutes 30] [--write docs]
int cases = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 500;
int hunting = Number("--hunts", 0), from = Number("--from", 100_000), minutes = Number("--minutes", int.MaxValue);
var page = new Page();
var watch = Stopwatch.StartNew();
(Manner Manner, SheetScore Full, SheetScore Volts)[] manners = [(Manner.Own, new(), new()), (Manner.Other, new(), new())];
double all = 0, sixteen = 0;
int ofSixteen = 0, made = 0;
for (; made < cases && watch.Elapsed.TotalMinutes < minutes; made++)
{
    foreach ((Manner manner, SheetScore full, SheetScore volts) in manners)
    {
        var one = new Case(manner, from + made);
        var fullSheet = one.FullSheet();
        var readings = fullSheet.Select(one.Read).ToList();

        // Processor time bears other work on the machine better than a clock does.
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        var found = one.Study.Of(readings, []);
        double milliseconds = (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds;
        all += milliseconds;
        if (one.Cameras is >= 14 and <= 18) (sixteen, ofSixteen) = (sixteen + milliseconds, ofSixteen + 1);
        full.Add(one, fullSheet, found);
        var voltsOnly = one.VoltsOnly();
        volts.Add(one, voltsOnly, one.Study.Of([.. voltsOnly.Select(one.Read)], []));
    }
}

foreach ((Manner manner, SheetScore full, SheetScore volts) in manners)
{
    page.Add($"{manner.Name}, full sheet", full);
    page.Add($"{manner.Name}, volts only", volts);
    Print($"{manner.Name} full", full);
    Print($"{manner.Name} volts", volts);
}

(double OfAll, double OfSixteen) times = (all / Math.Max(1, 2 * made), sixteen / Math.Max(1, ofSixteen));
Console.WriteLine(FormattableString.Invariant($"{made} cases of each; {times.OfAll:0.0} ms a full sheet; {times.OfSixteen:0.0} ms at 14 to 18 cameras"));
var hunts = new List<(int, Hunt, Hunt)>();
for (int seed = from + 400_000; hunts.Count < hunting && watch.Elapsed.TotalMinutes < 1.3 * minutes; seed++)
{
    var one = new Case(Manner.Own, seed);
    if (one.IsSound || !one.Moves(one.FullSheet())) continue;
    hunts.Add((one.Cameras, Hunt.Asked(one), Hunt.HalfSplit(one)));
}

foreach ((int cameras, Hunt asked, Hunt half) in hunts.Take(40))
{
    Console.WriteLine(FormattableString.Invariant($"hunt: {cameras} cameras, {asked.Count} of {asked.FullCount} readings, cost {asked.Cost:0.0} of {asked.FullCost:0.0}, fixed {half.Cost:0.0}, settled {asked.IsSettled}/{half.IsSettled}, right {asked.IsRight}"));
}

if (After("--write") is string docs) page.Write(docs, made, from, times, hunts);

int Number(string option, int otherwise) => After(option) is string text ? int.Parse(text, CultureInfo.InvariantCulture) : otherwise;

string? After(string option)
{
    int at = Array.IndexOf(args, option);
    return at >= 0 && at + 1 < args.Length ? args[at + 1] : null;
}

static void Print(string name, SheetScore s)
{
    Console.WriteLine(FormattableString.Invariant($"{name}: scored {s.Scored}, first {Share(s.First, s.Scored)}, three {Share(s.Three, s.Scored)} (expects {100 * s.ExpectedFirst / s.Scored:0.0}, {100 * s.ExpectedThree / s.Scored:0.0}); accused {Share(s.Accused, s.Sound)} of {s.Sound}; pairs {s.Pairs}: one first {Share(s.PairFirst, s.Pairs)}, both in three {Share(s.PairBothInThree, s.Pairs)}; unmoved {s.Unmoved}, sound {Share(s.UnmovedSaidSound, s.Unmoved)}"));
    for (int t = 0; t < SheetScore.Tenths; t++) Console.WriteLine(FormattableString.Invariant($"    {t * 10,3}-{(t + 1) * 10,3} %: {s.Counts[t],6}  stated {100 * s.Stated[t] / Math.Max(1, s.Counts[t]),5:0.0}  true {100.0 * s.True[t] / Math.Max(1, s.Counts[t]),5:0.0}"));
    foreach (var miss in s.Misses.Take(12)) Console.WriteLine($"    {miss.Value,4} {miss.Key.True} -> {miss.Key.Said}");
}

static string Share(int part, int all) => FormattableString.Invariant($"{100.0 * part / Math.Max(1, all):0.0} %");
