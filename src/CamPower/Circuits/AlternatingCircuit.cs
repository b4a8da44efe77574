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

    // Where a capacitor begins, over the crest: near where most end, so that few periods are needed.
    private const double StartShare = 0.92;

    // Changes from period to period are taken for a geometric series where their ratio is in this range, every so many periods.
    private const double LeastRatio = 0.05, MostRatio = 0.97;

    private const int PeriodsApart = 4;

    // A capacitor below this share of the crest has lost its load: constant power asks for ever more there.
    private const double Collapsed = 0.12;

    private const double LeastAmperes = 1e-9, LeastSiemens = 1e-12, LeastPivot = 1e-18;

    // A diode begins to conduct when this much drives it, at this current, where the logarithm of its equation is finite.
    private const double OpeningVolts = 1e-9, OpeningAmperes = 1e-6;

    // The logarithm is followed from below: a step of Newton's method leaves at least this much of the current.
    private const double LeastLeft = 0.1;

    // When currents have settled: of what is linear, and of rectifiers.
    private const double LinearAmperes = 1e-7, LinearShare = 1e-8, RectifierAmperes = 1e-8, RectifierShare = 1e-7;

    private readonly double _crest, _hertz, _stepSeconds;
    private readonly double[,] _ohms;
    private readonly AlternatingElement[] _elements;
    private readonly RectifierDiode _diode;
    private readonly int _stepsAPeriod;
    private readonly AlternatingTotals _totals;

    // For each element: capacitor voltage or lagging current, the current now, and whether it flows backward through the bridge.
    private readonly double[] _held, _amperes, _before, _volts, _siemens, _perSecond, _sign;
    private readonly double[] _offset, _slope, _right, _forward, _correction;
    private readonly bool[] _flows;
    private readonly double[] _matrix;
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
        _stepsAPeriod = steps;
        _totals = new AlternatingTotals(elements, outputs, steps);
        _stepSeconds = 1 / (hertz * steps);
        _ohms = ohms;
        _elements = elements;
        _diode = diode;
        (_held, _amperes, _before, _volts, _siemens, _perSecond, _sign) =
            (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        (_offset, _slope, _right, _forward, _correction) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        _flows = new bool[n];
        _matrix = new double[n * n];
        _active = new int[n];
    }

    /// <summary>The device whose capacitor did not hold its load; null for none.</summary>
    internal int? Lost { get; private set; }

    /// <summary>The periodic steady state, or null where a capacitor cannot hold its load, or nothing settles.</summary>
    internal AlternatingSolution? Solve()
    {
        int n = _elements.Length;
        for (int e = 0; e < n; e++) Begin(e);
        double[] start = new double[n], change = new double[n], changeBefore = new double[n];
        for (int period = 0; period < MostPeriods; period++)
        {
            Array.Copy(_held, start, n);
            _totals.Begin();
            for (int step = 1; step <= _stepsAPeriod; step++)
            {
                if (!Step(_crest * Math.Sin(2 * Math.PI * step / _stepsAPeriod))) return null;
                _totals.Add(_amperes, _volts, _held, _sign);
            }

            _totals.Finish();
            double most = 0;
            for (int e = 0; e < n; e++)
            {
                (changeBefore[e], change[e]) = (change[e], _held[e] - start[e]);
                double scale = _elements[e].Diodes > 0
                    ? _crest
                    : Math.Max(LeastAmperes, _crest * (_siemens[e] + (_perSecond[e] / (2 * Math.PI * _hertz))));
                most = Math.Max(most, Math.Max(Math.Abs(change[e]) / scale, Adapt(e, _totals.RmsVoltsOf(_elements[e].Device))));
            }

            if (most < Periodic) return _totals.Solution();
            if (period % PeriodsApart == PeriodsApart - 1) Extrapolate(change, changeBefore);
        }

        return null;
    }

    private void Begin(int e)
    {
        AlternatingElement element = _elements[e];
        if (element.Diodes > 0)
        {
            _held[e] = StartShare * _crest;
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
            if (ratio > LeastRatio && ratio < MostRatio) _held[e] += change[e] * ratio / (1 - ratio);
        }
    }

    // One step to a voltage of the source; false where a capacitor has lost its load.
    private bool Step(double source)
    {
        int n = _elements.Length;
        double half = _stepSeconds / 2;
        for (int e = 0; e < n; e++)
        {
            AlternatingElement element = _elements[e];
            if (element.Diodes == 0)
            {
                // i = G u + iL, and iL grows with u by the mean of both ends.
                _slope[e] = 1 / Math.Max(LeastSiemens, _siemens[e] + (half * _perSecond[e]));
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
            for (int e = 0; e < n; e++) changed |= _elements[e].Diodes > 0 && Switch(e, source);
            if (!changed) return true;
        }

        // Diodes that still change over are left as they are; the decks of the circuit simulator hold what comes of it.
        return true;
    }

    // Lets a diode begin or cease to conduct; whether it changed.
    private bool Switch(int e, double source)
    {
        if (_flows[e])
        {
            if (Math.Abs(_amperes[e]) > LeastAmperes) return false;
            _amperes[e] = 0;
            _flows[e] = false;
            return true;
        }

        double volts = source - Dropped(e);
        if (_elements[e].Diodes == 2) _sign[e] = volts < 0 ? -1 : 1;
        if (_sign[e] * volts <= _offset[e] + OpeningVolts) return false;
        _amperes[e] = _sign[e] * OpeningAmperes;
        _flows[e] = !(Surplus(e, source) <= 0);
        if (!_flows[e]) _amperes[e] = 0;
        return _flows[e];
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
                for (int b = 0; b <= a; b++)
                {
                    int other = _active[b];
                    _matrix[(a * count) + b] = _sign[e] * _sign[other] * _ohms[device, _elements[other].Device];
                }

                _matrix[(a * count) + a] += _slope[e] + (isDiode ? _elements[e].Diodes * _diode.SlopeAt(Math.Abs(amperes)) : 0);
            }

            DenseCholesky.Factor(_matrix, count, LeastPivot);
            DenseCholesky.Forward(_matrix, count, _right, _forward);
            DenseCholesky.Backward(_matrix, count, _forward, _correction);
            bool settled = true;
            for (int a = 0; a < count; a++)
            {
                int e = _active[a];
                if (_elements[e].Diodes == 0)
                {
                    _amperes[e] += _correction[a];
                    settled &= Math.Abs(_correction[a]) <= LinearAmperes + (LinearShare * Math.Abs(_amperes[e]));
                    continue;
                }

                double was = Math.Abs(_amperes[e]), next = Math.Max(was + _correction[a], was * LeastLeft);
                if (next < LeastAmperes) next = LeastAmperes / 2;
                settled &= Math.Abs(next - was) <= RectifierAmperes + (RectifierShare * next);
                _amperes[e] = _sign[e] * next;
            }

            if (settled) return true;
        }

        return false;
    }
}
