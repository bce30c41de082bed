using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English words of the bench in the browser.</summary>
internal static class EnglishBench
{
    internal static BenchWords Make() => new()
    {
        Start = new StartWords
        {
            OpenAt = "Coilwright's bench is open at {address}",
            ToStop = "Only this machine can reach it. Ctrl+C closes it.",
            PortTaken = "Port {port} is in use. Ask for another with --port, or leave it out and a free one is taken.",
            BadOption = "\"{option}\" was not understood. There is one option: --port and a number from 0 to 65535.",
        },
        Frame = new FrameWords
        {
            SkipToContent = "Skip to the bench",
            Pages = "Pages",
            Bench = "Bench",
            Pieces = "Pieces",
            Settings = "Settings",
            Close = "Close",
            Units = "Lengths in",
            UnitsBoth = "mm and inches",
            UnitsMm = "mm",
            UnitsInches = "inches",
            Light = "Light",
            LightAsMachine = "as on this device",
            LightDay = "day",
            LightEvening = "evening",
            TextSize = "Letters",
            TextUsual = "usual",
            TextLarger = "larger",
            TextLargest = "largest",
            Language = "Language",
            NotFound = "There is nothing here",
            NotFoundWhatToDo = "This page or piece is not there. Your pieces are:",
            Broken = "Something went wrong on our side",
            BrokenWhatToDo = "Your piece is kept as you last changed it. Load the page again; if it happens again, please tell us what you did.",
            Reload = "Load again",
            Reconnecting = "Looking for the program …",
            NoAnswer = "The program does not answer",
            NoAnswerWhatToDo = "It was closed, or the machine slept. Start it again; what you did is kept.",
            TryAgain = "Try again",
            StaysHere = "Everything stays on this machine. Coilwright works with no internet and sends nothing anywhere.",
        },
        Rows = new RowsWords
        {
            Heading = "Turn by turn",
            BeadList = "Beads in the order they are strung",
            Bead = "{number}, {name}, {letter}, turn {turn}, {angleDeg:place}",
            Keys = "Tap a bead. Keys: left and right go along the wire, up and down to the turn beside; with Shift they take more in.",
            SelectionName = "Selected beads",
            NoneSelected = "No bead is selected.",
            OneSelected = "Bead {number}: {name} ({letter}), turn {turn}, {angleDeg:place}.",
            SomeSelected = "{beads} beads, {mm:length} of wire.",
            Before = "Bead before",
            After = "Bead after",
            Several = "Select several",
            Clear = "Select none",
            Larger = "Larger rows",
            Smaller = "Smaller rows",
            WholeWidth = "Whole width",
        },
        Wrist = new WristWords
        {
            Heading = "On the wrist",
            Slider = "Wrist",
            Typed = "Wrist, typed",
            TypedHint = "In millimetres or inches: 165, 6 1/2 in",
            TypedWrong = "Type a length from {min} to {max}, as 165 or 6 1/2 in.",
            Smaller = "One millimetre smaller",
            Larger = "One millimetre larger",
            Back = "Back to {mm:length}",
            Elsewhere = "The piece is made for {mm:length}; this is how it looks on another wrist.",
        },
        Readings = new ReadingsWords
        {
            Heading = "Readings",
            Beads = "Beads",
            Length = "On the wire",
            Turns = "Turns",
            Fit = "Fit",
            FitYes = "fits",
            FitNo = "does not fit",
            Focal = "Focal",
            FocalAt = "{angleDeg:place}",
            LiningUp = "Lining up",
            LiningUpWords = new Dictionary<LiningUpWord, string>
            {
                [LiningUpWord.LinesUp] = "lines up",
                [LiningUpWord.Between] = "in between",
                [LiningUpWord.Mixed] = "mixed",
                [LiningUpWord.TooLittle] = "too little to say",
            }.ToFrozenDictionary(),
            Weight = "Weight",
            Grams = "{grams} g",
            Cut = "Wire to cut",
            NotKnown = "not known",
            ShowMe = "Show me",
            BeadsOfThePiece = "Beads of the piece",
            ShowKind = "Select every {name}",
            Use = "use {count}",
            Sizes = "{alongMm:mm} along the hole, {acrossMm:mm} across",
            Cautions = "Cautions",
        },
        Order = new OrderViewWords
        {
            Heading = "Stringing order",
            View = "Shown",
            AsCards = "as cards",
            AsText = "as text",
            Between = "between",
        },
        Pieces = new PiecesWords
        {
            Heading = "Pieces",
            Search = "Find by title",
            ShowArchived = "Show what is put away",
            NoneFound = "No piece has this in its title.",
            ChangedOn = "changed {date}",
            PutAway = "put away, changed {date}",
            Copy = "Copy",
            CopyOf = "{title}, copy",
            Archive = "Put away",
            TakeOut = "Take out again",
            SaveFile = "Save as a file",
            BringIn = "Bring in a piece from a file",
            BringInHint = "A file whose name ends in .piece.json",
            NotBroughtIn = "{file} was not brought in:",
            AtPlace = "Line {line}, column {column}:",
            NotKept = "That could not be kept.",
        },
    };
}
