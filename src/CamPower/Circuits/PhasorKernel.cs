using System;

namespace CamPower.Circuits;

/// <summary>Linear devices on one transformer, by phasors: the sine keeps its form, and the currents lag by their displacement. SI
/// doubles.</summary>
/// <remarks>The conductances that stand for constant power follow the voltages until they agree; the network of resistances is solved by
/// Gauss–Seidel between them, which converges because every current only lowers the voltages.</remarks>
internal static class PhasorKernel
{
    private const int MostPasses = 4000;

    private const double Close = 1e-12;

    /// <summary>The state of every device, or null where the voltages never agree: the circuit cannot carry the power.</summary>
    /// <param name="emfVolts">Open voltage of the winding, RMS. [V]</param>
    /// <param name="ohms">By how much an ampere of the second device lowers the voltage of the first, the winding included. [Ω]</param>
    /// <param name="outputs">The output of each device, from 0.</param>
    /// <param name="elements">What is across the terminals: linear.</param>
    internal static AlternatingSolution? Solve(double emfVolts, double[,] ohms, int[] outputs, AlternatingElement[] elements)
    {
        int devices = outputs.Length;
        double[] real = new double[devices], lagging = new double[devices], inPhase = new double[devices], behind = new double[devices];
        for (int d = 0; d < devices; d++) real[d] = emfVolts;
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double most = 0;
            for (int d = 0; d < devices; d++)
            {
                (double oldInPhase, double oldBehind) = (inPhase[d], behind[d]);
                Currents(d, Math.Sqrt((real[d] * real[d]) + (lagging[d] * lagging[d])));
                for (int other = 0; other < devices; other++)
                {
                    real[other] -= ohms[other, d] * (inPhase[d] - oldInPhase);
                    lagging[other] += ohms[other, d] * (behind[d] - oldBehind);
                }

                if (!(real[d] > 0)) return null;
                most = Math.Max(most, ohms[d, d] * (Math.Abs(inPhase[d] - oldInPhase) + Math.Abs(behind[d] - oldBehind)));
            }

            if (most < Close * emfVolts) return Solution(real, lagging, inPhase, behind, outputs);
        }

        return null;

        // U = real + j lagging; a current that lags by φ is turned from it by −φ, and stored as in phase − j behind.
        void Currents(int device, double volts)
        {
            (double along, double across) = (0, 0);
            foreach (AlternatingElement element in elements)
            {
                if (element.Device != device) continue;
                double amperes = element.AmperesAt(volts);
                along += amperes;
                across += amperes * element.Lag;
            }

            double cos = real[device] / volts, sin = lagging[device] / volts;
            inPhase[device] = (along * cos) + (across * sin);
            behind[device] = (across * cos) - (along * sin);
        }
    }

    private static AlternatingSolution Solution(double[] real, double[] lagging, double[] inPhase, double[] behind, int[] outputs)
    {
        var states = new AlternatingState[outputs.Length];
        int outputCount = 0;
        foreach (int output in outputs) outputCount = Math.Max(outputCount, output + 1);
        double[] along = new double[outputCount], across = new double[outputCount];
        double total = 0, totalBehind = 0;
        for (int d = 0; d < states.Length; d++)
        {
            double volts = Magnitude(real[d], lagging[d]), amperes = Magnitude(inPhase[d], behind[d]);
            states[d].RmsVolts = volts;
            states[d].CrestVolts = volts * Math.Sqrt(2);
            states[d].RmsAmperes = amperes;
            states[d].PeakAmperes = amperes * Math.Sqrt(2);
            states[d].Watts = (real[d] * inPhase[d]) - (lagging[d] * behind[d]);
            along[outputs[d]] += inPhase[d];
            across[outputs[d]] += behind[d];
            total += inPhase[d];
            totalBehind += behind[d];
        }

        var ofOutputs = new double[outputCount];
        for (int output = 0; output < outputCount; output++) ofOutputs[output] = Magnitude(along[output], across[output]);
        double all = Magnitude(total, totalBehind);
        return new AlternatingSolution(states, ofOutputs, all, all * Math.Sqrt(2), 0);
    }

    private static double Magnitude(double real, double imaginary) => Math.Sqrt((real * real) + (imaginary * imaginary));
}
