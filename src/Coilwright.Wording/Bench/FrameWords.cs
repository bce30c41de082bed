namespace Coilwright.Wording;

/// <summary>Head and foot of every page, and its settings.</summary>
public sealed record FrameWords
{
    /// <summary>Leads past the head to what the page is about.</summary>
    public required string SkipToContent { get; init; }

    /// <summary>The list of pages, as read aloud.</summary>
    public required string Pages { get; init; }

    /// <summary>The page of one piece.</summary>
    public required string Bench { get; init; }

    /// <summary>The page of all pieces.</summary>
    public required string Pieces { get; init; }

    /// <summary>Opens the pages of making: stock, shopping, wire, kits.</summary>
    public required string Workshop { get; init; }

    /// <summary>Opens the pages of selling: prices.</summary>
    public required string Selling { get; init; }

    /// <summary>Of a piece's pages those that look at it.</summary>
    public required string PieceLook { get; init; }

    /// <summary>Of a piece's pages those that help to make it.</summary>
    public required string PieceMake { get; init; }

    /// <summary>Of a piece's pages those that help to sell it.</summary>
    public required string PieceSell { get; init; }

    /// <summary>Opens the settings.</summary>
    public required string Settings { get; init; }

    /// <summary>Closes what was opened.</summary>
    public required string Close { get; init; }

    /// <summary>Which units lengths are shown in.</summary>
    public required string Units { get; init; }

    /// <summary>Millimetres and inches.</summary>
    public required string UnitsBoth { get; init; }

    /// <summary>Millimetres alone.</summary>
    public required string UnitsMm { get; init; }

    /// <summary>Inches alone.</summary>
    public required string UnitsInches { get; init; }

    /// <summary>Light or dark.</summary>
    public required string Light { get; init; }

    /// <summary>As the machine has it.</summary>
    public required string LightAsMachine { get; init; }

    /// <summary>Dark ink on light paper.</summary>
    public required string LightDay { get; init; }

    /// <summary>Light ink on a dark ground.</summary>
    public required string LightEvening { get; init; }

    /// <summary>How large letters are.</summary>
    public required string TextSize { get; init; }

    /// <summary>As designed.</summary>
    public required string TextUsual { get; init; }

    /// <summary>Larger.</summary>
    public required string TextLarger { get; init; }

    /// <summary>Largest.</summary>
    public required string TextLargest { get; init; }

    /// <summary>Language of the words.</summary>
    public required string Language { get; init; }

    /// <summary>There is no such page or piece: heading.</summary>
    public required string NotFound { get; init; }

    /// <summary>What to do then.</summary>
    public required string NotFoundWhatToDo { get; init; }

    /// <summary>Something of ours broke: heading.</summary>
    public required string Broken { get; init; }

    /// <summary>What to do then.</summary>
    public required string BrokenWhatToDo { get; init; }

    /// <summary>Loads the page anew.</summary>
    public required string Reload { get; init; }

    /// <summary>The page has lost the program and looks for it.</summary>
    public required string Reconnecting { get; init; }

    /// <summary>The program does not answer.</summary>
    public required string NoAnswer { get; init; }

    /// <summary>What to do then.</summary>
    public required string NoAnswerWhatToDo { get; init; }

    /// <summary>Tries again.</summary>
    public required string TryAgain { get; init; }

    /// <summary>Nothing leaves the machine: foot of every page.</summary>
    public required string StaysHere { get; init; }

    /// <summary>The same where her pieces are in a database: {database}.</summary>
    public required string StaysInDatabase { get; init; }
}
