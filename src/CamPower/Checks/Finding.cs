using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>One result of a rule about one thing: the value found, the value allowed, and what to do.</summary>
/// <remarks>Immutable. A <see cref="Rule"/> makes it.</remarks>
public sealed class Finding
{
    internal Finding(Rule rule, Subject about, string message, IQuantity? measured, IQuantity? limit, Condition? condition,
        Severity? severity, string? remedy)
    {
        Rule = rule.Id;
        Title = rule.Title;
        Severity = Require.Known(severity ?? rule.Severity, nameof(severity));
        Remedy = Require.Name(remedy ?? rule.Remedy, nameof(remedy));
        Source = rule.Source;
        IsNotStated = rule.IsAboutWhatIsNotStated;
        About = Require.NotNull(about, nameof(about));
        Message = Require.Name(message, nameof(message));
        Measured = measured;
        Limit = limit;
        Condition = condition;
        Elsewhere = [];
    }

    private Finding(Finding worst, IReadOnlyList<Finding> elsewhere)
    {
        Rule = worst.Rule;
        Title = worst.Title;
        Severity = worst.Severity;
        Remedy = worst.Remedy;
        Source = worst.Source;
        IsNotStated = worst.IsNotStated;
        About = worst.About;
        Message = worst.Message;
        Measured = worst.Measured;
        Limit = worst.Limit;
        Condition = worst.Condition;
        Elsewhere = elsewhere;
    }

    /// <summary>Identifier of the rule. Callers may match on it.</summary>
    public string Rule { get; }

    /// <summary>What it is called, in a few words: <see cref="CamPower.Rule.Title"/> of its rule. The wording may change.</summary>
    public string Title { get; }

    /// <summary>Its severity: that of its rule, unless this finding is less or more severe.</summary>
    public Severity Severity { get; }

    /// <summary>Whether it says that data is not stated. It then shows neither that something is wrong nor that it is safe.</summary>
    public bool IsNotStated { get; }

    /// <summary>The thing that it is about.</summary>
    public Subject About { get; }

    /// <summary>What was found, in sentences. The wording may change.</summary>
    public string Message { get; }

    /// <summary>The value found, or null where there is no number.</summary>
    public IQuantity? Measured { get; }

    /// <summary>The value allowed, of the same quantity as <see cref="Measured"/>, or null.</summary>
    public IQuantity? Limit { get; }

    /// <summary>The condition in which it was found, or null where it holds in all conditions.</summary>
    public Condition? Condition { get; }

    /// <summary>What to do.</summary>
    public string Remedy { get; }

    /// <summary>Source of the limit.</summary>
    public Citation Source { get; }

    /// <summary>The same fact about the same thing in other conditions, worst first. One of them is given where another rule replaces this
    /// one.</summary>
    internal IReadOnlyList<Finding> Elsewhere { get; }

    /// <summary>Severity, subject and message in one line; never throws.</summary>
    public override string ToString() => $"{Severity}: {About}: {Message}";

    /// <summary>Makes one finding of a fact that was found in several conditions, worst first; null where there are none.</summary>
    internal static Finding? Worst(IEnumerable<Finding> worstFirst)
    {
        List<Finding> all = [.. worstFirst];
        return all.Count < 2 ? all.FirstOrDefault() : new Finding(all[0], all.GetRange(1, all.Count - 1));
    }
}
