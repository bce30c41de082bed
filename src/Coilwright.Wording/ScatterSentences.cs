using Coilwright.Core.Arrangement;

namespace Coilwright.Wording;

/// <summary>An order without a visible repeat, in a maker's words.</summary>
public sealed class ScatterSentences(Scattered scattered, Language language)
{
    private readonly ScatterWords _words = language.Scatter;

    /// <summary>Whether a repeat shows, and what lines up; or why there is no such order.</summary>
    public IEnumerable<string> Says()
    {
        if (scattered.Why != NoScatter.None)
        {
            yield return scattered.Why switch
            {
                NoScatter.OneKind => _words.OneKind,
                NoScatter.NoneAllowed => _words.NoneAllowed,
                _ => _words.NotWritten,
            };
            yield break;
        }
        yield return scattered.Repeats!.NoneShows ? _words.NoneShows : _words.SomeShows;
        if (scattered.Before.Piece.Wishes.AnyOfLiningUp) yield return language.Sentence(_words.Against, ("after", scattered.Judged!.Loss));
        if (scattered.Before.Piece.Written is not null) yield return _words.TextAnew;
    }

    /// <summary>What was measured.</summary>
    public IEnumerable<string> Details()
    {
        if (scattered.Repeats is not { } repeats) yield break;
        yield return language.Sentence(_words.Alike, ("period", repeats.Period), ("share", repeats.Alike), ("upTo", repeats.AlikeUpTo));
        yield return language.Sentence(_words.Longest, ("beads", repeats.LongestRepeat), ("upTo", repeats.LongestRepeatUpTo));
    }
}
