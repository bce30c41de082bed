using System.Globalization;
using Coilwright.Core.Making;

namespace Coilwright.Wording;

/// <summary>A line of corrections.</summary>
/// <param name="What">What it is of: a step's number, a figure's name.</param>
/// <param name="Old">What is wrong.</param>
/// <param name="New">What is right.</param>
public sealed record Correction(string What, string Old, string New);

/// <summary>What a pattern says otherwise than an earlier version of it, in sentences. What prints the same is the same.</summary>
/// <param name="changes">The changes.</param>
/// <param name="language">The language.</param>
/// <param name="mark">Marks a key letter where it stands in a sentence; null leaves it as it is.</param>
/// <param name="own">Cleans the maker's own words of such marks; null leaves them as they are.</param>
public sealed class ErrataSentences(PatternChanges changes, Language language, Func<string, string>? mark = null, Func<string, string>? own = null)
{
    private const string None = "–";

    private readonly ErrataWords _words = language.Errata;
    private readonly PatternSentences _old = new(changes.Old, language, mark, own), _new = new(changes.New, language, mark, own);

    /// <summary>Whether there is nothing to correct.</summary>
    public bool IsEmpty => changes.Kinds.IsEmpty && !Figures().Any() && !Steps().Any() && !Checks().Any() && !IsRenamed;

    /// <summary>Whether the earlier version has another name.</summary>
    public bool IsRenamed => changes.Old.Piece.Title != changes.New.Piece.Title;

    /// <summary>Its title.</summary>
    public string Title => language.Fill(_words.Title, ("title", Own(changes.New.Piece.Title)));

    /// <summary>The earlier version's name.</summary>
    public string Renamed => language.Sentence(_words.Renamed, ("old", Own(changes.Old.Piece.Title)));

    /// <summary>What someone should know who has begun by the earlier version: a wire too short, letters that stand for another bead now.</summary>
    public IEnumerable<string> MindFirst()
    {
        var missing = changes.New.Wire.CutMm - changes.Old.Wire.CutMm;
        if (Figures().Any(f => f.What == _words.FigureNames[PatternFigure.CutMm]) && missing > 0) yield return language.Sentence(_words.WireTooShort, ("mm", missing));
        var before = changes.Old.Counts.ToDictionary(k => k.Letter, StringComparer.Ordinal);
        foreach (var kind in changes.New.Counts)
            if (before.TryGetValue(kind.Letter, out var was) && was.Bead.Id != kind.Bead.Id)
                yield return language.Fill(_words.LetterMoved, ("letter", Marked(kind.Letter)), ("old", Own(was.Bead.Name)), ("name", Own(kind.Bead.Name)));
    }

    /// <summary>Kinds of bead: the name, and letter and count before and now.</summary>
    public IEnumerable<Correction> Kinds() => changes.Kinds.Select(k => new Correction(
        Own((changes.New.Counts.FirstOrDefault(c => c.Bead.Id == k.Bead) ?? changes.Old.Counts.First(c => c.Bead.Id == k.Bead)).Bead.Name), Count(k.Old, k.OldLetter), Count(k.New, k.NewLetter)));

    /// <summary>Figures of the whole that print otherwise.</summary>
    public IEnumerable<Correction> Figures() => changes.Figures.Select(f => new Correction(_words.FigureNames[f.Figure], Figure(f.Figure, f.Old), Figure(f.Figure, f.New))).Where(f => f.Old != f.New);

    /// <summary>Steps that are said otherwise, or come at another place.</summary>
    public IEnumerable<Correction> Steps()
    {
        foreach (var step in changes.Steps)
        {
            var (old, now) = (step.Old is { } was ? Said(_old, was, step.OldWords) : _words.NotThere, step.New is { } here ? Said(_new, here, step.NewWords) : _words.LeftOut);
            if (old != now || step.IsMoved) yield return new Correction(Number(step), old, now);
        }
    }

    /// <summary>Steps whose figures to check by alone print otherwise.</summary>
    public IEnumerable<Correction> Checks() => changes.Checks.Select(c => new Correction(Number(new StepChange(c.Old, c.New) { DoesOtherwise = false, IsMoved = false }), Check(c.Old), Check(c.New))).Where(c => c.Old != c.New);

    /// <summary>Testers' notes that are dealt with.</summary>
    public IEnumerable<string> Settled() => changes.Settled.Select(t => t.By.Length == 0 ? Own(t.Note) : language.Fill(_words.NoteBy, ("note", Own(t.Note)), ("by", Own(t.By))));

    // Her own words stand in the pattern in place of the language's.
    private string Said(PatternSentences said, PatternStep step, string? words) => (words is null ? said.Of(step) : Own(words)) + (said.Check(step) is { Length: > 0 } check && step.Strung is not null ? " " + check : "");

    private string Number(StepChange step) => (step.Old?.Number, step.New?.Number) switch
    {
        ({ } old, { } now) when old != now => language.Fill(_words.MovedNumber, ("old", old), ("new", now)),
        var (old, now) => ((old ?? now)!.Value).ToString(CultureInfo.InvariantCulture),
    };

    private string Check(PatternStep step) => language.Fill(_words.Check, ("beads", step.BeadsSoFar), ("alongMm", step.LengthSoFarMm));

    private string Count(int count, string? letter) => letter is null ? None : language.Fill(language.Sheet.Run, ("count", count), ("key", Marked(letter)));

    private string Figure(PatternFigure figure, double? value) => value is not { } known ? None : figure switch
    {
        PatternFigure.TurnsWorn => language.Number(known, 1),
        PatternFigure.LoopsToCut => language.Fill(_words.Loops, ("loops", known)),
        PatternFigure.MassG => language.Fill(_words.Grams, ("grams", language.Number(known, 0))),
        PatternFigure.CutMm => language.LengthUp(known),
        PatternFigure.EndsOverlapMm when Math.Abs(known) < 0.5 => language.Fill(language.Sheet.EndsMeet),
        PatternFigure.EndsOverlapMm => language.Fill(known > 0 ? language.Sheet.EndsOverlap : language.Sheet.EndsApart, ("mm", Math.Abs(known))),
        _ => language.Length(known),
    };

    private string Marked(string letter) => mark is null ? letter : mark(letter);

    private string Own(string words) => own is null ? words : own(words);
}
