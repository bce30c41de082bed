using Coilwright.Core.Arrangement;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>An order without a visible repeat as JSON, <c>coilwright.scatter/1</c>: described in docs/scatter.schema.json, and promised to outsiders.</summary>
internal static class ScatterJson
{
    public const string Schema = "coilwright.scatter/1";

    /// <summary>The page.</summary>
    /// <param name="scattered">What came of it.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where it was written; null when there was nothing to write.</param>
    public static byte[] Of(Scattered scattered, ulong seed, Language language, string? file)
    {
        using var json = new JsonPage(language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", scattered.Before.Piece.Title);
            json.Whole("seed", seed);
            json.Text("whyNone", scattered.Why == NoScatter.None ? null : Words.Of(scattered.Why));
            Repeats(json, "before", scattered.BeforeRepeats);
            if (scattered.Repeats is { } repeats) Repeats(json, "after", repeats);
            else json.Text("after", null);
            json.Ratio("againstWish", scattered.Before.Piece.Wishes.AnyOfLiningUp ? scattered.Judged?.Loss : null);
            json.Text("order", scattered.Edit?.Text);
            using (json.Array("says"))
                foreach (var sentence in new ScatterSentences(scattered, language).Says()) json.Item(sentence);
            json.Text("file", file);
        }
        return json.ToBytes();
    }

    private static void Repeats(JsonPage json, string name, RepeatMeasure repeats)
    {
        using var scope = json.Object(name);
        json.YesOrNo("noneShows", repeats.NoneShows);
        json.Whole("things", repeats.Count);
        json.Ratio("chance", repeats.Chance);
        json.Whole("period", repeats.Period);
        json.Ratio("alike", repeats.Alike);
        json.Ratio("alikeUpTo", repeats.AlikeUpTo);
        json.Whole("longestRepeat", repeats.LongestRepeat);
        json.Whole("longestRepeatUpTo", repeats.LongestRepeatUpTo);
        json.Ratio("excess", repeats.Excess);
    }
}
