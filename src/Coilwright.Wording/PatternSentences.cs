using Coilwright.Core.Findings;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>The steps of a written pattern in sentences.</summary>
/// <remarks>Counts stand before key letters, as in "3 A"; a reader who knows only that can string the piece. Where the maker wrote words of her own they take the place of a
/// step's sentence (<see cref="StepTexts"/>); that is for whoever shows both.</remarks>
/// <param name="reckoned">The piece.</param>
/// <param name="language">The language.</param>
/// <param name="mark">Marks a key letter where it stands in a sentence; null leaves it as it is.</param>
/// <param name="own">Cleans the maker's own words of such marks; null leaves them as they are.</param>
public sealed class PatternSentences(Reckoned reckoned, Language language, Func<string, string>? mark = null, Func<string, string>? own = null)
{
    private readonly SheetWords _words = language.Sheet;
    private readonly Dictionary<int, string> _letters = reckoned.Counts.ToDictionary(k => k.KindIndex, k => k.Letter);

    /// <summary>What to do.</summary>
    public string Of(PatternStep step) => step.Strung is { } strung ? Of(strung) : OfWire(step.Action);

    /// <summary>What to do with the wire and its ends.</summary>
    public string OfWire(StepAction action)
    {
        var (wire, ends, wireMm) = (reckoned.Wire, reckoned.Piece.Ends, reckoned.Piece.Wire.WireMm);
        return action switch
        {
            StepAction.CutWire => language.Fill(_words.CutWire, ("loops", wire.LoopsToCut), ("cutMm", wire.CutMm)),
            StepAction.FirstEnd => language.Fill(Of(ends.Start.Finish, _words.TurnFirstLoop, _words.GlueFirstCap, _words.HangFirstDangle),
                ("insideMm", ends.Start.InsideMm), ("depthMm", ends.Start.InsideMm), ("usesMm", ends.Start.WireUsedMm(wireMm)), ("dangle", Named(ends.Start))),
            StepAction.LastEnd => language.Fill(Of(ends.Finish.Finish, _words.TurnLastLoop, _words.GlueLastCap, _words.HangLastDangle),
                ("insideMm", ends.Finish.InsideMm), ("depthMm", ends.Finish.InsideMm), ("trimMm", wire.TrimFinishMm), ("dangle", Named(ends.Finish))),
            StepAction.TryOn => _words.TryOn,
            _ => throw new ArgumentOutOfRangeException(nameof(action), action, "Beads are strung by a step that says which."),
        };
    }

    private static string Of(EndFinish finish, string loop, string cap, string dangle) => finish switch
    {
        EndFinish.TurnedLoop => loop,
        EndFinish.GluedCap => cap,
        _ => dangle,
    };

    private string? Named(WireEnd end) => end.Dangle is { } dangle && own is not null ? own(dangle) : end.Dangle;

    /// <summary>What to string.</summary>
    public string Of(StringingStep step)
    {
        var beads = string.Join(_words.RunJoin, step.Parts.Select(Part));
        var group = step.Group is null || own is null ? step.Group : own(step.Group);
        return language.Sentence(group is null ? _words.String : step.Times > 1 ? _words.StringGroupTimes : _words.StringGroup,
            ("group", group), ("times", step.Times), ("beads", beads));
    }

    /// <summary>What the length to cut is made of: said after it, more quietly.</summary>
    public string CutMadeOf() => language.Fill(_words.CutMadeOf, ("beadedMm", reckoned.Wire.BeadedMm), ("endsMm", reckoned.Wire.EndsMm),
        ("otherMm", reckoned.Wire.GripMm + reckoned.Wire.SpareMm));

    /// <summary>What to check after a step; empty where no bead was strung yet.</summary>
    public string Check(PatternStep step) => step.BeadsSoFar == 0 ? ""
        : language.Fill(step.BeadsSoFar == reckoned.Piece.Order.Count ? language.Pattern.InAll : language.Pattern.SoFar, ("beads", step.BeadsSoFar), ("alongMm", step.LengthSoFarMm));

    /// <summary>A caution.</summary>
    public string Of(Caution caution) => caution switch
    {
        Caution.Cutters => language.Cautions.Cutters,
        Caution.FlyingPieces => language.Cautions.FlyingPieces,
        Caution.Springs => language.Cautions.Springs,
        Caution.SharpEnds => language.Cautions.SharpEnds,
        Caution.AdultCuts => language.Cautions.AdultCuts,
        Caution.SmallParts => language.Cautions.SmallParts,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What does not agree between a text of hers and the piece.</summary>
    public string Of(ProofMark found) => language.Fill(language.Pattern.Slips[found.Slip], ("said", found.Said), ("known", found.Known));

    private string Part(StepPart part) => part switch
    {
        RunPart run => Run(run),
        RepeatPart repeat => language.Fill(_words.Repeat, ("times", repeat.Times), ("beads", string.Join(_words.RunJoin, repeat.Parts.Select(Part)))),
        BetweenPart between => language.Fill(_words.Between, ("each", Run(new RunPart(between.Kind, between.Count))),
            ("between", string.Join(_words.BetweenJoin, between.Between.Select(Run)))),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private string Run(RunPart run) => language.Fill(_words.Run, ("count", run.Count), ("key", mark is null ? _letters[run.Kind] : mark(_letters[run.Kind])));
}
