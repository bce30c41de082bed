namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="FrameWords"/>.</summary>
internal static class EnglishBenchFrame
{
    internal static FrameWords Make() => new()
    {
        SkipToContent = "Skip to the bench",
        Pages = "Pages",
        Bench = "Bench",
        Pieces = "Pieces",
        Workshop = "Workshop",
        Selling = "Selling",
        PieceLook = "Look",
        PieceMake = "Make",
        PieceSell = "Sell",
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
        StaysInDatabase = "Your pieces are kept in the database {database}. Coilwright works with no internet and sends nothing anywhere else.",
    };
}
