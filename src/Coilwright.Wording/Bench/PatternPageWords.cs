namespace Coilwright.Wording;

/// <summary>The page where a maker writes her pattern. Names in braces are filled in.</summary>
public sealed record PatternPageWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>What stands at the head of the pattern and after its steps: heading.</summary>
    public required string About { get; init; }

    /// <summary>A few words at the head.</summary>
    public required string Introduction { get; init; }

    /// <summary>What it asks of the hands.</summary>
    public required string Level { get; init; }

    /// <summary>It is not said.</summary>
    public required string LevelNone { get; init; }

    /// <summary>For a first piece.</summary>
    public required string LevelBeginner { get; init; }

    /// <summary>For someone who has strung a few.</summary>
    public required string LevelIntermediate { get; init; }

    /// <summary>For practised hands.</summary>
    public required string LevelAdvanced { get; init; }

    /// <summary>How long it takes, minutes.</summary>
    public required string Minutes { get; init; }

    /// <summary>What one must know how to do, one to a line.</summary>
    public required string Techniques { get; init; }

    /// <summary>How the piece is looked after.</summary>
    public required string Care { get; init; }

    /// <summary>What others may do with the pattern.</summary>
    public required string Usage { get; init; }

    /// <summary>Who designed it.</summary>
    public required string By { get; init; }

    /// <summary>Leaves a step without words of her own.</summary>
    public required string Leave { get; init; }

    /// <summary>Something was typed and not kept yet.</summary>
    public required string NotKeptYet { get; init; }

    /// <summary>The steps: heading.</summary>
    public required string Steps { get; init; }

    /// <summary>One step: {step}.</summary>
    public required string Step { get; init; }

    /// <summary>Begins her own words for a step.</summary>
    public required string WriteOwn { get; init; }

    /// <summary>The box for them: {step}.</summary>
    public required string OwnWords { get; init; }

    /// <summary>They fit the step as it is now, word for word.</summary>
    public required string StillFits { get; init; }

    /// <summary>Takes them away, so that the language says the step again.</summary>
    public required string TakeAway { get; init; }

    /// <summary>Before the sentence that her words stand instead of.</summary>
    public required string InsteadOf { get; init; }

    /// <summary>What the proof-reader found: heading.</summary>
    public required string Found { get; init; }

    /// <summary>How much it found: {marks}.</summary>
    public required string HowMany { get; init; }

    /// <summary>It found nothing.</summary>
    public required string NothingFound { get; init; }

    /// <summary>Nothing of hers is there to be read.</summary>
    public required string NothingToRead { get; init; }

    /// <summary>What it reads and what not.</summary>
    public required string ReadsWhat { get; init; }

    /// <summary>Words whose step is gone: heading.</summary>
    public required string Homeless { get; init; }

    /// <summary>Chooses a step for them.</summary>
    public required string PutTo { get; init; }

    /// <summary>A choice: {step}, {sentence}.</summary>
    public required string PutToStep { get; init; }

    /// <summary>Puts them there.</summary>
    public required string Put { get; init; }

    /// <summary>Throws them away.</summary>
    public required string ThrowAway { get; init; }

    /// <summary>Testers' notes: heading.</summary>
    public required string Testers { get; init; }

    /// <summary>There is none.</summary>
    public required string NoNotes { get; init; }

    /// <summary>The box for a note.</summary>
    public required string Note { get; init; }

    /// <summary>Who tried it.</summary>
    public required string NoteBy { get; init; }

    /// <summary>The version that was tried.</summary>
    public required string NoteVersion { get; init; }

    /// <summary>What a note is of.</summary>
    public required string NoteOf { get; init; }

    /// <summary>The whole pattern.</summary>
    public required string OfWhole { get; init; }

    /// <summary>A step that is there no more.</summary>
    public required string OfGone { get; init; }

    /// <summary>Keeps a note.</summary>
    public required string AddNote { get; init; }

    /// <summary>Whether a note is dealt with.</summary>
    public required string Settled { get; init; }

    /// <summary>Takes a note out.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Who noted it, and of which version: {by}, {version}.</summary>
    public required string NotedBy { get; init; }
}
