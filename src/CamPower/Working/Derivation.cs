using System.Collections.Generic;
using System.Linq;
using System.Text;

namespace CamPower;

/// <summary>Calculation of an answer: ordered steps, each with its formula, its numbers and its source.</summary>
/// <remarks>Immutable. Made only when asked for.</remarks>
/// <example><code>Console.WriteLine(run.Feed(camera, from, conductorAt).Explain().ToMarkdown());</code></example>
public sealed class Derivation
{
    internal Derivation(string title, IEnumerable<DerivationStep> steps, string conclusion)
    {
        Title = title;
        Steps = steps.ToList().AsReadOnly();
        Conclusion = conclusion;
    }

    /// <summary>What is worked out.</summary>
    public string Title { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<DerivationStep> Steps { get; }

    /// <summary>What the steps say, in words.</summary>
    public string Conclusion { get; }

    /// <summary>The steps as plain text, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Title).Append('\n');
        int number = 0;
        foreach (DerivationStep step in Steps)
        {
            number++;
            text.Append('\n').Append(number).Append(". ").Append(step.Meaning).Append('\n')
                .Append("   ").Append(step.Symbol).Append(" = ").Append(step.Formula).Append('\n')
                .Append("   ").Append(step.Symbol).Append(" = ").Append(step.Substitution).Append('\n')
                .Append("   ").Append(step.Symbol).Append(" = ").Append(step.ValueText)
                .Append("   [").Append(step.Source).Append("]\n");
        }

        return text.Append('\n').Append(Conclusion).Append('\n').ToString();
    }

    /// <summary>The steps as Markdown with each equation between lines of two dollar signs, in the invariant culture; never
    /// throws.</summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder("### ").Append(Title).Append('\n');
        int number = 0;
        foreach (DerivationStep step in Steps)
        {
            number++;
            text.Append('\n').Append(number).Append(". **").Append(step.Meaning).Append("**\n\n")
                .Append("   $$\n   ").Append(step.Latex).Append("\n   $$\n\n")
                .Append("   `").Append(step.Symbol).Append(" = ").Append(step.Substitution).Append("` = **").Append(step.ValueText)
                .Append("**  \n   *").Append(step.Source).Append("*\n");
        }

        return text.Append('\n').Append(Conclusion).Append('\n').ToString();
    }
}
