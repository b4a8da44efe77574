using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Comparison of an output's numbers with a power-limit class: they exceed its limits, or they do not.</summary>
/// <remarks>
/// Immutable. A class is a listing of a product that was tested, single faults inside it included: numbers never prove it. The supply
/// counts at the top of its trim and with its tolerance, in overload as its data sheet says; a fuse is bypassed, since the tables limit
/// what flows until it opens. An electronic limit counts (<see cref="Sources.LimitedPowerRegulating"/>). The class also requires that it
/// still limits after one fault inside it. Numbers cannot show this. Each class has two tables, and an output meets the class when it meets
/// one of them. If the label names no standard, a table of either standard is enough. The table of sources that are not inherently limited
/// requires an overcurrent device that does not reset by itself (<see cref="Sources.LimitedPowerDevices"/>, also used for Class 2).
/// Alternating voltage is taken as a sine. Where a value is not stated, the verdict is unknown. Sources:
/// <see cref="Sources.LimitedPower"/>, <see cref="Sources.LimitedPowerIec62368"/>, <see cref="Sources.Class2"/>, and those from memory
/// beside them.
/// <para>Wiring rules lean on these classes. Local codes and the listing on the product go before any number here.</para>
/// </remarks>
/// <example>
/// <code>
/// PowerLimitAssessment assessment = box.AssessPowerLimit(outputNumber: 3, PowerLimitClass.LimitedPowerSourceIec62368);
/// if (assessment.Verdict == PowerLimitVerdict.Exceeds) Console.WriteLine(assessment);
/// </code>
/// </example>
public sealed class PowerLimitAssessment
{
    internal PowerLimitAssessment(DistributionBox box, BoxOutput output, PowerLimitClass limitClass)
    {
        SupplyOutput supply = box.FaultSourceIn(BatteryConstants.ReferenceTemperature.Value, BatteryConstants.ReferenceTemperature.Value);
        var delivery = new OutputDelivery(supply, output);
        Box = box;
        Output = output;
        Class = limitClass;
        Routes = Standards(limitClass).SelectMany(c => new PowerLimitTrial(c, supply.Kind, delivery, output.Protection).Routes()).ToList()
            .AsReadOnly();
        Verdict = Routes.Any(r => r.Verdict == PowerLimitVerdict.WithinNumbers) ? PowerLimitVerdict.WithinNumbers
            : Routes.Any(r => r.Verdict == PowerLimitVerdict.Unknown) ? PowerLimitVerdict.Unknown
            : PowerLimitVerdict.Exceeds;
        HighestVoltage = ElectricPotential.FromVolts(delivery.MostVolts);
        CitedValue wet = supply.IsDc ? PowerLimitConstants.Class2WetDc : PowerLimitConstants.Class2WetAc;
        MayExceedWetContactVoltage = limitClass == PowerLimitClass.Class2 ? Limits.IsAbove(delivery.MostVolts, wet.Value) : null;
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>Its output.</summary>
    public BoxOutput Output { get; }

    /// <summary>The class.</summary>
    public PowerLimitClass Class { get; }

    /// <summary>The output against each table that it can meet; the one with an overcurrent device is missing where it has none.</summary>
    public IReadOnlyList<PowerLimitRoute> Routes { get; }

    /// <summary>Exceeds only where every table is exceeded; within the numbers where one is met as far as numbers go.</summary>
    public PowerLimitVerdict Verdict { get; }

    /// <summary>The highest voltage that the output may give: the top of the trim and the tolerance. [V]</summary>
    public ElectricPotential HighestVoltage { get; }

    /// <summary>Whether that is more than Class 2 wiring may carry where wet contact is likely, 15 V AC or 30 V DC; null for another
    /// class.</summary>
    /// <remarks>Source: <see cref="Sources.Class2Notes"/>. Where it does, the rules of Class 3 wiring hold.</remarks>
    public bool? MayExceedWetContactVoltage { get; }

    /// <summary>Output, verdict and what decides, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Box} {Output}, {ClassName}: {Words}";

    internal bool NamesItsStandard => Class != PowerLimitClass.LimitedPowerSource;

    internal string ClassName => Class switch
    {
        PowerLimitClass.Class2 => "Class 2",
        PowerLimitClass.LimitedPowerSourceIec60950 => "a limited power source (IEC 60950-1)",
        PowerLimitClass.LimitedPowerSourceIec62368 => "a limited power source (IEC 62368-1)",
        _ => "a limited power source",
    };

    private static IEnumerable<PowerLimitClass> Standards(PowerLimitClass limitClass) => limitClass == PowerLimitClass.LimitedPowerSource
        ? [PowerLimitClass.LimitedPowerSourceIec60950, PowerLimitClass.LimitedPowerSourceIec62368]
        : [limitClass];

    private string Words => Verdict switch
    {
        PowerLimitVerdict.Exceeds => $"exceeds ({string.Join("; ", Routes)})",
        PowerLimitVerdict.WithinNumbers => "within the numbers (check the listing)",
        _ => $"unknown ({string.Join("; ", Routes.Where(r => r.Verdict == Verdict))})",
    };
}
