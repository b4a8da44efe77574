using System;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>What a cause predicts for a reading that was taken, and how well the reading fits.</summary>
/// <remarks>Immutable.</remarks>
public sealed class ReadingPrediction
{
    private readonly string _words;

    internal ReadingPrediction(MeterReading reading, IQuantity? predicted, double sigmas, double designedSigmas)
    {
        Reading = reading;
        Predicted = predicted;
        OffBy = sigmas;
        SpeaksFor = Math.Abs(designedSigmas) > 3 && Math.Abs(sigmas) < Math.Abs(designedSigmas) / 2;
        SpeaksAgainst = Math.Abs(sigmas) > 3 && !SpeaksFor;
        _words = SpeaksFor ? "for it" : SpeaksAgainst ? "against it" : "neutral";
    }

    /// <summary>The reading.</summary>
    public MeterReading Reading { get; }

    /// <summary>What the cause predicts; null where it predicts a resistance over the range of a meter.</summary>
    public IQuantity? Predicted { get; }

    /// <summary>By how many standard uncertainties the reading is above the prediction. [1]</summary>
    public double OffBy { get; }

    /// <summary>Whether it speaks for the cause: the site as designed does not explain it, and the cause does far better.</summary>
    public bool SpeaksFor { get; }

    /// <summary>Whether it speaks against the cause: it is more than three standard uncertainties off.</summary>
    public bool SpeaksAgainst { get; }

    /// <summary>Reading, prediction and what it speaks for, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Reading}; predicted {NumberOf(Predicted)}: {_words}";

    internal static string NumberOf(IQuantity? value) => value switch
    {
        null => "over range",
        ElectricPotential volts => FormattableString.Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => FormattableString.Invariant($"{amperes.Amperes:0.000} A"),
        ElectricResistance ohms => FormattableString.Invariant($"{ohms.Ohms:G3} Ω"),
        _ => value.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
    };
}
