using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using CamPower.Evaluation;

// dotnet run -c Release --project benchmarks/CamPower.Diagnosis.Evaluation -- 500 [--hunts 50] [--write docs]
int cases = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 500;
int hunting = int.Parse(After("--hunts") ?? "0", CultureInfo.InvariantCulture);
var page = new Page();
var watch = new Stopwatch();
double sixteen = 0;
int ofSixteen = 0;
foreach (Manner manner in new[] { Manner.Own, Manner.Other })
{
    SheetScore full = new(), volts = new();
    for (int i = 0; i < cases; i++)
    {
        var made = new Case(manner, 100_000 + i);
        var fullSheet = made.FullSheet();
        var readings = fullSheet.Select(made.Read).ToList();
        double before = watch.Elapsed.TotalMilliseconds;
        watch.Start();
        var found = made.Study.Of(readings, []);
        watch.Stop();
        if (made.Cameras is >= 14 and <= 18) (sixteen, ofSixteen) = (sixteen + watch.Elapsed.TotalMilliseconds - before, ofSixteen + 1);
        full.Add(made, fullSheet, found);
        var voltsOnly = made.VoltsOnly();
        volts.Add(made, voltsOnly, made.Study.Of([.. voltsOnly.Select(made.Read)], []));
    }

    page.Add($"{manner.Name}, full sheet", full);
    page.Add($"{manner.Name}, volts only", volts);
    Print($"{manner.Name} full", full);
    Print($"{manner.Name} volts", volts);
}

Console.WriteLine(FormattableString.Invariant($"{watch.Elapsed.TotalMilliseconds / (2 * cases):0.0} ms a full sheet; {sixteen / Math.Max(1, ofSixteen):0.0} ms at 14 to 18 cameras"));
var hunts = new List<(int, Hunt, Hunt)>();
for (int i = 0, seed = 500000; i < hunting; seed++)
{
    var made = new Case(Manner.Own, seed);
    if (made.IsSound || !made.Moves(made.FullSheet())) continue;
    i++;
    hunts.Add((made.Cameras, Hunt.Asked(made), Hunt.HalfSplit(made)));
}

foreach ((int cameras, Hunt asked, Hunt half) in hunts.Take(40))
{
    Console.WriteLine(FormattableString.Invariant($"hunt: {cameras} cameras, {asked.Count} of {asked.FullCount} readings, cost {asked.Cost:0.0} of {asked.FullCost:0.0}, fixed {half.Cost:0.0}, settled {asked.IsSettled}/{half.IsSettled}, right {asked.IsRight}"));
}

if (After("--write") is string docs) page.Write(docs, cases, watch.Elapsed.TotalMilliseconds / (2 * cases), hunts);

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
