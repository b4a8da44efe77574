using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>The time-current characteristic of a class of fuses, as time limits.</summary>
/// <remarks>
/// Immutable. A standard gives limits of the pre-arcing time, not a curve. More current needs no more I²t, so the limit at I2 below a
/// current I bounds the latest time, t2·(I2/I)² (<see cref="Sources.AdiabaticOperatingTime"/>), and the limit above the earliest one.
/// Below the first limit with a latest time the fuse may never open. Every limit carries its own source.
/// </remarks>
/// <example>
/// <code>
/// var mine = new FuseCharacteristic("F of my maker", ElectricCurrent.FromAmperes(1), ElectricCurrent.FromAmperes(5),
///     new FuseTimeLimit(2.1, null, Duration.FromMinutes(30), new Citation("data sheet", CitationKind.Declared)));
/// </code>
/// </example>
public sealed class FuseCharacteristic
{
    // A current that is meant to be a time limit's multiple may miss it by the rounding of a division.
    private const double Rounding = 1e-9;

    private const double Hour = 3600, Minute = 60;

    /// <summary>States a characteristic.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="ratedFrom">The smallest rated current that it holds for, above 0. [A]</param>
    /// <param name="ratedTo">The largest rated current that it holds for, at least <paramref name="ratedFrom"/>. [A]</param>
    /// <param name="timeLimits">At least one, in rising current; times never rise with it.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, no time limit is given, their multiples do not rise, or a time
    /// rises.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public FuseCharacteristic(string name, ElectricCurrent ratedFrom, ElectricCurrent ratedTo, params FuseTimeLimit[] timeLimits)
    {
        Name = Require.Name(name, nameof(name));
        RatedFromAmperes = Require.Positive(ratedFrom.Amperes, nameof(ratedFrom), "A");
        RatedToAmperes = Require.Positive(ratedTo.Amperes, nameof(ratedTo), "A");
        if (RatedToAmperes < RatedFromAmperes)
        {
            throw Require.OutOfRange(RatedToAmperes, nameof(ratedTo), "A", FormattableString.Invariant($"at least {RatedFromAmperes}"));
        }

        TimeLimits = Require.Items(timeLimits, nameof(timeLimits));
        if (TimeLimits.Count == 0) throw new ArgumentException("A characteristic needs at least one time limit.", nameof(timeLimits));
        if (TimeLimits.Zip(TimeLimits.Skip(1), (low, high) => high.Multiple > low.Multiple).Contains(false))
        {
            throw new ArgumentException("The time limits must rise in current.", nameof(timeLimits));
        }

        if (TimeLimits.Any(IsContradicted))
        {
            throw new ArgumentException(
                "More current cannot take longer: the times of the time limits may not rise with it.", nameof(timeLimits));
        }

        CertainMultiple = TimeLimits.Where(g => g.NotAfter is not null).Select(g => g.Multiple)
            .DefaultIfEmpty(double.PositiveInfinity).Min();
        LeastMeltingSeconds = TimeLimits.Where(g => g.Multiple > CertainMultiple)
            .Select(g => ((g.Multiple * g.Multiple) - (CertainMultiple * CertainMultiple)) * g.NotBeforeSeconds).DefaultIfEmpty(0).Max();
    }

    /// <summary>Miniature fuses, quick-acting F, 125 mA to 10 A: IEC 60127-2 sheet 2.</summary>
    public static FuseCharacteristic IecQuickActing { get; } = Of("IEC 60127-2 F", 0.125, 10,
        At(1.5, Hour, null, Sources.Iec60127QuickActing),
        At(2.1, null, 30 * Minute, Sources.Iec60127QuickActing),
        At(2.75, 0.05, 2, Sources.Iec60127QuickActing),
        At(4, 0.01, 0.3, Sources.Iec60127QuickActingFromMemory),
        At(10, null, 0.02, Sources.Iec60127QuickActing));

    /// <summary>Miniature fuses, quick-acting F, 32 mA to 100 mA: IEC 60127-2 sheet 2.</summary>
    public static FuseCharacteristic IecQuickActingTo100Milliamperes { get; } = Of("IEC 60127-2 F, 100 mA and less", 0.032, 0.1,
        At(1.5, Hour, null, Sources.Iec60127QuickActing),
        At(2.1, null, 30 * Minute, Sources.Iec60127QuickActing),
        At(2.75, 0.01, 0.5, Sources.Iec60127QuickActing),
        At(4, 0.003, 0.1, Sources.Iec60127QuickActing),
        At(10, null, 0.02, Sources.Iec60127QuickActing));

    /// <summary>Miniature fuses, time-lag T, 125 mA to 6.3 A: IEC 60127-2 sheet 3.</summary>
    public static FuseCharacteristic IecTimeLag { get; } = Of("IEC 60127-2 T", 0.125, 6.3,
        At(1.5, Hour, null, Sources.Iec60127TimeLag),
        At(2.1, null, 2 * Minute, Sources.Iec60127TimeLag),
        At(2.75, 0.6, 10, Sources.Iec60127TimeLag),
        At(4, 0.15, 3, Sources.Iec60127TimeLag),
        At(10, 0.02, 0.3, Sources.Iec60127TimeLag));

    /// <summary>Miniature fuses, time-lag T, 32 mA to 100 mA: IEC 60127-2 sheet 3.</summary>
    /// <remarks>The time limits at 4 and 10 times the rated current are not given here: no source was at hand.</remarks>
    public static FuseCharacteristic IecTimeLagTo100Milliamperes { get; } = Of("IEC 60127-2 T, 100 mA and less", 0.032, 0.1,
        At(1.5, Hour, null, Sources.Iec60127TimeLag),
        At(2.1, null, 2 * Minute, Sources.Iec60127TimeLag),
        At(2.75, 0.2, 10, Sources.Iec60127TimeLag));

    /// <summary>Small supplemental fuses, fast, to 30 A: UL 248-14.</summary>
    public static FuseCharacteristic UlFast { get; } = Of("UL 248-14 fast", 0.001, 30,
        At(1.1, 4 * Hour, null, Sources.Ul248),
        At(1.35, null, Hour, Sources.Ul248),
        At(2, null, 2 * Minute, Sources.Ul248)).TestedAt(ProtectionConstants.UlReferenceTemperature.Value);

    /// <summary>Small supplemental fuses, time-delay, 80 mA to 3 A: UL 248-14.</summary>
    public static FuseCharacteristic UlTimeDelay { get; } = Of("UL 248-14 time-delay", 0.08, 3,
        At(1.35, null, Hour, Sources.Ul248),
        At(2, 5, 2 * Minute, Sources.Ul248)).TestedAt(ProtectionConstants.UlReferenceTemperature.Value);

    /// <summary>Blade fuses of ISO 8820-3 type C, 3 A to 40 A.</summary>
    /// <remarks>All from memory. Editions differ at 3.5 times the rated current, where some say 0.04 s.</remarks>
    public static FuseCharacteristic Blade { get; } = Of("ISO 8820-3 type C", 3, 40,
        At(1.1, 100 * Hour, null, Sources.BladeFuse),
        At(1.35, 0.75, 600, Sources.BladeFuse),
        At(1.6, 0.25, 50, Sources.BladeFuse),
        At(2, 0.15, 5, Sources.BladeFuse),
        At(3.5, 0.08, 0.5, Sources.BladeFuse),
        At(6, 0.03, 0.1, Sources.BladeFuse));

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The smallest rated current that it holds for. [A]</summary>
    public ElectricCurrent RatedFrom => ElectricCurrent.FromAmperes(RatedFromAmperes);

    /// <summary>The largest rated current that it holds for. [A]</summary>
    public ElectricCurrent RatedTo => ElectricCurrent.FromAmperes(RatedToAmperes);

    /// <summary>The time limits, in rising current.</summary>
    public IReadOnlyList<FuseTimeLimit> TimeLimits { get; }

    /// <summary>Temperature of the air in the tests of its standard. [°C]</summary>
    internal double ReferenceCelsius { get; private set; } = ProtectionConstants.IecReferenceTemperature.Value;

    internal double RatedFromAmperes { get; }

    internal double RatedToAmperes { get; }

    /// <summary>Whether its rated current is one to carry continuously: it is closed after an hour at 1.5 times that, as IEC 60127 has
    /// it.</summary>
    internal bool CarriesItsRating => EarliestSeconds(1.5) >= Hour;

    /// <summary>The smallest current over the rated one that opens it for certain; infinite where no time limit has a latest
    /// time.</summary>
    internal double CertainMultiple { get; }

    /// <summary>An I²t that does not melt it, however short, over the square of its rated current; 0 where no time limit says so.
    /// [s]</summary>
    /// <remarks>
    /// a time limit has it closed for a time t at m times its rated current. It melts for certain at some multiple n, so that at no
    /// temperature below does it lose more than n² of that heat, and (m² − n²)·t of it stayed in the element. Its resistance and its losses
    /// are taken to rise evenly with its temperature.
    /// </remarks>
    internal double LeastMeltingSeconds { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>The time limit above bounds the earliest time; 0 beyond the last. [s]</summary>
    internal double EarliestSeconds(double multiple)
    {
        double earliest = 0;
        for (int i = TimeLimits.Count - 1; i >= 0 && TimeLimits[i].Multiple >= multiple * (1 - Rounding); i--)
        {
            earliest = Math.Max(earliest, TimeLimits[i].NotBeforeSeconds);
        }

        return earliest;
    }

    /// <summary>Number of limits at or below a multiple, the lowest first: by their latest times the fuse has opened.</summary>
    internal int CountUpTo(double multiple)
    {
        int count = 0;
        while (count < TimeLimits.Count && TimeLimits[count].Multiple <= multiple * (1 + Rounding)) count++;
        return count;
    }

    /// <summary>An I²t that does not melt it in a pulse of a peak, over the square of its rated current; 0 where no limit says so.
    /// [s]</summary>
    /// <remarks>A limit's current for its shortest time heats the element more than any pulse of no higher peak and no more I²t.</remarks>
    internal double WithstoodSeconds(double peakMultiple) => TimeLimits.Where(g => !Limits.IsAbove(peakMultiple, g.Multiple))
        .Select(g => g.Multiple * g.Multiple * g.NotBeforeSeconds).Append(LeastMeltingSeconds).Max();

    /// <summary>An I²t that opens it for certain in a pulse of a peak, over the square of its rated current; infinite where no limit says
    /// so. [s]</summary>
    internal double OpeningSeconds(double peakMultiple) => TimeLimits.Take(CountUpTo(peakMultiple))
        .Select(g => g.Multiple * g.Multiple * g.NotAfterSeconds).DefaultIfEmpty(double.PositiveInfinity).Min();

    // A larger current that must last longer, or that must not open earlier than a smaller one has opened.
    private bool IsContradicted(FuseTimeLimit limit) => TimeLimits.Where(g => g.Multiple > limit.Multiple).Any(higher =>
        (limit.NotBefore is not null && higher.NotBeforeSeconds > limit.NotBeforeSeconds)
        || higher.NotBeforeSeconds > limit.NotAfterSeconds
        || (higher.NotAfter is not null && higher.NotAfterSeconds > limit.NotAfterSeconds));

    private FuseCharacteristic TestedAt(double celsius)
    {
        ReferenceCelsius = celsius;
        return this;
    }

    private static FuseCharacteristic Of(string name, double fromAmperes, double toAmperes, params FuseTimeLimit[] timeLimits) =>
        new(name, ElectricCurrent.FromAmperes(fromAmperes), ElectricCurrent.FromAmperes(toAmperes), timeLimits);

    private static FuseTimeLimit At(double multiple, double? notBefore, double? notAfter, Citation source) =>
        new(multiple, Time(notBefore), Time(notAfter), source);

    private static Duration? Time(double? seconds) => seconds is double given ? Duration.FromSeconds(given) : null;
}
