using System.Collections.Generic;
using System.Linq;
using System.Reflection;

namespace CamPower.Tests.Repository;

/// <summary>The members of <see cref="Rules"/>: a property for each rule, a method for each rule with a limit of its own.</summary>
internal static class RuleMembers
{
    /// <summary>Each member with its rule, of a method the rule with its default limit.</summary>
    internal static IReadOnlyList<(string Member, string Text, Rule Rule)> All { get; } =
    [
        .. typeof(Rules).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Select(p => (p.Name, $"Rules.{p.Name}", (Rule)p.GetValue(null)!)),
        .. typeof(Rules).GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => !m.IsSpecialName)
            .Select(m => (m.Name, $"Rules.{m.Name}({string.Join(", ", m.GetParameters().Select(p => p.Name))})", (Rule)m
                .Invoke(null, new object?[m.GetParameters().Length])!)),
    ];

    /// <summary>How code names a rule.</summary>
    internal static string Of(Rule rule) => All.Single(m => m.Rule.Id == rule.Id).Text;
}
