using Coilwright.Core.Pieces;

namespace Coilwright.Wording;

/// <summary>A rule of the order in a maker's words.</summary>
/// <param name="language">The language.</param>
/// <param name="nameOf">The name for people of a bead's id, or of a group.</param>
public sealed class RuleSentences(Language language, Func<string, string> nameOf)
{
    private readonly IdeaWords _words = language.Ideas;

    /// <summary>What the rule asks, without a full stop.</summary>
    public string Of(OrderRule rule) => rule switch
    {
        OrderRule.LongestRun run => language.Fill(_words.RuleRun, ("name", nameOf(run.Name)), ("most", run.Most)),
        OrderRule.InAnyRow row => language.Fill(_words.RuleRow, ("names", string.Join(", ", row.Names.Select(nameOf))), ("upTo", row.UpTo), ("ofAny", row.OfAny)),
        OrderRule.Apart apart => language.Fill(_words.RuleApart, ("name", nameOf(apart.Name)), ("beside", nameOf(apart.Beside))),
        OrderRule.Together together => language.Fill(_words.RuleTogether, ("name", nameOf(together.Name)), ("beside", nameOf(together.Beside))),
        OrderRule.StartsWith starts => language.Fill(_words.RuleStart, ("name", nameOf(starts.Name))),
        _ => language.Fill(_words.RuleEnd, ("name", nameOf(rule.Named[0]))),
    };
}
