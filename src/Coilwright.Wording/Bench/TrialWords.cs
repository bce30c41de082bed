namespace Coilwright.Wording;

/// <summary>The page of a piece's trial log, and a trial's photo beside the rows.</summary>
public sealed record TrialWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Writing one down: heading.</summary>
    public required string WriteDown { get; init; }

    /// <summary>The box for what was tried.</summary>
    public required string Tried { get; init; }

    /// <summary>What is kept beside the line.</summary>
    public required string TriedHint { get; init; }

    /// <summary>Chooses a photo that is there.</summary>
    public required string ChoosePhoto { get; init; }

    /// <summary>Takes one with the camera.</summary>
    public required string TakePhoto { get; init; }

    /// <summary>Which kinds are taken: {max}.</summary>
    public required string PhotoHint { get; init; }

    /// <summary>The photo is being read.</summary>
    public required string Reading { get; init; }

    /// <summary>The photo that will be kept: {file}, {mb} MB.</summary>
    public required string PhotoChosen { get; init; }

    /// <summary>Leaves the photo out.</summary>
    public required string WithoutPhoto { get; init; }

    /// <summary>Keeps the entry.</summary>
    public required string Keep { get; init; }

    /// <summary>The entries: heading.</summary>
    public required string Entries { get; init; }

    /// <summary>There is none.</summary>
    public required string None { get; init; }

    /// <summary>The state that was tried, and when: {state}, {date}.</summary>
    public required string TriedAs { get; init; }

    /// <summary>The photo of an entry, as read aloud: {tried}.</summary>
    public required string PhotoOf { get; init; }

    /// <summary>The box for why it was dropped.</summary>
    public required string DroppedBecause { get; init; }

    /// <summary>Keeps the reason.</summary>
    public required string KeepReason { get; init; }

    /// <summary>The reason is kept.</summary>
    public required string ReasonKept { get; init; }

    /// <summary>Lays the photo beside the rows.</summary>
    public required string LayBeside { get; init; }

    /// <summary>Takes an entry out of the log.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Asks whether that is meant.</summary>
    public required string TakeOutSure { get; init; }

    /// <summary>It is.</summary>
    public required string TakeOutYes { get; init; }

    /// <summary>It is not.</summary>
    public required string TakeOutNo { get; init; }

    /// <summary>What she asked for could not be kept; the page still has it.</summary>
    public required string NotKept { get; init; }

    /// <summary>The entry or the state is not there any more.</summary>
    public required string Gone { get; init; }

    /// <summary>Chooses a photo to lie beside the rows.</summary>
    public required string BesideRows { get; init; }

    /// <summary>None.</summary>
    public required string NoneBeside { get; init; }

    /// <summary>Puts it away.</summary>
    public required string PutPhotoAway { get; init; }
}
