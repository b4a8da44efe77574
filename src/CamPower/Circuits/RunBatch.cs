using System;
#if NET
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Inputs = System.ReadOnlySpan<double>;
using Outputs = System.Span<double>;
#else
using Inputs = double[];
using Outputs = double[];
#endif

namespace CamPower.Circuits;

/// <summary>Many runs with a load of constant power each, in SI doubles: what <see cref="CableRun"/> and <see cref="Load"/> say one by one.</summary>
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
    public static int Feed(
        ReadOnlySpan<double> sourceVolts, ReadOnlySpan<double> loopOhms, ReadOnlySpan<double> watts, Span<double> loadVolts, Span<double> amperes) =>
        FeedAll(sourceVolts, loopOhms, watts, loadVolts, amperes);
#endif

    // Eight at a time where the processor can, and what is left one by one.
    private static int FeedAll(Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes)
    {
        RequireSameLength(sourceVolts.Length, loopOhms.Length, watts.Length, loadVolts.Length, amperes.Length);
        RequireApart(sourceVolts, loopOhms, watts, loadVolts, amperes);
        bool areWithin = true;
        int fed = 0, first = 0;
#if NET
        if (Vector512.IsHardwareAccelerated || Vector256.IsHardwareAccelerated)
        {
            fed = FeedEights(sourceVolts, loopOhms, watts, loadVolts, amperes, out first, out areWithin);
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
    private static int FeedEights(
        Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes, out int done, out bool areWithin)
    {
        ref double source = ref MemoryMarshal.GetReference(sourceVolts), loop = ref MemoryMarshal.GetReference(loopOhms);
        ref double power = ref MemoryMarshal.GetReference(watts);
        ref double voltage = ref MemoryMarshal.GetReference(loadVolts), current = ref MemoryMarshal.GetReference(amperes);
        Vector512<long> fed = Vector512<long>.Zero;
        Vector512<double> within = Vector512<double>.AllBitsSet;
        nuint end = (nuint)(sourceVolts.Length - (sourceVolts.Length % Vector512<double>.Count));
        for (nuint i = 0; i < end; i += (nuint)Vector512<double>.Count)
        {
            Vector512<double> vs = Vector512.LoadUnsafe(ref source, i), r = Vector512.LoadUnsafe(ref loop, i), p = Vector512.LoadUnsafe(ref power, i);
            within &= Within(vs, Require.LeastSourceVolts, Require.MostSourceVolts) & Within(r, 0, MostOhms) & Within(p, 0, Load.MostWatts);
            Vector512<double> volts = RunKernel.LoadVolts(vs, r, p);
            Vector512<double> isFed = Vector512.GreaterThan(volts, Vector512.Create(RunKernel.NoOperatingPoint));
            volts.StoreUnsafe(ref voltage, i);
            (isFed & (p / volts)).StoreUnsafe(ref current, i);
            fed -= isFed.AsInt64();
        }

        done = (int)end;
        areWithin = within.AsInt64() == Vector512<long>.AllBitsSet;
        return (int)Vector512.Sum(fed);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Within(Vector512<double> value, double low, double high) =>
        Vector512.GreaterThanOrEqual(value, Vector512.Create(low)) & Vector512.LessThanOrEqual(value, Vector512.Create(high));
#endif

    private static bool AreWithin(double vs, double ohms, double watts) =>
        vs is >= Require.LeastSourceVolts and <= Require.MostSourceVolts && ohms is >= 0 and <= MostOhms && watts is >= 0 and <= Load.MostWatts;

    private static void RequireSameLength(int source, int loop, int watts, int volts, int amperes)
    {
        if (source == loop && source == watts && source == volts && source == amperes) return;
        throw new ArgumentException(FormattableString.Invariant(
            $"All must have one length, but there are {source} sourceVolts, {loop} loopOhms, {watts} watts, {volts} loadVolts and {amperes} amperes."));
    }

    private static void RequireApart(Inputs sourceVolts, Inputs loopOhms, Inputs watts, Outputs loadVolts, Outputs amperes)
    {
        bool share = Share(loadVolts, sourceVolts) || Share(loadVolts, loopOhms) || Share(loadVolts, watts) || Share(loadVolts, amperes)
            || Share(amperes, sourceVolts) || Share(amperes, loopOhms) || Share(amperes, watts);
        if (share) throw new ArgumentException("loadVolts and amperes must have memory of their own.");
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
