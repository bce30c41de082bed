namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="BeadFormWords"/>.</summary>
internal static class EnglishBenchBeadForm
{
    internal static BeadFormWords Make() => new()
    {
        Heading = "A bead",
        TrueSize = "true size",
        DrawnOnceSized = "It is drawn as soon as its size is known.",
        Name = "Name",
        Shape = "Shape",
        Label = "Size on the label",
        Which = "Along the hole runs",
        AlongIs = "{mm:fine}",
        LengthBy = "Length along the hole",
        ByOne = "one bead",
        ByRow = "a row, measured",
        ByRange = "from, to",
        Along = "Along the hole",
        RowCount = "Beads in the row",
        RowTotal = "The row takes",
        Shortest = "Shortest",
        Longest = "Longest",
        Across = "Across",
        Thickness = "Thickness, if another",
        Hole = "Hole",
        EndFace = "Flat at each end",
        HoleOffset = "Hole off the middle",
        Wall = "Wall, if hollow",
        CurveRadius = "Radius of its curve",
        Matched = "its curve is the coil's",
        Colour = "Colour",
        Material = "Material",
        MaterialUnknown = "not known",
        Role = "Role",
        Add = "Add to the piece",
        Keep = "Keep",
        Cancel = "Leave it",
        Change = "Change",
        AnotherColour = "Another colour",
        ReplaceEverywhere = "Replace {name} everywhere by",
        ReplaceBy = "Replace everywhere by",
        NotStrung = "not strung",
        PutBack = "Put back",
        Another = "Another bead",
    };
}
