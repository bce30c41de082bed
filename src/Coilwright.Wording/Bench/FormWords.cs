namespace Coilwright.Wording;

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

    /// <summary>A turned loop with a dangle in it.</summary>
    public required string Dangle { get; init; }

    /// <summary>What hangs in the loop.</summary>
    public required string DangleName { get; init; }

    /// <summary>How far it hangs down.</summary>
    public required string DangleLength { get; init; }

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
