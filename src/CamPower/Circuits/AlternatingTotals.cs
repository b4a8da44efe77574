using System;

namespace CamPower.Circuits;

/// <summary>Sums one period of an <see cref="AlternatingCircuit"/>, step by step: what each device, each output and the winding
/// has.</summary>
/// <param name="elements">What is across the terminals of the devices, those of one device after each other.</param>
/// <param name="outputOf">The output of each device.</param>
/// <param name="steps">Steps in a period.</param>
internal sealed class AlternatingTotals(AlternatingElement[] elements, int[] outputOf, int steps)
{
    private readonly AlternatingState[] _devices = new AlternatingState[outputOf.Length];
    private readonly double[] _outputs = new double[CountOf(outputOf)], _ofDevice = new double[outputOf.Length];
    private double _squares, _sum, _peak;

    internal void Begin()
    {
        (_squares, _sum, _peak) = (0, 0, 0);
        Array.Clear(_devices, 0, _devices.Length);
        Array.Clear(_outputs, 0, _outputs.Length);
        foreach (AlternatingElement element in elements)
        {
            if (element.Diodes > 0) _devices[element.Device].ValleyVolts = double.PositiveInfinity;
        }
    }

    /// <summary>Adds a step.</summary>
    /// <param name="amperes">The current of each element. [A]</param>
    /// <param name="volts">The voltage across each. [V]</param>
    /// <param name="held">The voltage of the capacitor of each that has one. [V]</param>
    /// <param name="sign">The direction of each: 1, or -1 backward through the bridge.</param>
    internal void Add(double[] amperes, double[] volts, double[] held, double[] sign)
    {
        Array.Clear(_ofDevice, 0, _ofDevice.Length);
        for (int e = 0; e < elements.Length; e++)
        {
            AlternatingElement element = elements[e];
            _ofDevice[element.Device] += amperes[e];
            ref AlternatingState state = ref _devices[element.Device];
            double inItsWay = element.Diodes == 1 ? Math.Max(0, sign[e] * volts[e]) : Math.Abs(volts[e]);
            if (element.Diodes == 0 && state.ValleyVolts > 0) continue;
            state.CrestVolts = Math.Max(state.CrestVolts, inItsWay);
            if (element.Diodes == 0) continue;
            state.HighestVolts = Math.Max(state.HighestVolts, held[e]);
            state.ValleyVolts = Math.Min(state.ValleyVolts, held[e]);
        }

        AddOutputs();
        AddDevices(volts);
    }

    /// <summary>Makes means of the sums.</summary>
    internal void Finish()
    {
        for (int d = 0; d < _devices.Length; d++)
        {
            ref AlternatingState state = ref _devices[d];
            state.RmsVolts = Math.Sqrt(state.RmsVolts / steps);
            state.RmsAmperes = Math.Sqrt(state.RmsAmperes / steps);
            state.MeanAmperes /= steps;
            state.Watts /= steps;
        }

        for (int output = 0; output < _outputs.Length; output++) _outputs[output] = Math.Sqrt(_outputs[output] / steps);
    }

    /// <summary>The voltage of a device, RMS, once the period is finished. [V]</summary>
    internal double RmsVoltsOf(int device) => _devices[device].RmsVolts;

    /// <summary>What was summed, once the period is finished. Nothing is added after that.</summary>
    internal AlternatingSolution Solution() => new(_devices, _outputs, Math.Sqrt(_squares / steps), _peak, _sum / steps);

    private void AddOutputs()
    {
        double total = 0;
        for (int output = 0; output < _outputs.Length; output++)
        {
            double ofOutput = 0;
            for (int d = 0; d < outputOf.Length; d++)
            {
                if (outputOf[d] == output) ofOutput += _ofDevice[d];
            }

            _outputs[output] += ofOutput * ofOutput;
            total += ofOutput;
        }

        _squares += total * total;
        _sum += total;
        _peak = Math.Max(_peak, Math.Abs(total));
    }

    private void AddDevices(double[] volts)
    {
        for (int e = 0; e < elements.Length; e++)
        {
            int device = elements[e].Device;
            bool isCounted = e > 0 && elements[e - 1].Device == device;
            if (isCounted) continue;
            ref AlternatingState state = ref _devices[device];
            double amperes = _ofDevice[device];
            state.RmsVolts += volts[e] * volts[e];
            state.RmsAmperes += amperes * amperes;
            state.MeanAmperes += amperes;
            state.PeakAmperes = Math.Max(state.PeakAmperes, Math.Abs(amperes));
            state.Watts += volts[e] * amperes;
        }
    }

    private static int CountOf(int[] outputOf)
    {
        int count = 0;
        foreach (int output in outputOf) count = Math.Max(count, output + 1);
        return count;
    }
}
