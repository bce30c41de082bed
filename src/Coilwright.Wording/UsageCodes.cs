namespace Coilwright.Wording;

/// <summary>Codes of what can be wrong with how the program was called. They are said like any <see cref="Core.Faults.Fault"/>.</summary>
public static class UsageCodes
{
    /// <summary>A verb that the program does not have; {nearest}, {known}.</summary>
    public const string VerbUnknown = "usage.verb-unknown";

    /// <summary>An option that the verb does not have; {nearest}, {known}.</summary>
    public const string OptionUnknown = "usage.option-unknown";

    /// <summary>A word too many.</summary>
    public const string WordTooMany = "usage.word-too-many";

    /// <summary>No piece was named; {verb}.</summary>
    public const string PieceMissing = "usage.piece-missing";

    /// <summary>An option stands without its value.</summary>
    public const string OptionEmpty = "usage.option-empty";

    /// <summary>An option stands twice.</summary>
    public const string OptionTwice = "usage.option-twice";

    /// <summary>An option that must be there is missing; {verb}.</summary>
    public const string OptionMissing = "usage.option-missing";

    /// <summary>A length is not a number of mm nor a length with its unit.</summary>
    public const string LengthForm = "usage.length-form";

    /// <summary>A length has a comma for a decimal point; {meant}.</summary>
    public const string LengthComma = "usage.length-comma";

    /// <summary>A length is out of bounds; {min}, {max} mm.</summary>
    public const string LengthBounds = "usage.length-bounds";

    /// <summary>A seed is not a whole number from 0 on.</summary>
    public const string SeedForm = "usage.seed-form";

    /// <summary>An effort is not a whole number within its bounds; {max}.</summary>
    public const string EffortForm = "usage.effort-form";

    /// <summary>A time is not a number of seconds within its bounds; {max}.</summary>
    public const string SecondsForm = "usage.seconds-form";

    /// <summary>A wrist stands twice among wrists.</summary>
    public const string WristTwice = "usage.wrist-twice";

    /// <summary>There are more wrists than can be; {max}.</summary>
    public const string WristsTooMany = "usage.wrists-too-many";

    /// <summary>A count is not a whole number within its bounds; {max}.</summary>
    public const string WholeForm = "usage.whole-form";

    /// <summary>An amount is not a number with a decimal point within its bounds; {max}.</summary>
    public const string AmountForm = "usage.amount-form";

    /// <summary>A share is not a number with a decimal point within its bounds; {min}, {max}.</summary>
    public const string ShareForm = "usage.share-form";

    /// <summary>A day is not year, month and day with dashes between them, from the year {min} to {max}.</summary>
    public const string DayForm = "usage.day-form";

    /// <summary>A time of day is not hours and minutes with a colon between them.</summary>
    public const string TimeForm = "usage.time-form";

    /// <summary>A break is not a time and minutes with a plus between them; {max}.</summary>
    public const string BreakForm = "usage.break-form";

    /// <summary>A shared tool is not one of the tools, {known}, and how many share it; {max}.</summary>
    public const string SharedToolForm = "usage.shared-tool-form";

    /// <summary>Minutes of a step are not one of the steps, {known}, and a number; {max}.</summary>
    public const string StepMinutesForm = "usage.step-minutes-form";

    /// <summary>How many times as long something takes is not a number within its bounds; {max}.</summary>
    public const string FactorForm = "usage.factor-form";

    /// <summary>A swap is not two beads' names with a sign of equality between them.</summary>
    public const string SwapForm = "usage.swap-form";

    /// <summary>How many of a piece is not a piece's name and a whole number, or a whole number alone; {max}.</summary>
    public const string CountForm = "usage.count-form";

    /// <summary>Spares are not a bead's name and beads in each piece or a percentage, or one of those alone; {max}.</summary>
    public const string SparesForm = "usage.spares-form";

    /// <summary>How many are at home is not a bead's name and a whole number; {max}.</summary>
    public const string HomeForm = "usage.home-form";

    /// <summary>A drawing is to be written under a name that ends as a picture of another kind does.</summary>
    public const string DrawingKind = "usage.drawing-kind";

    /// <summary>A table is to be written to a file whose name ends neither with .csv nor with .xlsx.</summary>
    public const string TableKind = "usage.table-kind";

    /// <summary>More lengths are to be cut than are planned at once; {max}.</summary>
    public const string TooManyPieces = "usage.too-many-pieces";

    /// <summary>Packs of the pieces' own wire are asked for, and the pieces {first} and {second} are made on different wire.</summary>
    public const string WiresDiffer = "usage.wires-differ";

    /// <summary>Two options stand together that say the same in two ways; {other}.</summary>
    public const string NotBoth = "usage.not-both";

    /// <summary>An option stands that says how another is meant, and the other does not; {other}.</summary>
    public const string OnlyWith = "usage.only-with";

    /// <summary>A piece is to be written as it sits, and no rest was found; {why}.</summary>
    public const string NotSettled = "usage.not-settled";

    /// <summary>A sheet of labels is not two to four pairs of numbers with an x between them.</summary>
    public const string LabelsForm = "usage.labels-form";

    /// <summary>A size of pictures is not width x height in pixels within what is drawn; {min}, {max}, {all}.</summary>
    public const string PixelsForm = "usage.pixels-form";

    /// <summary>More sizes of pictures are asked for than a pack holds; {max}.</summary>
    public const string TooManySizes = "usage.too-many-sizes";

    /// <summary>Something else about the call, in the parser's own words.</summary>
    public const string CallOther = "usage.other";

    /// <summary>Something went wrong in the program itself; {detail}.</summary>
    public const string Internal = "internal";
}
