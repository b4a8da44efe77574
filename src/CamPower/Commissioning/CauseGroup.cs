using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>Causes at one place that the readings cannot tell apart, and how likely it is that one of them is there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class CauseGroup
{
    private const int MostNamed = 3;

    private readonly Func<ReadingPoint, IQuantity?> _predict;

    internal CauseGroup(GroupKey key, IReadOnlyList<Cause> causes, string place, double probability, bool isDanger,
        IReadOnlyList<ReadingPrediction> predictions, Func<ReadingPoint, IQuantity?> predict)
    {
        Key = key;
        Causes = causes;
        Place = place;
        Share = probability;
        IsDanger = isDanger;
        Predictions = predictions;
        _predict = predict;
    }

    /// <summary>The causes, the likeliest first.</summary>
    public IReadOnlyList<Cause> Causes { get; }

    /// <summary>The causes in words, the three likeliest: "wrong conductor, run longer than drawn or poor joint".</summary>
    public string Name
    {
        get
        {
            List<string> names = [.. Causes.Take(MostNamed).Select(CauseWords.NameOf)];
            if (Causes.Count > MostNamed) names.Add(FormattableString.Invariant($"{Causes.Count - MostNamed} more"));
            return names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} or {names[names.Count - 1]}";
        }
    }

    /// <summary>Where: "yard box output 3, run to slipway head"; empty where nothing is wrong.</summary>
    public string Place { get; }

    /// <summary>How likely it is that one of the causes is there. [1]</summary>
    /// <remarks>Two faults may be there at once: the shares of the groups may then add up to more than 1.</remarks>
    public Ratio Probability => Ratio.FromDecimalFractions(Share);

    /// <summary>Whether a cause that may start a fire or hurt someone is among them, and more than 1 % likely.</summary>
    public bool IsDanger { get; }

    /// <summary>What the group predicts for each reading that was taken.</summary>
    public IReadOnlyList<ReadingPrediction> Predictions { get; }

    /// <summary>What to do about the likeliest cause.</summary>
    public string ToDo => CauseWords.ToDo(Causes[0]);

    /// <summary>What keeps that safe.</summary>
    public string Safety => IsDanger ? CauseWords.Danger : CauseWords.Safety(Causes[0]);

    /// <summary>What would tell its causes apart; empty where it has one.</summary>
    public string Separates => CauseWords.Separates([.. Causes]);

    /// <summary>What its likeliest explanation predicts for any reading of the site; null for a resistance over the range of a
    /// meter.</summary>
    /// <param name="point">The point.</param>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="ArgumentException">The diagnosis has no use for that point.</exception>
    public IQuantity? Predict(ReadingPoint point) => _predict(Require.NotNull(point, nameof(point)));

    /// <summary>Probability, causes and place, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Share * 100:0.0} %: {Name}{(Place.Length > 0 ? ", " : "")}{Place}");

    internal GroupKey Key { get; }

    internal double Share { get; }
}
