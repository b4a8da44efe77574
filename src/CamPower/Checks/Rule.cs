using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using UnitsNet;

namespace CamPower;

/// <summary>One thing to check on a solved site. Derive from it to add a rule of your own.</summary>
/// <remarks>A rule holds no state that changes: many threads may ask it at once. The rules of this package are in
/// <see cref="Rules"/>.</remarks>
/// <example>
/// <code>
/// public sealed class NoMotors() : Rule("no-motors", Severity.Note,
///     "Motors are not allowed here.", "Choose a fixed camera.", Sources.CommonPractice)
/// {
///     public override IEnumerable&lt;Finding&gt; Check(Evidence evidence) =>
///         from device in evidence.Assessment.Devices
///         where device.Device.Model.Draw.HasMotor
///         select Find(Subject.Of(device.Device), "It has a motor.");
/// }
/// </code>
/// </example>
public abstract class Rule
{
    /// <summary>States a rule.</summary>
    /// <param name="id">Identifier in words: lowercase letters, digits and hyphens.</param>
    /// <param name="severity">Severity of its findings.</param>
    /// <param name="purpose">What it looks for, in a sentence. Not empty.</param>
    /// <param name="remedy">What to do about its findings. Not empty.</param>
    /// <param name="source">Source of its limit.</param>
    /// <param name="title">What its findings are called, in a few words, such as "does not start"; null for the words of the
    /// identifier.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or the identifier has characters other than lowercase letters, digits and
    /// hyphens.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is not a defined value.</exception>
    protected Rule(string id, Severity severity, string purpose, string remedy, Citation source, string? title = null)
    {
        Id = Identifier.Of(id, nameof(id));
        Title = title is null ? Id.Replace('-', ' ') : Require.Name(title, nameof(title));
        Severity = Require.Known(severity, nameof(severity));
        Purpose = Require.Name(purpose, nameof(purpose));
        Remedy = Require.Name(remedy, nameof(remedy));
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>Identifier in words, such as "undervoltage".</summary>
    public string Id { get; }

    /// <summary>What its findings are called, in a few words after the name of the part, such as "does not start".</summary>
    public string Title { get; }

    /// <summary>Severity of its findings; one finding may have another.</summary>
    public Severity Severity { get; }

    /// <summary>Purpose of the rule, in a sentence.</summary>
    public string Purpose { get; }

    /// <summary>What to do about its findings.</summary>
    public string Remedy { get; }

    /// <summary>Source of its limit.</summary>
    public Citation Source { get; }

    /// <summary>The limit that the rule itself sets; null where the data of the site sets it.</summary>
    public virtual IQuantity? Limit => null;

    /// <summary>Whether it looks for data that is not stated. Its findings show neither that something is wrong nor that it is
    /// safe.</summary>
    public virtual bool IsAboutWhatIsNotStated => false;

    /// <summary>Identifiers of rules that replace this one: where one of them has a finding about a thing, this one gives none about
    /// it.</summary>
    /// <remarks>A <see cref="RuleSet"/> applies it among its own rules. A rule that is asked alone gives all its findings.</remarks>
    public virtual IReadOnlyList<string> YieldsTo => [];

    /// <summary>Identifiers of rules that replace this one in a condition: where one of them has a finding about a thing in a condition,
    /// this one gives none about it in that condition.</summary>
    /// <remarks>A <see cref="RuleSet"/> applies it among its own rules. A finding without a condition counts in every condition.</remarks>
    public virtual IReadOnlyList<string> YieldsInConditionsOf => [];

    /// <summary>All findings of the rule, one for each fact about a thing.</summary>
    /// <param name="evidence">The solved site and the studies of it.</param>
    public abstract IEnumerable<Finding> Check(Evidence evidence);

    /// <summary>The identifier; never throws.</summary>
    public override string ToString() => Id;

    /// <summary>Makes a finding of this rule.</summary>
    /// <param name="about">The thing that it is about.</param>
    /// <param name="message">What was found: what, where, the number against the limit, the condition. Not empty.</param>
    /// <param name="measured">The value found, or null.</param>
    /// <param name="limit">The value allowed, or null.</param>
    /// <param name="condition">The condition in which it was found, or null.</param>
    /// <param name="severity">Its severity; null for the severity of the rule.</param>
    /// <param name="remedy">What to do about it; null for the remedy of the rule.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is not a defined value.</exception>
    protected internal Finding Find(Subject about, string message, IQuantity? measured = null, IQuantity? limit = null,
        Condition? condition = null, Severity? severity = null, string? remedy = null) =>
        new(this, about, message, measured, limit, condition, severity, remedy);

    /// <summary>Makes one finding of a fact that was found in several conditions: the worst condition in which no other rule replaces this
    /// one.</summary>
    /// <param name="worstFirst">A finding for each condition in which the fact was found, the worst first.</param>
    /// <returns>One finding, or none where <paramref name="worstFirst"/> is empty.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="worstFirst"/> is null.</exception>
    protected internal static IEnumerable<Finding> Worst(IEnumerable<Finding> worstFirst) =>
        Finding.Worst(Require.NotNull(worstFirst, nameof(worstFirst))) is Finding worst ? [worst] : [];

    /// <summary>One finding for each of many things of which a fact holds in some case, in the worst of them: nothing is made of those of
    /// which it does not.</summary>
    /// <param name="things">The things.</param>
    /// <param name="casesOf">The cases of a thing, such as its conditions.</param>
    /// <param name="holds">Whether the fact holds.</param>
    /// <param name="badness">The larger, the worse.</param>
    /// <param name="find">The finding.</param>
    internal static IEnumerable<Finding> WorstOf<TThing, TCase>(IEnumerable<TThing> things, Func<TThing, IReadOnlyList<TCase>> casesOf,
        Func<TCase, bool> holds, Func<TCase, double> badness, Func<TThing, TCase, Finding> find)
    {
        foreach (TThing thing in things)
        {
            IReadOnlyList<TCase> cases = casesOf(thing);
            List<TCase>? found = null;
            for (int i = 0; i < cases.Count; i++)
            {
                if (holds(cases[i])) (found ??= []).Add(cases[i]);
            }

            if (found is not null) yield return Finding.Worst(found.OrderByDescending(badness).Select(each => find(thing, each)))!;
        }
    }

    /// <summary>The worst of the cases in which a fact holds, the first of equals; null where it holds in none.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="holds">Whether the fact holds.</param>
    /// <param name="badness">The larger, the worse.</param>
    internal static TCase? WorstOf<TCase>(IReadOnlyList<TCase> cases, Func<TCase, bool> holds, Func<TCase, double> badness)
        where TCase : class
    {
        TCase? worst = null;
        double most = 0;
        for (int i = 0; i < cases.Count; i++)
        {
            if (!holds(cases[i])) continue;
            double bad = badness(cases[i]);
            if (worst is null || bad.CompareTo(most) > 0) (worst, most) = (cases[i], bad);
        }

        return worst;
    }
}
