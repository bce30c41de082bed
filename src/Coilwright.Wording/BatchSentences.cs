using Coilwright.Core.Batches;

namespace Coilwright.Wording;

/// <summary>Making several alike in a maker's words.</summary>
public sealed class BatchSentences(BatchPlan plan, Language language)
{
    private readonly BatchWords _words = language.Batch;

    /// <summary>How many of what.</summary>
    public string Heading() => language.Fill(_words.Heading, ("count", plan.Count), ("name", plan.Reckoned.Piece.Title));

    /// <summary>What to look at first.</summary>
    public IEnumerable<string> Mind() => plan.Reckoned.Fit.Fits ? [] : [_words.SaysStop];

    /// <summary>How the trays are filled.</summary>
    public IEnumerable<string> Trays()
    {
        if (!plan.Wells.IsEmpty)
        {
            yield return language.Sentence(_words.Trays, ("trays", plan.TraysEach), ("wells", plan.Tray.Wells), ("count", plan.Count));
            yield return plan.IsByTurn ? _words.ByTurn : _words.ByKind;
        }
        if (!plan.Beside.IsEmpty)
            yield return language.Sentence(_words.Beside, ("beads", string.Join(", ", plan.Beside.Select(k => language.Fill(_words.BesideOf, ("count", k.Count), ("bead", $"{k.Bead.Name} ({k.Letter})"))))));
    }

    /// <summary>The wire.</summary>
    public string Wire() => language.Sentence(_words.Wire, ("count", plan.Count), ("loops", plan.Reckoned.Wire.LoopsToCut), ("cutMm", plan.Reckoned.Wire.CutMm), ("allMm", plan.CutMm));

    /// <summary>How long each step takes; nothing where none was timed.</summary>
    public IEnumerable<string> Steps() => plan.Steps.Select(s => language.Fill(s.Step.PerBatch ? _words.Once : _words.Each,
        ("name", s.Step.Name), ("each", Minutes(s.Step.Minutes)), ("minutes", Minutes(s.Minutes))));

    /// <summary>How long it takes in all, or why that is not told.</summary>
    public string Time() => plan.Steps.IsEmpty ? _words.NoTimes : language.Sentence(_words.TimeInAll, ("minutes", Minutes(plan.Minutes)), ("each", Minutes(plan.MinutesEach)));

    /// <summary>The cautions of the work.</summary>
    public IEnumerable<string> Cautions() => language.Cautions.OfMemoryWire.Append(language.Cautions.SmallParts);

    /// <summary>A whole number.</summary>
    public string Count(int count) => language.Number(count, 0);

    private string Minutes(decimal minutes) => language.Number((double)minutes, 1);
}
