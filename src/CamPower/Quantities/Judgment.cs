using System;
using UnitsNet;

namespace CamPower;

/// <summary>One value held against one limit: the verdict and the numbers that were compared.</summary>
/// <remarks>The room that owns a fact judges it, and every reader takes that judgment. A value that meets its limit to within
/// rounding keeps it. The default value is a judgment of nothing: unknown, without numbers.</remarks>
public readonly struct Judgment : IEquatable<Judgment>
{
    private readonly double _value, _limit, _policyLimit;
    private readonly Func<double, IQuantity>? _quantity;

    private Judgment(Verdict verdict, double value, double limit, double policyLimit, Func<double, IQuantity>? quantity, string? notStated)
    {
        Verdict = verdict;
        NotStated = notStated;
        _value = value;
        _limit = limit;
        _policyLimit = policyLimit;
        _quantity = quantity;
    }

    /// <summary>Verdict on the value.</summary>
    public Verdict Verdict { get; }

    /// <summary>What is missing for a verdict, or <see langword="null"/> where the verdict is known.</summary>
    public string? NotStated { get; }

    /// <summary>The value, or <see langword="null"/> where it is not known.</summary>
    public IQuantity? Value => QuantityOf(_value);

    /// <summary>The limit that must be kept, or <see langword="null"/> where it is not known or nothing bounds the value.</summary>
    public IQuantity? Limit => QuantityOf(_limit);

    /// <summary>The limit with the margin that the policy asks: the limit itself where no policy asks for more.</summary>
    public IQuantity? PolicyLimit => QuantityOf(_policyLimit);

    internal bool IsViolated => Verdict == Verdict.Violated;

    internal bool IsThin => Verdict == Verdict.ThinMargin;

    /// <summary>Whether two judgments compare the same numbers with the same verdict.</summary>
    public static bool operator ==(Judgment left, Judgment right) => left.Equals(right);

    /// <summary>Whether two judgments differ.</summary>
    public static bool operator !=(Judgment left, Judgment right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Judgment other) => Verdict == other.Verdict && _value.Equals(other._value) && _limit.Equals(other._limit)
        && _policyLimit.Equals(other._policyLimit) && string.Equals(NotStated, other.NotStated, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Judgment other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (Verdict, _value, _limit, _policyLimit).GetHashCode();

    /// <summary>The verdict with its numbers, in invariant culture; never throws.</summary>
    public override string ToString() => NotStated is not null ? $"{Verdict}: not stated: {NotStated}"
        : _quantity is null ? Verdict.ToString()
        : FormattableString.Invariant($"{Verdict}: {_value:G6} against {_limit:G6}, policy {_policyLimit:G6}");

    /// <summary>Judges a value that may be at most its limit; <paramref name="policyLimit"/> lies at or under the limit.</summary>
    internal static Judgment AtMost(double value, double limit, double policyLimit, Func<double, IQuantity> quantity) =>
        new(VerdictOf(Limits.IsAbove(value, limit), Limits.IsAbove(value, policyLimit)), value, limit, policyLimit, quantity,
            notStated: null);

    /// <summary>Judges a value that must be at least its limit; <paramref name="policyLimit"/> lies at or over the limit.</summary>
    internal static Judgment AtLeast(double value, double limit, double policyLimit, Func<double, IQuantity> quantity) =>
        new(VerdictOf(Limits.IsBelow(value, limit), Limits.IsBelow(value, policyLimit)), value, limit, policyLimit, quantity,
            notStated: null);

    /// <summary>A fact that cannot be judged, and what would have to be stated for it.</summary>
    internal static Judgment Unknown(string notStated) => new(Verdict.Unknown, 0, 0, 0, quantity: null, notStated);

    private static Verdict VerdictOf(bool breaks, bool isThin) => breaks ? Verdict.Violated : isThin ? Verdict.ThinMargin : Verdict.Holds;

    // Where nothing bounds the value there is no limit to show.
    private IQuantity? QuantityOf(double value) => double.IsInfinity(value) ? null : _quantity?.Invoke(value);
}
