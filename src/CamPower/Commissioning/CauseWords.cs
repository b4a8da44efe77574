using System.Collections.Generic;

namespace CamPower.Commissioning;

/// <summary>What people read of a cause: its name, what would tell it from those of its group, what to do, and how to do it
/// safely.</summary>
internal static class CauseWords
{
    internal const string Danger =
        "Isolate first: switch the box off and unplug it. With no load on it, disconnect the battery. "
            + "Follow the local code; a licensed electrician decides when it is energized again.";

    internal const string NotSettled = "Take the next reading.";

    internal const string NoReadingLeft = "No reading of the sheet separates the rest.";

    /// <summary>Whether it may start a fire or hurt someone.</summary>
    internal static bool IsDanger(Cause cause) => cause is Cause.ShortCircuit or Cause.WaterInJoint;

    internal static string NameOf(Cause cause) => cause switch
    {
        Cause.None => "as designed",
        Cause.WrongConductor => "wrong conductor",
        Cause.LongerRun => "run longer than drawn",
        Cause.PoorJoint => "poor joint",
        Cause.WaterInJoint => "water in a joint",
        Cause.OpenConductor => "open conductor",
        Cause.ShortCircuit => "short circuit",
        Cause.ReversedLeads => "reversed leads",
        Cause.WrongOutput => "wrong output or swapped labels",
        Cause.ProtectiveDeviceOpen => "protective device open",
        Cause.ProtectiveDeviceHot => "protective device tripped by heat",
        Cause.SupplySetWrong => "supply set wrong",
        Cause.SupplySags => "supply sags under load",
        Cause.SupplyInLimit => "supply in limit, pulsing or off",
        Cause.LoadTooLarge => "load larger than stated",
        Cause.WrongDevice => "wrong device",
        Cause.BatteryLow => "battery low",
        Cause.ShieldCarriesReturn => "shield carries return current",
        _ => "meter on the wrong range or lead",
    };

    internal static string ToDo(Cause cause) => cause switch
    {
        Cause.None => "The power needs no repair. If a device still fails, try it on the bench.",
        Cause.WrongConductor =>
            "Read the print on the jacket. State the conductor that is there and check the site again. Replace the run if it fails.",
        Cause.LongerRun => "Measure the route. State the true length and check the site again. Shorten or replace the run if it fails.",
        Cause.PoorJoint => "Remake every joint and terminal of the run, then read the loop again.",
        Cause.WaterInJoint => "Cut out the wet joint, dry or replace the cable, and use a sealed splice.",
        Cause.OpenConductor => "Read the loop from each joint to find the broken length, then splice or replace it.",
        Cause.ShortCircuit => "Find the place with the run dead: halve it at a joint and read each half. Replace what is damaged.",
        Cause.ReversedLeads => "Swap the two leads at the plug with the output off, then read the polarity before you connect the device.",
        Cause.WrongOutput => "Trace each run with the box off, put it on its own output, and correct the labels.",
        Cause.ProtectiveDeviceOpen => "Find out why it opened before you replace it. Use the stated type and rating.",
        Cause.ProtectiveDeviceHot => "Let it cool with the output off. Lower its load or the temperature of the box.",
        Cause.SupplySetWrong => "Set the supply to the stated voltage without load, then read it again.",
        Cause.SupplySags => "Compare the load with the derated rating. Replace the supply or divide its load.",
        Cause.SupplyInLimit => "Unplug outputs one by one with the box off in between, until the supply stays up.",
        Cause.LoadTooLarge => "Read the current of each device alone. State what it draws, or repair it.",
        Cause.WrongDevice => "Read the label of the device. State what is there, or put the stated one in.",
        Cause.BatteryLow => "Restore the input of the supply and let it charge the battery. Test the battery by its maker's instructions.",
        Cause.ShieldCarriesReturn => "Look for a second ground of the camera or its shield. Insulate it, or use an isolated input.",
        _ => "Check the leads, jacks and range. Join the tips and note what the meter shows, then repeat the reading.",
    };

    internal static string Safety(Cause cause) => cause switch
    {
        Cause.ShortCircuit or Cause.WaterInJoint => Danger,
        Cause.SupplySetWrong or Cause.SupplySags or Cause.SupplyInLimit =>
            "Work on the low-voltage side only. The mains side is for a licensed electrician, with the circuit off.",
        Cause.BatteryLow => "Switch the load off before you touch a battery terminal. "
            + "Short nothing: a battery can give hundreds of amperes.",
        Cause.ProtectiveDeviceOpen or Cause.ProtectiveDeviceHot =>
            "Switch the box off before you change a protective device. Never bridge it.",
        Cause.MeterWrong => "Take the leads off the circuit before you change the range or a jack.",
        Cause.None => "Close the box. Follow the local code.",
        _ => "Switch the output off before you touch a conductor. On a ladder, work with a second person.",
    };

    /// <summary>What would tell the causes of a group apart that the sheet does not.</summary>
    internal static string Separates(IReadOnlyCollection<Cause> group)
    {
        if (group.Count < 2) return string.Empty;
        if (Has(group, Cause.PoorJoint))
        {
            return Has(group, Cause.LoadTooLarge)
                ? "Read the loop with power off: it shows whether the resistance or the draw is wrong."
                : "Read the loop of each half and of each conductor, wiggle each joint, and read the print on the jacket.";
        }

        if (Has(group, Cause.ShortCircuit)) return "The resistance between the dead conductors, with nothing joined, tells a short.";
        if (Has(group, Cause.OpenConductor)) return "The voltage at the output tells the protective device from the run.";
        if (Has(group, Cause.ProtectiveDeviceHot)) return "Let it cool with the output off. If it tripped by heat, it conducts again.";
        if (Has(group, Cause.SupplySags))
        {
            return "The voltage without load tells the set point. A meter that keeps the lowest value tells pulses.";
        }

        if (Has(group, Cause.BatteryLow)) return "Look whether the supply has its input: on the battery alone it is the battery.";
        return "Look at the label of the device, and read its current on the bench.";
    }

    private static bool Has(IReadOnlyCollection<Cause> group, Cause cause)
    {
        foreach (Cause one in group)
        {
            if (one == cause) return true;
        }

        return false;
    }
}
