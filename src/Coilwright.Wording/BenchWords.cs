using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording;

/// <summary>Words of the bench in the browser. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record BenchWords
{
    /// <summary>What the program says where it was started.</summary>
    public required StartWords Start { get; init; }

    /// <summary>Head and foot of every page, and its settings.</summary>
    public required FrameWords Frame { get; init; }

    /// <summary>The turn rows and what is selected on them.</summary>
    public required RowsWords Rows { get; init; }

    /// <summary>The wrist that the piece is looked at on.</summary>
    public required WristWords Wrist { get; init; }

    /// <summary>The readings beside the rows.</summary>
    public required ReadingsWords Readings { get; init; }

    /// <summary>The order as cards and as text.</summary>
    public required OrderViewWords Order { get; init; }

    /// <summary>The page of all pieces.</summary>
    public required PiecesWords Pieces { get; init; }

    /// <summary>The page of a piece's pattern sheet.</summary>
    public required SheetPageWords Sheet { get; init; }

    /// <summary>What she does to the order, and what the bench says to it.</summary>
    public required EditWords Edit { get; init; }

    /// <summary>What the piece is besides its order.</summary>
    public required FormWords Form { get; init; }

    /// <summary>A bead being described.</summary>
    public required BeadFormWords BeadForm { get; init; }
}

/// <summary>What the program says where it was started.</summary>
public sealed record StartWords
{
    /// <summary>Where the bench can be opened: {address}.</summary>
    public required string OpenAt { get; init; }

    /// <summary>How it is ended.</summary>
    public required string ToStop { get; init; }

    /// <summary>The port she asked for is in use: {port}.</summary>
    public required string PortTaken { get; init; }

    /// <summary>An option was not understood: {option}.</summary>
    public required string BadOption { get; init; }
}

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
}

/// <summary>The turn rows and what is selected on them.</summary>
public sealed record RowsWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>The beads as a list to move through, as read aloud.</summary>
    public required string BeadList { get; init; }

    /// <summary>One bead as read aloud: {number}, {name}, {letter}, {turn}, {angleDeg}.</summary>
    public required string Bead { get; init; }

    /// <summary>How to move among the beads.</summary>
    public required string Keys { get; init; }

    /// <summary>What is selected and its buttons, as read aloud.</summary>
    public required string SelectionName { get; init; }

    /// <summary>Nothing is selected.</summary>
    public required string NoneSelected { get; init; }

    /// <summary>One bead is selected: {number}, {name}, {letter}, {turn}, {angleDeg}.</summary>
    public required string OneSelected { get; init; }

    /// <summary>Several are: {beads}, {mm}: the wire that they take.</summary>
    public required string SomeSelected { get; init; }

    /// <summary>Goes to the bead before.</summary>
    public required string Before { get; init; }

    /// <summary>Goes to the bead after.</summary>
    public required string After { get; init; }

    /// <summary>Whether each tap adds to what is selected.</summary>
    public required string Several { get; init; }

    /// <summary>Selects nothing.</summary>
    public required string Clear { get; init; }

    /// <summary>Draws the rows larger.</summary>
    public required string Larger { get; init; }

    /// <summary>Draws the rows smaller.</summary>
    public required string Smaller { get; init; }

    /// <summary>Draws the rows as wide as the page.</summary>
    public required string WholeWidth { get; init; }
}

/// <summary>The wrist that the piece is looked at on.</summary>
public sealed record WristWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>The slider.</summary>
    public required string Slider { get; init; }

    /// <summary>The size that can be typed.</summary>
    public required string Typed { get; init; }

    /// <summary>What can be typed there.</summary>
    public required string TypedHint { get; init; }

    /// <summary>What was typed is no length: {min}, {max} as lengths.</summary>
    public required string TypedWrong { get; init; }

    /// <summary>One millimetre smaller.</summary>
    public required string Smaller { get; init; }

    /// <summary>One millimetre larger.</summary>
    public required string Larger { get; init; }

    /// <summary>Back to the wrist the piece is made for: {mm}.</summary>
    public required string Back { get; init; }

    /// <summary>The piece is looked at on another wrist than its own: {mm}.</summary>
    public required string Elsewhere { get; init; }
}

/// <summary>The readings beside the rows.</summary>
public sealed record ReadingsWords
{
    /// <summary>Heading, as read aloud.</summary>
    public required string Heading { get; init; }

    /// <summary>How many beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Wire under the beads.</summary>
    public required string Length { get; init; }

    /// <summary>Turns when worn.</summary>
    public required string Turns { get; init; }

    /// <summary>Whether it fits: the name of the figure.</summary>
    public required string Fit { get; init; }

    /// <summary>It fits.</summary>
    public required string FitYes { get; init; }

    /// <summary>It does not.</summary>
    public required string FitNo { get; init; }

    /// <summary>Where the focal lies: the name of the figure.</summary>
    public required string Focal { get; init; }

    /// <summary>Where: {angleDeg}.</summary>
    public required string FocalAt { get; init; }

    /// <summary>How it lines up: the name of the figure.</summary>
    public required string LiningUp { get; init; }

    /// <summary>How it lines up, in a word or two.</summary>
    public required FrozenDictionary<LiningUpWord, string> LiningUpWords { get; init; }

    /// <summary>What it weighs: the name of the figure.</summary>
    public required string Weight { get; init; }

    /// <summary>Its weight: {grams}.</summary>
    public required string Grams { get; init; }

    /// <summary>Wire to cut: the name of the figure.</summary>
    public required string Cut { get; init; }

    /// <summary>A figure that is not known.</summary>
    public required string NotKnown { get; init; }

    /// <summary>Selects the beads that a notice means.</summary>
    public required string ShowMe { get; init; }

    /// <summary>The beads of the piece: heading.</summary>
    public required string BeadsOfThePiece { get; init; }

    /// <summary>Selects every bead of a kind: {name}.</summary>
    public required string ShowKind { get; init; }

    /// <summary>How many of a kind go in the piece: {count}.</summary>
    public required string Use { get; init; }

    /// <summary>A bead's sizes: {alongMm} along the hole, {acrossMm} across.</summary>
    public required string Sizes { get; init; }

    /// <summary>The cautions: heading.</summary>
    public required string Cautions { get; init; }
}

/// <summary>The order as cards and as text.</summary>
public sealed record OrderViewWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Which of the two is shown.</summary>
    public required string View { get; init; }

    /// <summary>A group to a card.</summary>
    public required string AsCards { get; init; }

    /// <summary>As it is written.</summary>
    public required string AsText { get; init; }

    /// <summary>Name of a card that holds what is strung between groups.</summary>
    public required string Between { get; init; }
}

/// <summary>The page of all pieces.</summary>
public sealed record PiecesWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Looks for a piece by its title.</summary>
    public required string Search { get; init; }

    /// <summary>Shows what was put away as well.</summary>
    public required string ShowArchived { get; init; }

    /// <summary>Nothing is found.</summary>
    public required string NoneFound { get; init; }

    /// <summary>When a piece was last changed: {date}.</summary>
    public required string ChangedOn { get; init; }

    /// <summary>The same of one that was put away: {date}.</summary>
    public required string PutAway { get; init; }

    /// <summary>Makes a copy.</summary>
    public required string Copy { get; init; }

    /// <summary>Title of a copy: {title}.</summary>
    public required string CopyOf { get; init; }

    /// <summary>Puts a piece away.</summary>
    public required string Archive { get; init; }

    /// <summary>Takes it out again.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Saves it as a file of her own.</summary>
    public required string SaveFile { get; init; }

    /// <summary>Brings in a piece from a file.</summary>
    public required string BringIn { get; init; }

    /// <summary>What kind of file.</summary>
    public required string BringInHint { get; init; }

    /// <summary>The file was not brought in: {file}.</summary>
    public required string NotBroughtIn { get; init; }

    /// <summary>A place in the file: {line}, {column}.</summary>
    public required string AtPlace { get; init; }

    /// <summary>What she asked for could not be kept.</summary>
    public required string NotKept { get; init; }
}

/// <summary>The page of a piece's pattern sheet.</summary>
public sealed record SheetPageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is, and the wrist that it is for: {wristMm}.</summary>
    public required string Lead { get; init; }

    /// <summary>Which paper.</summary>
    public required string Paper { get; init; }

    /// <summary>A4.</summary>
    public required string PaperA4 { get; init; }

    /// <summary>US letter.</summary>
    public required string PaperLetter { get; init; }

    /// <summary>How large its letters are.</summary>
    public required string Letters { get; init; }

    /// <summary>As usual.</summary>
    public required string LettersUsual { get; init; }

    /// <summary>Half as large again.</summary>
    public required string LettersLarge { get; init; }

    /// <summary>In colour or not.</summary>
    public required string Ink { get; init; }

    /// <summary>In colour.</summary>
    public required string InkColour { get; init; }

    /// <summary>In greys.</summary>
    public required string InkGrey { get; init; }

    /// <summary>Saves it for printing.</summary>
    public required string SavePdf { get; init; }

    /// <summary>Saves it as one page for a browser.</summary>
    public required string SaveHtml { get; init; }

    /// <summary>Name of the sheet in the page, as read aloud.</summary>
    public required string Look { get; init; }

    /// <summary>It is being made.</summary>
    public required string Making { get; init; }

    /// <summary>Some of it cannot be made.</summary>
    public required string NotMade { get; init; }
}

/// <summary>What she does to the order, and what the bench says to it.</summary>
public sealed record EditWords
{
    /// <summary>What can be done with what is selected, as read aloud.</summary>
    public required string Tools { get; init; }

    /// <summary>Takes the last step back.</summary>
    public required string Undo { get; init; }

    /// <summary>Takes it again.</summary>
    public required string Redo { get; init; }

    /// <summary>Takes beads off the wire.</summary>
    public required string TakeOff { get; init; }

    /// <summary>Strings them a second time.</summary>
    public required string Twice { get; init; }

    /// <summary>Strings them several times.</summary>
    public required string Repeat { get; init; }

    /// <summary>How many times in all.</summary>
    public required string Times { get; init; }

    /// <summary>Moves them one bead toward the start.</summary>
    public required string MoveBack { get; init; }

    /// <summary>Moves them one bead toward the finish.</summary>
    public required string MoveOn { get; init; }

    /// <summary>Strings them once more from their other end.</summary>
    public required string Mirror { get; init; }

    /// <summary>The same with the last one standing once in the middle.</summary>
    public required string MirrorAroundLast { get; init; }

    /// <summary>Name for a group.</summary>
    public required string GroupName { get; init; }

    /// <summary>Makes them a group of this name.</summary>
    public required string MakeGroup { get; init; }

    /// <summary>Lets the group be no group any more.</summary>
    public required string Ungroup { get; init; }

    /// <summary>Every place is changed that the same words string.</summary>
    public required string EveryPass { get; init; }

    /// <summary>What a tap on a bead of the tray does.</summary>
    public required string TapTo { get; init; }

    /// <summary>Strings it after what is selected.</summary>
    public required string After { get; init; }

    /// <summary>Strings it before.</summary>
    public required string Before { get; init; }

    /// <summary>Strings it in place of each selected bead.</summary>
    public required string Instead { get; init; }

    /// <summary>Strings it between each two.</summary>
    public required string Between { get; init; }

    /// <summary>Strings it at the end, where nothing is selected.</summary>
    public required string AtTheEnd { get; init; }

    /// <summary>Strings it at the start, where nothing is selected.</summary>
    public required string AtTheStart { get; init; }

    /// <summary>The beads and groups to string, as read aloud.</summary>
    public required string Tray { get; init; }

    /// <summary>A bead or group of the tray, as read aloud: {name}.</summary>
    public required string StringIt { get; init; }

    /// <summary>What she asked for cannot be done: heading.</summary>
    public required string Refused { get; init; }

    /// <summary>Puts a note away that she has read.</summary>
    public required string PutAway { get; init; }

    /// <summary>Steps show on the page and are not written down: {steps}.</summary>
    public required string NotWritten { get; init; }

    /// <summary>Tries to write them again.</summary>
    public required string TryAgain { get; init; }

    /// <summary>The piece went on in another window: {steps} of hers wait.</summary>
    public required string Behind { get; init; }

    /// <summary>Drops her own steps and shows the piece as it is.</summary>
    public required string TakeTheirs { get; init; }

    /// <summary>Puts her own steps after the others.</summary>
    public required string KeepMine { get; init; }

    /// <summary>The piece was changed in another window and is shown as it is now.</summary>
    public required string ChangedElsewhere { get; init; }

    /// <summary>The shelf has the piece no more.</summary>
    public required string Gone { get; init; }

    /// <summary>The order as text, as read aloud.</summary>
    public required string OrderText { get; init; }

    /// <summary>How it is written and strung.</summary>
    public required string OrderTextHint { get; init; }

    /// <summary>Strings what was typed.</summary>
    public required string StringText { get; init; }

    /// <summary>Drops what was typed.</summary>
    public required string DropText { get; init; }
}

/// <summary>What the piece is besides its order.</summary>
public sealed record FormWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Part: title and wearer.</summary>
    public required string PieceAndWearer { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>Comfort beyond the beads.</summary>
    public required string Ease { get; init; }

    /// <summary>Where the starting end lies.</summary>
    public required string Starts { get; init; }

    /// <summary>On the underside.</summary>
    public required string StartsUnderside { get; init; }

    /// <summary>On top.</summary>
    public required string StartsTop { get; init; }

    /// <summary>So that the focal is on top.</summary>
    public required string FocalOnTop { get; init; }

    /// <summary>Elsewhere: {deg}.</summary>
    public required string StartsElsewhere { get; init; }

    /// <summary>The wearer is a child.</summary>
    public required string Child { get; init; }

    /// <summary>Part: the wire.</summary>
    public required string Wire { get; init; }

    /// <summary>Thickness of the wire.</summary>
    public required string WireThickness { get; init; }

    /// <summary>How the size of the coil is known.</summary>
    public required string CoilBy { get; init; }

    /// <summary>By its inside diameter.</summary>
    public required string CoilInside { get; init; }

    /// <summary>By its diameter from wire to wire.</summary>
    public required string CoilCentre { get; init; }

    /// <summary>By one loop measured.</summary>
    public required string CoilLoop { get; init; }

    /// <summary>The diameter.</summary>
    public required string CoilDiameter { get; init; }

    /// <summary>Length of the loop.</summary>
    public required string LoopLength { get; init; }

    /// <summary>The steel.</summary>
    public required string Steel { get; init; }

    /// <summary>The steel is not known.</summary>
    public required string SteelUnknown { get; init; }

    /// <summary>Wire that is cut already.</summary>
    public required string CutAlready { get; init; }

    /// <summary>Part: the ends.</summary>
    public required string Ends { get; init; }

    /// <summary>Finish of the starting end.</summary>
    public required string AtStart { get; init; }

    /// <summary>Finish of the other end.</summary>
    public required string AtFinish { get; init; }

    /// <summary>A turned loop.</summary>
    public required string TurnedLoop { get; init; }

    /// <summary>A glued cap.</summary>
    public required string GluedCap { get; init; }

    /// <summary>Inside of the loop.</summary>
    public required string LoopInside { get; init; }

    /// <summary>Depth of the cap's hole.</summary>
    public required string CapDepth { get; init; }

    /// <summary>Wire that a practice end used.</summary>
    public required string PracticeEnd { get; init; }

    /// <summary>Wire for the pliers.</summary>
    public required string Grip { get; init; }

    /// <summary>Wire to spare.</summary>
    public required string Spare { get; init; }

    /// <summary>How far the ends lie over each other.</summary>
    public required string Overlap { get; init; }

    /// <summary>Part: what she wants.</summary>
    public required string Wishes { get; init; }

    /// <summary>Like over like.</summary>
    public required string WishLiningUp { get; init; }

    /// <summary>No wish.</summary>
    public required string WishAny { get; init; }

    /// <summary>Mixed.</summary>
    public required string WishMix { get; init; }

    /// <summary>In columns.</summary>
    public required string WishColumns { get; init; }

    /// <summary>Turns that it is designed for.</summary>
    public required string WishTurns { get; init; }

    /// <summary>Part: what she measured.</summary>
    public required string FromTheBench { get; init; }

    /// <summary>What to measure and how it is used.</summary>
    public required string FromTheBenchHint { get; init; }

    /// <summary>A row to measure: {first}, {last}.</summary>
    public required string RowOf { get; init; }

    /// <summary>No row is selected.</summary>
    public required string RowNone { get; init; }

    /// <summary>A measured row: {first}, {last}, {mm}.</summary>
    public required string MeasuredRow { get; init; }

    /// <summary>Takes a measured row out.</summary>
    public required string RemoveRow { get; init; }

    /// <summary>What was typed is no length: {min}, {max}.</summary>
    public required string NoLength { get; init; }
}

/// <summary>A bead being described, and what can be done with a kind of bead.</summary>
public sealed record BeadFormWords
{
    /// <summary>The form, as read aloud.</summary>
    public required string Heading { get; init; }

    /// <summary>The drawing has the bead's own size.</summary>
    public required string TrueSize { get; init; }

    /// <summary>Nothing to draw yet.</summary>
    public required string DrawnOnceSized { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its shape.</summary>
    public required string Shape { get; init; }

    /// <summary>A label with two numbers.</summary>
    public required string Label { get; init; }

    /// <summary>Asks which number runs along the hole.</summary>
    public required string Which { get; init; }

    /// <summary>One of the two: {mm}.</summary>
    public required string AlongIs { get; init; }

    /// <summary>How its length is known.</summary>
    public required string LengthBy { get; init; }

    /// <summary>One figure.</summary>
    public required string ByOne { get; init; }

    /// <summary>A row measured.</summary>
    public required string ByRow { get; init; }

    /// <summary>Shortest and longest.</summary>
    public required string ByRange { get; init; }

    /// <summary>The length of one.</summary>
    public required string Along { get; init; }

    /// <summary>Beads in the row.</summary>
    public required string RowCount { get; init; }

    /// <summary>Length of the row.</summary>
    public required string RowTotal { get; init; }

    /// <summary>The shortest.</summary>
    public required string Shortest { get; init; }

    /// <summary>The longest.</summary>
    public required string Longest { get; init; }

    /// <summary>Across the hole.</summary>
    public required string Across { get; init; }

    /// <summary>Away from the wrist.</summary>
    public required string Thickness { get; init; }

    /// <summary>The hole.</summary>
    public required string Hole { get; init; }

    /// <summary>The flat at each end.</summary>
    public required string EndFace { get; init; }

    /// <summary>How far the hole is off the middle.</summary>
    public required string HoleOffset { get; init; }

    /// <summary>Wall of a hollow bead.</summary>
    public required string Wall { get; init; }

    /// <summary>Radius of a curved tube.</summary>
    public required string CurveRadius { get; init; }

    /// <summary>It follows the coil.</summary>
    public required string Matched { get; init; }

    /// <summary>Its colour.</summary>
    public required string Colour { get; init; }

    /// <summary>Its material.</summary>
    public required string Material { get; init; }

    /// <summary>Not known.</summary>
    public required string MaterialUnknown { get; init; }

    /// <summary>What it is for.</summary>
    public required string Role { get; init; }

    /// <summary>Adds it to the piece.</summary>
    public required string Add { get; init; }

    /// <summary>Keeps the change.</summary>
    public required string Keep { get; init; }

    /// <summary>Leaves it.</summary>
    public required string Cancel { get; init; }

    /// <summary>Changes a bead.</summary>
    public required string Change { get; init; }

    /// <summary>A bead like it in another colour.</summary>
    public required string AnotherColour { get; init; }

    /// <summary>Replaces it everywhere, as read aloud: {name}.</summary>
    public required string ReplaceEverywhere { get; init; }

    /// <summary>Nothing chosen yet.</summary>
    public required string ReplaceBy { get; init; }

    /// <summary>It is not strung.</summary>
    public required string NotStrung { get; init; }

    /// <summary>Takes it out of the piece.</summary>
    public required string PutBack { get; init; }

    /// <summary>Adds a new bead.</summary>
    public required string Another { get; init; }
}
