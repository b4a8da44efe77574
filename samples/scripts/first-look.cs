#!/usr/bin/env dotnet
#:package CamPower@0.1.0
// One camera at the end of a cable: what it gets, and how that was worked out.
using CamPower;
using UnitsNet;

var run = new CableRun(CableCatalog.Pair18, oneWayLength: Length.FromFeet(120));
Load camera = Load.ConstantPower(Power.FromWatts(9));
RunResult atCamera = run.Feed(camera, from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(40));

Console.WriteLine($"{camera} at the end of {run}:");
Console.WriteLine(atCamera);
Console.WriteLine();
foreach (DerivationStep step in atCamera.Explain().Steps) Console.WriteLine($"{step}\n    {step.Meaning} [{step.Source}]");
