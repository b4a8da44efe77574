#!/usr/bin/env dotnet
#:package CamPower@0.1.0
// What if the conductors get warm, and what if they are not copper? Rows of comma-separated values, for whatever draws them.
using CamPower;
using UnitsNet;
using static System.FormattableString;

Load camera = Load.ConstantPower(Power.FromWatts(9));
ElectricPotential supply = ElectricPotential.FromVolts(12);
ConductorMaterial[] materials = [ConductorMaterial.AnnealedCopper, ConductorMaterial.CopperCladAluminum10];

Console.WriteLine("material,temperature_degC,voltage_V,current_A,margin_to_collapse");
foreach (ConductorMaterial material in materials)
{
    var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.ClassB, material), Length.FromFeet(200));
    for (int celsius = -20; celsius <= 70; celsius += 15)
    {
        RunResult fed = run.Feed(camera, supply, Temperature.FromDegreesCelsius(celsius));
        string answer = fed.HasOperatingPoint
            ? Invariant($"{fed.LoadVoltage.Volts:0.000},{fed.Current.Amperes:0.000},{fed.MarginToCollapse?.DecimalFractions:0.00}")
            : ",,";
        Console.WriteLine(Invariant($"{material},{celsius},{answer}"));
    }
}
