namespace Coilwright.Wording.EnglishWords;

/// <summary>English words of the command line.</summary>
internal static class EnglishHelp
{
    internal static HelpWords Make() => new()
    {
        Program = "A bench tool for beaded pieces on memory wire: write the stringing order down once, and everything else is worked out from it.",
        Reckon = "Work out every reading of a piece: does it fit, where does each bead land, what lines up, how much wire to cut.",
        Sheet = "Write the pattern sheet of a piece, to print and bead from: a PDF, a web page, and each of its drawings as SVG.",
        Arrange = "Look for a better order under the piece's wishes, smallest change first, and write the best to a file.",
        ArrangeOut = "The piece file to write the best order to; it is replaced if it is there.",
        Sizes = "Make one design for several wrists: what each takes, what changes from the base size, and the beads for all.",
        Wrists = "The wrists, up to {max}, with commas between: 145,160,175. Without it: those the piece is to be good on, else adults'.",
        SizesOut = "A folder to write each size into as a piece of its own; it is made if it is not there. Files of the same name are replaced.",
        Effort = "How much to look, as a whole number; the same one and the same seed give the same answer anywhere. Without it: {usual}.",
        Scatter = "String the same beads and groups in an order without a visible repeat, another one for each seed, and write it to a file.",
        ScatterOut = "The piece file to write the order to; it is replaced if it is there.",
        Seconds = "Look so many seconds at most instead; what was found till then is taken.",
        SheetOut = "The folder to write into; it is made if it is not there. Files of the same name are replaced.",
        SheetPaper = "The paper: a4 or letter. Without it: a4.",
        SheetSizes = "Print too what the design takes on other wrists: 145,160,175, or usual for those it is to be good on, else adults'. Takes a little longer.",
        SheetLargePrint = "Set everything half as large again. Strips stay at true size.",
        SheetGreyscale = "Print in greys.",
        SheetWritten = "Written: {file}",
        Piece = "The piece file, as my-bracelet.piece.json.",
        Wrist = "Another wrist than the piece's, in mm (165) or with its unit (\"6 1/2in\").",
        WornCircumference = "The worn circumference of the wire as you measured it, in mm or with its unit; it overrules the reckoning.",
        Seed = "A whole number that the chance orders start from; the same one gives the same answer. Without it: 1.",
        Json = "Print everything as JSON, and nothing else.",
        Draw = "Draw the turns as straight rows into this SVG file as well.",
        Language = "The language of the sentences: {codes}. Without it: en. Numbers in files and options stay as they are.",
        Help = "Show this help.",
        Version = "Show the version.",
        UsageHeading = "How to call it:",
        VerbsHeading = "What it does:",
        OptionsHeading = "Options:",
        OptionsWord = "options",
        ExamplePiece = "my-bracelet.piece.json",
        ExampleDrawing = "my-bracelet.svg",
        ExampleBetter = "my-bracelet-better.piece.json",
        ExampleFolder = "sheets",
        ExamplesHeading = "Examples:",
        ExitCodesHeading = "Exit codes:",
        ExitCodes =
        [
            (0, "done"),
            (1, "done, and it cannot be made or worn like this, does not come out, or loses money"),
            (2, "something is wrong with the call, the piece file or a path"),
            (3, "something went wrong inside the program"),
            (130, "stopped by you (Ctrl-C)"),
        ],
        More = "More about one of them: {command}",
        FaultPlace = "{file}{?line:, line {line}}{?column:, column {column}}{?field:, {field}}",
        ToMend = "To mend it:",
        FurtherFaults = "and {more} more {more:fault|faults}.",
        Drawn = "The turn rows are drawn in {file}.",
    };
}
