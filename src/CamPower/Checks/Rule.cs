using System;
using System.Collections.Generic;
using CamPower.Checks;
using UnitsNet;

namespace CamPower;

/// <summary>One thing to check on a solved site. Derive from it to add a rule of your own.</summary>
/// <remarks>A rule holds no state that changes: it may be asked by many threads at once.</remarks>
/// <example>
/// <code>
/// public sealed class NoMotors() : Rule("no-motors", Severity.Note, "Motors are not allowed here.", "Choose a fixed camera.", Sources.CommonPractice)
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
    /// <param name="id">Identifier in words: small letters, digits and hyphens.</param>
    /// <param name="severity">What a person should do about its findings.</param>
    /// <param name="purpose">What it looks for, in a sentence.</param>
    /// <param name="remedy">What to do about its findings.</param>
    /// <param name="source">Where its limit comes from.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or the identifier holds anything else than small letters, digits and hyphens.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is none of those there are.</exception>
    protected Rule(string id, Severity severity, string purpose, string remedy, Citation source)
    {
        Id = Identifier.Of(id, nameof(id));
        Severity = Require.Known(severity, nameof(severity));
        Purpose = Require.Name(purpose, nameof(purpose));
        Remedy = Require.Name(remedy, nameof(remedy));
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>Identifier in words.</summary>
    public string Id { get; }

    /// <summary>What a person should do about its findings.</summary>
    public Severity Severity { get; }

    /// <summary>What it looks for.</summary>
    public string Purpose { get; }

    /// <summary>What to do about its findings.</summary>
    public string Remedy { get; }

    /// <summary>Where its limit comes from.</summary>
    public Citation Source { get; }

    /// <summary>The limit that the rule itself sets, or null where the site's own data set it.</summary>
    public virtual IQuantity? Limit => null;

    /// <summary>Whether it speaks of what is not stated: its findings show nothing to be wrong, and nothing to be safe.</summary>
    public virtual bool IsAboutWhatIsNotStated => false;

    /// <summary>Identifiers of the rules that speak for this one: of a thing about which one of them found something, this one says nothing.</summary>
    /// <remarks>A <see cref="RuleSet"/> applies it among the rules that are in it. A rule that is asked by itself says all that it finds.</remarks>
    public virtual IReadOnlyList<string> StandsBackFor => [];

    /// <summary>Identifiers of the rules that speak for this one in a condition: about a thing in a condition in which one of them found something about
    /// it, this one says nothing; in the other conditions it does.</summary>
    /// <remarks>A <see cref="RuleSet"/> applies it among the rules that are in it. A finding in no single condition meets all of them.</remarks>
    public virtual IReadOnlyList<string> StandsBackInConditionsOf => [];

    /// <summary>All that the rule finds, one finding for each fact about a thing.</summary>
    /// <param name="evidence">What it looks at.</param>
    public abstract IEnumerable<Finding> Check(Evidence evidence);

    /// <summary>The identifier; never throws.</summary>
    public override string ToString() => Id;

    /// <summary>Makes a finding of this rule.</summary>
    /// <param name="about">The thing that it is about.</param>
    /// <param name="message">What was found, in a sentence. Not empty.</param>
    /// <param name="measured">The value found, or null.</param>
    /// <param name="limit">The value allowed, or null.</param>
    /// <param name="condition">The condition in which it was found, or null.</param>
    /// <param name="severity">How pressing it is; null for the severity of the rule.</param>
    /// <param name="remedy">What to do about it; null for the remedy of the rule.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is none of those there are.</exception>
    protected internal Finding Find(Subject about, string message, IQuantity? measured = null, IQuantity? limit = null, Condition? condition = null,
        Severity? severity = null, string? remedy = null) => new(this, about, message, measured, limit, condition, severity, remedy);

    /// <summary>One finding of a fact about a thing that was found in several conditions: the worst, or the next one where the rule stands back in that condition.</summary>
    /// <param name="worstFirst">A finding for each condition in which the fact was found, the worst first.</param>
    /// <returns>The finding, or none where there are none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="worstFirst"/> is null.</exception>
    protected internal static IEnumerable<Finding> Worst(IEnumerable<Finding> worstFirst) =>
        Finding.Worst(Require.NotNull(worstFirst, nameof(worstFirst))) is Finding worst ? [worst] : [];
}
