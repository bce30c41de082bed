using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>The pages of the bead tray, and the words by which its lists are understood.</summary>
public sealed record TrayPageWords
{
    /// <summary>The page.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>What is looked for.</summary>
    public required string Search { get; init; }

    /// <summary>Shape.</summary>
    public required string Shape { get; init; }

    /// <summary>Colour.</summary>
    public required string Family { get; init; }

    /// <summary>Material.</summary>
    public required string Material { get; init; }

    /// <summary>Finish.</summary>
    public required string Coating { get; init; }

    /// <summary>Drawer.</summary>
    public required string Drawer { get; init; }

    /// <summary>Shortest length.</summary>
    public required string From { get; init; }

    /// <summary>Longest length.</summary>
    public required string To { get; init; }

    /// <summary>No matter which.</summary>
    public required string Any { get; init; }

    /// <summary>One of a choice with how many there are: {name}, {kinds}.</summary>
    public required string Choice { get; init; }

    /// <summary>Looks for everything again.</summary>
    public required string Clear { get; init; }

    /// <summary>How many there are: {kinds}.</summary>
    public required string Found { get; init; }

    /// <summary>There is none yet.</summary>
    public required string NoneYet { get; init; }

    /// <summary>None is like that.</summary>
    public required string NoneFound { get; init; }

    /// <summary>Heading of the list.</summary>
    public required string List { get; init; }

    /// <summary>Shows more of them: {more}.</summary>
    public required string More { get; init; }

    /// <summary>In a drawer: {drawer}.</summary>
    public required string InDrawer { get; init; }

    /// <summary>Saves it as values.</summary>
    public required string SaveCsv { get; init; }

    /// <summary>Saves it as a workbook.</summary>
    public required string SaveXlsx { get; init; }

    /// <summary>Saves labels of the drawers.</summary>
    public required string SaveLabels { get; init; }

    /// <summary>Which sheet of labels: {grid}.</summary>
    public required string LabelsHint { get; init; }

    /// <summary>Title of the labels.</summary>
    public required string LabelsTitle { get; init; }

    /// <summary>A label in words: {drawer}, {kinds}.</summary>
    public required string LabelAlt { get; init; }

    /// <summary>On a label, kinds that have no room: {more}.</summary>
    public required string LabelMore { get; init; }

    /// <summary>Why there are no labels.</summary>
    public required string NoLabels { get; init; }

    /// <summary>Heading: beads of a piece.</summary>
    public required string FromPiece { get; init; }

    /// <summary>What is taken.</summary>
    public required string FromPieceHint { get; init; }

    /// <summary>Which piece.</summary>
    public required string Piece { get; init; }

    /// <summary>Takes them in.</summary>
    public required string TakeIn { get; init; }

    /// <summary>They are in: {added}, {there}.</summary>
    public required string TakenIn { get; init; }

    /// <summary>Heading: a list from a file.</summary>
    public required string BringIn { get; init; }

    /// <summary>What a list is.</summary>
    public required string BringInHint { get; init; }

    /// <summary>Chooses the file.</summary>
    public required string Choose { get; init; }

    /// <summary>Which column is what.</summary>
    public required string ColumnsHeading { get; init; }

    /// <summary>A column without a head: {number}.</summary>
    public required string ColumnHead { get; init; }

    /// <summary>It is left out.</summary>
    public required string LeaveOut { get; init; }

    /// <summary>What stands in it: {text}.</summary>
    public required string Example { get; init; }

    /// <summary>What would come of it: {adds}, {changes}, {same}, {wrong}.</summary>
    public required string Would { get; init; }

    /// <summary>Something is wrong.</summary>
    public required string Mend { get; init; }

    /// <summary>Heading of what would come of it.</summary>
    public required string Preview { get; init; }

    /// <summary>A line: {line}.</summary>
    public required string Line { get; init; }

    /// <summary>A line that adds.</summary>
    public required string Adds { get; init; }

    /// <summary>A line that changes.</summary>
    public required string Changes { get; init; }

    /// <summary>A line that changes nothing.</summary>
    public required string Same { get; init; }

    /// <summary>A line that is wrong.</summary>
    public required string Wrong { get; init; }

    /// <summary>A change: {column}, {before}, {after}.</summary>
    public required string Change { get; init; }

    /// <summary>Nothing stands there.</summary>
    public required string Empty { get; init; }

    /// <summary>Lines that are not shown: {more}.</summary>
    public required string AndMore { get; init; }

    /// <summary>Takes all of it in.</summary>
    public required string TakeList { get; init; }

    /// <summary>Leaves it.</summary>
    public required string Leave { get; init; }

    /// <summary>It is in: {adds}, {changes}.</summary>
    public required string Took { get; init; }

    /// <summary>The list cannot be used: {file}.</summary>
    public required string NotRead { get; init; }

    /// <summary>It was not done.</summary>
    public required string NotDone { get; init; }

    /// <summary>Somebody else changed a kind meanwhile: {kind}.</summary>
    public required string Behind { get; init; }

    /// <summary>The page of a kind, for its title: {kind}.</summary>
    public required string Kind { get; init; }

    /// <summary>Back to the tray.</summary>
    public required string Back { get; init; }

    /// <summary>There is no such kind.</summary>
    public required string NoKind { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Other names.</summary>
    public required string Aliases { get; init; }

    /// <summary>Colours.</summary>
    public required string Colours { get; init; }

    /// <summary>Keeps it.</summary>
    public required string Keep { get; init; }

    /// <summary>It is kept.</summary>
    public required string Kept { get; init; }

    /// <summary>Takes it out.</summary>
    public required string TakeOut { get; init; }

    /// <summary>What that means.</summary>
    public required string TakeOutHint { get; init; }

    /// <summary>The choice of the tray among beads to begin with.</summary>
    public required string OfMyTray { get; init; }

    /// <summary>Colour families, by key.</summary>
    public required FrozenDictionary<string, string> Families { get; init; }

    /// <summary>What each column is called, by its own name.</summary>
    public required FrozenDictionary<string, string> Columns { get; init; }

    /// <summary>Other heads that lists have for a column, with bars between them, by its own name.</summary>
    public required FrozenDictionary<string, string> OtherHeads { get; init; }

    /// <summary>Other words that lists and makers have for a shape, with bars between them, by its own name.</summary>
    public required FrozenDictionary<string, string> OtherShapes { get; init; }
}
