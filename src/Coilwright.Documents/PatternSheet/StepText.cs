using Coilwright.Core.Making;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>A step of stringing in words, with its key letters in rings.</summary>
internal static class StepText
{
    /// <summary>The step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="letter">The key letter of a kind, by its index in the piece's list of beads.</param>
    /// <param name="language">The language.</param>
    public static RichText Of(StringingStep step, Func<int, string> letter, Language language)
    {
        var words = language.Sheet;
        var beads = string.Join(words.RunJoin, step.Parts.Select(Part));
        var group = step.Group is { } name ? KeyedText.Own(name) : null;
        return KeyedText.Rich(language.Sentence(group is null ? words.String : step.Times > 1 ? words.StringGroupTimes : words.StringGroup,
            ("group", group), ("times", step.Times), ("beads", beads)));

        string Part(StepPart part)
        {
            var runs = string.Join(words.RunJoin, part.Runs.Select(r => language.Fill(words.Run, ("count", r.Count), ("key", KeyedText.Mark(letter(r.Kind))))));
            return part.Times == 1 ? runs : language.Fill(words.Repeat, ("times", part.Times), ("beads", runs));
        }
    }
}
