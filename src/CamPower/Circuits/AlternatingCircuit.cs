using System;

namespace CamPower.Circuits;

/// <summary>What one transformer feeds, through a period of the mains. SI doubles.</summary>
/// <remarks>
/// A sine behind resistances, given as what an ampere of one device lowers the voltage of another; capacitors behind diodes, and
/// inductances beside resistances for what lags. Stepped through the period by the trapezoidal rule, again and again until a period ends
/// where it began. Constant power of what is linear follows the RMS voltage of the period before. The inductance of cables and of the
/// transformer is left out: below a hundredth of the resistance in the first, and it only widens the charging current in the second.
/// </remarks>
internal sealed class AlternatingCircuit
{
    /// <summary>Steps in a period: with them the currents are within 0.1 % of those with ten times as many.</summary>
    internal const int UsualSteps = 720;

    /// <summary>How far a period may end from where it began, over the crest of the source. [1]</summary>
    private const double Periodic = 2e-6;

    private const int MostPeriods = 600, MostNewton = 60, MostSwitching = 40;

    // A capacitor below this share of the crest has lost its load: constant power asks for ever more there.
    private const double Collapsed = 0.12;

    private const double LeastAmperes = 1e-9;

    private readonly double _crest, _hertz, _step;
    private readonly double[,] _ohms;
    private readonly AlternatingElement[] _elements;
    private readonly int[] _outputs;
    private readonly RectifierDiode _diode;
    private readonly int _steps, _devices, _outputCount;

    // For each element: capacitor voltage or lagging current, the current now, and whether it flows backward through the bridge.
    private readonly double[] _held, _amperes, _before, _volts, _siemens, _perSecond, _sign;
    private readonly double[] _offset, _slope, _right, _step1, _step2;
    private readonly bool[] _flows;
    private readonly double[,] _matrix;
    private readonly int[] _active;

    /// <param name="emfVolts">Open voltage of the winding, RMS, above 0. [V]</param>
    /// <param name="hertz">Frequency, above 0. [Hz]</param>
    /// <param name="ohms">By how much an ampere of the second device lowers the voltage of the first, the winding included. [Ω]</param>
    /// <param name="outputs">The output of each device, from 0.</param>
    /// <param name="elements">What is across the terminals of the devices, those of one device after each other.</param>
    /// <param name="diode">The diode of the rectifiers.</param>
    /// <param name="steps">Steps in a period.</param>
    internal AlternatingCircuit(double emfVolts, double hertz, double[,] ohms, int[] outputs, AlternatingElement[] elements,
        RectifierDiode diode, int steps = UsualSteps)
    {
        int n = elements.Length;
        _crest = emfVolts * Math.Sqrt(2);
        _hertz = hertz;
        _steps = steps;
        _step = 1 / (hertz * steps);
        _ohms = ohms;
        _outputs = outputs;
        _elements = elements;
        _diode = diode;
        _devices = outputs.Length;
        foreach (int output in outputs) _outputCount = Math.Max(_outputCount, output + 1);
        (_held, _amperes, _before, _volts, _siemens, _perSecond, _sign) =
            (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        (_offset, _slope, _right, _step1, _step2) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        _flows = new bool[n];
        _matrix = new double[n, n];
        _active = new int[n];
    }

    /// <summary>The device whose capacitor did not hold its load, or -1.</summary>
    internal int Lost { get; private set; } = -1;

    /// <summary>The periodic steady state, or null where a capacitor cannot hold its load, or nothing settles.</summary>
    internal AlternatingSolution? Solve()
    {
        int n = _elements.Length;
        for (int e = 0; e < n; e++) Begin(e);
        var states = new AlternatingState[_devices];
        var outputs = new double[_outputCount];
        double[] start = new double[n], change = new double[n], changeBefore = new double[n], ofDevice = new double[_devices];
        for (int period = 0; period < MostPeriods; period++)
        {
            Array.Copy(_held, start, n);
            var sums = new Sums();
            Array.Clear(states, 0, states.Length);
            Array.Clear(outputs, 0, outputs.Length);
            for (int e = 0; e < n; e++)
            {
                if (_elements[e].Diodes > 0) states[_elements[e].Device].ValleyVolts = double.PositiveInfinity;
            }

            for (int step = 1; step <= _steps; step++)
            {
                if (!Step(_crest * Math.Sin(2 * Math.PI * step / _steps))) return null;
                Take(states, outputs, ofDevice, ref sums);
            }

            Finish(states, outputs);
            double most = 0;
            for (int e = 0; e < n; e++)
            {
                (changeBefore[e], change[e]) = (change[e], _held[e] - start[e]);
                double scale = _elements[e].Diodes > 0
                    ? _crest
                    : Math.Max(LeastAmperes, _crest * (_siemens[e] + (_perSecond[e] / (2 * Math.PI * _hertz))));
                most = Math.Max(most, Math.Max(Math.Abs(change[e]) / scale, Adapt(e, states[_elements[e].Device].RmsVolts)));
            }

            if (most < Periodic)
            {
                return new AlternatingSolution(states, outputs, Math.Sqrt(sums.Squares / _steps), sums.Peak, sums.Sum / _steps);
            }

            if (period % 4 == 3) Extrapolate(change, changeBefore);
        }

        return null;
    }

    private void Begin(int e)
    {
        AlternatingElement element = _elements[e];
        if (element.Diodes > 0)
        {
            _held[e] = 0.92 * _crest;
            _sign[e] = element.IsReversed ? -1 : 1;
            return;
        }

        Adapt(e, _crest / Math.Sqrt(2));
        _sign[e] = 1;

        // What lags stands at its trough as the voltage passes zero.
        _held[e] = -_crest * _perSecond[e] / (2 * Math.PI * _hertz);
        _before[e] = _held[e];
        _amperes[e] = _held[e];
    }

    // The conductance of what is linear, and the slope of what lags, at the voltage that it has; how far that was off.
    private double Adapt(int e, double rmsVolts)
    {
        AlternatingElement element = _elements[e];
        if (element.Diodes > 0 || !(rmsVolts > 0)) return 0;
        double siemens = element.AmperesAt(rmsVolts) / rmsVolts, was = _siemens[e];
        _siemens[e] = siemens;
        _perSecond[e] = element.Lag * siemens * 2 * Math.PI * _hertz;
        return siemens > 0 ? Math.Abs(siemens - was) / siemens : 0;
    }

    // Toward where a geometric series of the changes ends.
    private void Extrapolate(double[] change, double[] before)
    {
        for (int e = 0; e < change.Length; e++)
        {
            double ratio = before[e] != 0 ? change[e] / before[e] : 0;
            if (ratio > 0.05 && ratio < 0.97) _held[e] += change[e] * ratio / (1 - ratio);
        }
    }

    // One step to a voltage of the source; false where a capacitor has lost its load.
    private bool Step(double source)
    {
        int n = _elements.Length;
        double half = _step / 2;
        for (int e = 0; e < n; e++)
        {
            AlternatingElement element = _elements[e];
            if (element.Diodes == 0)
            {
                // i = G u + iL, and iL grows with u by the mean of both ends.
                _slope[e] = 1 / Math.Max(1e-12, _siemens[e] + (half * _perSecond[e]));
                _offset[e] = -(_held[e] + (half * _perSecond[e] * _volts[e])) * _slope[e];
                continue;
            }

            if (_held[e] < Collapsed * _crest)
            {
                Lost = element.Device;
                return false;
            }

            double taken = element.AmperesAt(_held[e]);
            _slope[e] = half / (element.Farads * (1 + (half * element.SlopeAt(_held[e]) / element.Farads)));
            _offset[e] = _held[e] + (_slope[e] * (Math.Abs(_before[e]) - (2 * taken)));
        }

        if (!Balance(source)) return false;
        for (int e = 0; e < n; e++)
        {
            double volts = source - Dropped(e);
            if (_elements[e].Diodes > 0) _held[e] = _offset[e] + (_slope[e] * Math.Abs(_amperes[e]));
            else _held[e] += half * _perSecond[e] * (_volts[e] + volts);
            _volts[e] = volts;
            _before[e] = _amperes[e];
        }

        return true;
    }

    private double Dropped(int e)
    {
        double volts = 0;
        int device = _elements[e].Device;
        for (int k = 0; k < _elements.Length; k++)
        {
            if (_amperes[k] != 0) volts += _ohms[device, _elements[k].Device] * _amperes[k];
        }

        return volts;
    }

    // The currents of this step: those diodes conduct whose way drives them forward.
    private bool Balance(double source)
    {
        int n = _elements.Length;
        for (int e = 0; e < n; e++) _flows[e] = _elements[e].Diodes == 0 || _before[e] != 0;
        for (int switching = 0; switching < MostSwitching; switching++)
        {
            int count = 0;
            for (int e = 0; e < n; e++)
            {
                if (_flows[e]) _active[count++] = e;
                else _amperes[e] = 0;
            }

            if (count > 0 && !Newton(source, count)) return false;
            bool changed = false;
            for (int e = 0; e < n; e++)
            {
                if (_elements[e].Diodes == 0) continue;
                if (_flows[e])
                {
                    if (Math.Abs(_amperes[e]) > LeastAmperes) continue;
                    _flows[e] = false;
                    _amperes[e] = 0;
                    changed = true;
                    continue;
                }

                double volts = source - Dropped(e);
                if (_elements[e].Diodes == 2) _sign[e] = volts < 0 ? -1 : 1;
                if (_sign[e] * volts <= _offset[e] + 1e-9) continue;
                _amperes[e] = _sign[e] * 1e-6;
                if (Surplus(e, source) <= 0)
                {
                    _amperes[e] = 0;
                    continue;
                }

                _flows[e] = true;
                changed = true;
            }

            if (!changed) return true;
        }

        return true;
    }

    // What drives the current of a rectifier on, in its own direction. [V]
    private double Surplus(int e, double source)
    {
        double amperes = Math.Abs(_amperes[e]);
        return (_sign[e] * (source - Dropped(e))) - _offset[e] - (_slope[e] * amperes) - (_elements[e].Diodes * _diode.VoltsAt(amperes));
    }

    private bool Newton(double source, int count)
    {
        for (int pass = 0; pass < MostNewton; pass++)
        {
            for (int a = 0; a < count; a++)
            {
                int e = _active[a], device = _elements[e].Device;
                bool isDiode = _elements[e].Diodes > 0;
                double amperes = _amperes[e];
                _right[a] = isDiode ? Surplus(e, source) : source - Dropped(e) - _offset[e] - (_slope[e] * amperes);
                for (int b = 0; b <= a; b++) _matrix[a, b] = _sign[e] * _sign[_active[b]] * _ohms[device, _elements[_active[b]].Device];
                _matrix[a, a] += _slope[e] + (isDiode ? _elements[e].Diodes * _diode.SlopeAt(Math.Abs(amperes)) : 0);
            }

            SolveCholesky(count);
            bool settled = true;
            for (int a = 0; a < count; a++)
            {
                int e = _active[a];
                if (_elements[e].Diodes == 0)
                {
                    _amperes[e] += _step2[a];
                    settled &= Math.Abs(_step2[a]) <= 1e-7 + (1e-8 * Math.Abs(_amperes[e]));
                    continue;
                }

                // The logarithm is followed from below: a step never takes more than nine tenths of the current away.
                double was = Math.Abs(_amperes[e]), next = Math.Max(was + _step2[a], was * 0.1);
                if (next < LeastAmperes) next = LeastAmperes / 2;
                settled &= Math.Abs(next - was) <= 1e-8 + (1e-7 * next);
                _amperes[e] = _sign[e] * next;
            }

            if (settled) return true;
        }

        return false;
    }

    private void SolveCholesky(int count)
    {
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = _matrix[i, j];
                for (int k = 0; k < j; k++) sum -= _matrix[i, k] * _matrix[j, k];
                _matrix[i, j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-18)) : sum / _matrix[j, j];
            }

            double value = _right[i];
            for (int k = 0; k < i; k++) value -= _matrix[i, k] * _step1[k];
            _step1[i] = value / _matrix[i, i];
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double value = _step1[i];
            for (int k = i + 1; k < count; k++) value -= _matrix[k, i] * _step2[k];
            _step2[i] = value / _matrix[i, i];
        }
    }

    private void Take(AlternatingState[] states, double[] outputs, double[] ofDevice, ref Sums sums)
    {
        Array.Clear(ofDevice, 0, ofDevice.Length);
        for (int e = 0; e < _elements.Length; e++)
        {
            AlternatingElement element = _elements[e];
            ofDevice[element.Device] += _amperes[e];
            ref AlternatingState state = ref states[element.Device];
            double inItsWay = element.Diodes == 1 ? Math.Max(0, _sign[e] * _volts[e]) : Math.Abs(_volts[e]);
            if (element.Diodes == 0 && state.ValleyVolts > 0) continue;
            state.CrestVolts = Math.Max(state.CrestVolts, inItsWay);
            if (element.Diodes == 0) continue;
            state.HighestVolts = Math.Max(state.HighestVolts, _held[e]);
            state.ValleyVolts = Math.Min(state.ValleyVolts, _held[e]);
        }

        Sum(states, outputs, ofDevice, ref sums);
    }

    private void Sum(AlternatingState[] states, double[] outputs, double[] ofDevice, ref Sums sums)
    {
        double total = 0;
        for (int output = 0; output < outputs.Length; output++)
        {
            double ofOutput = 0;
            for (int d = 0; d < _devices; d++)
            {
                if (_outputs[d] == output) ofOutput += ofDevice[d];
            }

            outputs[output] += ofOutput * ofOutput;
            total += ofOutput;
        }

        sums.Squares += total * total;
        sums.Sum += total;
        sums.Peak = Math.Max(sums.Peak, Math.Abs(total));
        for (int e = 0; e < _elements.Length; e++)
        {
            ref AlternatingState state = ref states[_elements[e].Device];
            double amperes = ofDevice[_elements[e].Device];
            if (e > 0 && _elements[e - 1].Device == _elements[e].Device) continue;
            state.RmsVolts += _volts[e] * _volts[e];
            state.RmsAmperes += amperes * amperes;
            state.MeanAmperes += amperes;
            state.PeakAmperes = Math.Max(state.PeakAmperes, Math.Abs(amperes));
            state.Watts += _volts[e] * amperes;
        }
    }

    private void Finish(AlternatingState[] states, double[] outputs)
    {
        for (int d = 0; d < states.Length; d++)
        {
            states[d].RmsVolts = Math.Sqrt(states[d].RmsVolts / _steps);
            states[d].RmsAmperes = Math.Sqrt(states[d].RmsAmperes / _steps);
            states[d].MeanAmperes /= _steps;
            states[d].Watts /= _steps;
        }

        for (int output = 0; output < outputs.Length; output++) outputs[output] = Math.Sqrt(outputs[output] / _steps);
    }

    private struct Sums
    {
        internal double Squares, Sum, Peak;
    }
}
