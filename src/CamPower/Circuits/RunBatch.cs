using System;
#if NET
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Inputs = System.ReadOnlySpan<double>;
using Outputs = System.Span<double>;
#else
using Inputs = double[];
using Outputs = double[];
#endif

namespace CamPower.Circuits;

/// <summary>Many runs with a load of constant power each, in SI doubles.</summary>
/// <remarks>
/// The formula and the bits are those of a single run, whatever the width of the processor's vectors and wherever a batch is cut.
/// Stateless; nothing is allocated. Batches may run on many threads, each on its own part of the outputs.
/// Sources: <see cref="Sources.Kirchhoff"/> and <see cref="Sources.MaximumPower"/>.
/// </remarks>
/// <example>
/// <code>
/// double[] volts = new double[3], amperes = new double[3];
/// int fed = RunBatch.Feed(sourceVolts: [12, 12, 12], loopOhms: [1.5, 3, 10], watts: [9, 9, 9], volts, amperes);
/// // fed is 2: 10 Ω carry at most 3.6 W from 12 V. volts[2] and amperes[2] are 0.
/// </code>
/// </example>
public static class RunBatch
{
    private const double MostOhms = 1e12;

    /// <summary>Voltage and current of each load at the end of its run.</summary>
    /// <param name="sourceVolts">Voltage at the source end of each run, from 1 nV to 1 MV. [V]</param>
    /// <param name="loopOhms">Resistance out and back of each run, joints included, from 0 to 1 TΩ. [Ω]</param>
    /// <param name="watts">Power of each load, whatever its voltage, from 0 to 1 GW. [W]</param>
    /// <param name="loadVolts">Gets the voltage at the terminals of each load; 0 where the run has no operating point. [V]</param>
    /// <param name="amperes">Gets the current of each run; 0 where the run has no operating point. [A]</param>
    /// <returns>How many of the runs have an operating point. A run has none if its load is above Vs²/4R.</returns>
    /// <exception cref="ArgumentNullException">An array is null.</exception>
    /// <exception cref="ArgumentException">The lengths differ, or an array of answers is another of the arrays.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN or outside its range; the message names the first with
    /// its place, and the answers are all 0.</exception>
    public static int Feed(double[] sourceVolts, double[] loopOhms, double[] watts, double[] loadVolts, double[] amperes) => FeedAll(
        Require.NotNull(sourceVolts, nameof(sourceVolts)),
        Require.NotNull(loopOhms, nameof(loopOhms)),
        Require.NotNull(watts, nameof(watts)),
        Require.NotNull(loadVolts, nameof(loadVolts)),
        Require.NotNull(amperes, nameof(amperes)));

#if NET
    /// <inheritdoc cref="Feed(double[], double[], double[], double[], double[])"/>
    /// <exception cref="ArgumentException">The lengths differ, or the memory of answers overlaps other memory.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN or outside its range; the message names the first with
    /// its place, and the answers are all 0.</exception>
    [OverloadResolutionPriority(1)]
    public static int Feed(
        ReadOnlySpan<double> sourceVolts, ReadOnlySpan<double> loopOhms, ReadOnlySpan<double> watts,
        Span<double> loadVolts, Span<double> amperes) =>
        FeedAll(sourceVolts, loopOhms, watts, loadVolts, amperes);
#endif

    // As many at a time as the processor's vectors hold, and what is left one by one.
    private static int FeedAll(Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes)
    {
        RequireSameLength(sourceVolts.Length, loopOhms.Length, watts.Length, loadVolts.Length, amperes.Length);
        RequireApart(sourceVolts, loopOhms, watts, loadVolts, amperes);
        bool areWithin = true;
        int fed = 0, first = 0;
#if NET
        if (Vector.IsHardwareAccelerated)
        {
            fed = FeedVectors(sourceVolts, loopOhms, watts, loadVolts, amperes, out first, out areWithin);
        }
#endif
        for (int i = first; i < sourceVolts.Length; i++)
        {
            areWithin &= AreWithin(sourceVolts[i], loopOhms[i], watts[i]);
            double volts = RunKernel.LoadVolts(sourceVolts[i], loopOhms[i], watts[i], 0, 0);
            bool isFed = volts > RunKernel.NoOperatingPoint;
            loadVolts[i] = volts;
            amperes[i] = isFed ? watts[i] / volts : 0;
            if (isFed) fed++;
        }

        if (!areWithin) Refuse(sourceVolts, loopOhms, watts, loadVolts, amperes);
        return fed;
    }

#if NET
    private static int FeedVectors(
        Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes, out int done, out bool areWithin)
    {
        ref double source = ref MemoryMarshal.GetReference(sourceVolts), loop = ref MemoryMarshal.GetReference(loopOhms);
        ref double power = ref MemoryMarshal.GetReference(watts);
        ref double voltage = ref MemoryMarshal.GetReference(loadVolts), current = ref MemoryMarshal.GetReference(amperes);
        Vector<long> fed = Vector<long>.Zero, within = ~Vector<long>.Zero;
        nuint end = (nuint)(sourceVolts.Length - (sourceVolts.Length % Vector<double>.Count));
        for (nuint i = 0; i < end; i += (nuint)Vector<double>.Count)
        {
            Vector<double> vs = Vector.LoadUnsafe(ref source, i), r = Vector.LoadUnsafe(ref loop, i), p = Vector.LoadUnsafe(ref power, i);
            within &= Within(vs, Require.LeastSourceVolts, Require.MostSourceVolts) & Within(r, 0, MostOhms) & Within(p, 0, Load.MostWatts);
            Vector<double> volts = RunKernel.LoadVolts(vs, r, p);
            Vector<long> isFed = Vector.GreaterThan(volts, new Vector<double>(RunKernel.NoOperatingPoint));
            volts.StoreUnsafe(ref voltage, i);
            Vector.ConditionalSelect(isFed, p / volts, Vector<double>.Zero).StoreUnsafe(ref current, i);
            fed -= isFed;
        }

        done = (int)end;
        areWithin = Vector.EqualsAll(within, ~Vector<long>.Zero);
        return (int)Vector.Sum(fed);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<long> Within(Vector<double> value, double low, double high) =>
        Vector.GreaterThanOrEqual(value, new Vector<double>(low)) & Vector.LessThanOrEqual(value, new Vector<double>(high));
#endif

    private static bool AreWithin(double vs, double ohms, double watts) =>
        vs is >= Require.LeastSourceVolts and <= Require.MostSourceVolts
        && ohms is >= 0 and <= MostOhms && watts is >= 0 and <= Load.MostWatts;

    private static void RequireSameLength(int sourceVolts, int loopOhms, int watts, int loadVolts, int amperes)
    {
        if (sourceVolts == loopOhms && sourceVolts == watts && sourceVolts == loadVolts && sourceVolts == amperes) return;
        string counts = FormattableString.Invariant(
            $"{sourceVolts} sourceVolts, {loopOhms} loopOhms, {watts} watts, {loadVolts} loadVolts and {amperes} amperes");
        throw new ArgumentException($"All must have one length, but there are {counts}.", nameof(sourceVolts));
    }

    private static void RequireApart(Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes)
    {
        bool share = Share(loadVolts, sourceVolts) || Share(loadVolts, loopOhms) || Share(loadVolts, watts) || Share(loadVolts, amperes)
            || Share(amperes, sourceVolts) || Share(amperes, loopOhms) || Share(amperes, watts);
        if (share) throw new ArgumentException("loadVolts and amperes must have memory of their own.", nameof(loadVolts));
    }

#if NET
    private static bool Share(Outputs outputs, Inputs others) => outputs.Overlaps(others);
#else
    private static bool Share(Outputs outputs, Inputs others) => outputs.Length > 0 && ReferenceEquals(outputs, others);
#endif

    // Clears the answers, and refuses the first number that is outside its range.
    private static void Refuse(Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes)
    {
        for (int i = 0; i < loadVolts.Length; i++) loadVolts[i] = amperes[i] = 0;
        for (int i = 0; i < loadVolts.Length; i++)
        {
            if (AreWithin(sourceVolts[i], loopOhms[i], watts[i])) continue;
            string place = FormattableString.Invariant($"[{i}]");
            Require.SourceVolts(sourceVolts[i], nameof(sourceVolts) + place);
            Require.Within(loopOhms[i], 0, MostOhms, nameof(loopOhms) + place, "Ω");
            Require.Within(watts[i], 0, Load.MostWatts, nameof(watts) + place, "W");
        }
    }
}
