namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CoverWords"/>.</summary>
internal static class EnglishBenchCover
{
    internal static CoverWords Make() => new()
    {
        Legend = "On the cover",
        Picture = "Your picture",
        Coil = "The drawn coil",
        SparedNote = "Pages that spare ink have the drawn coil: a photo is ink from edge to edge.",
        Alt = "The picture for the cover of {title}",
        TakeOff = "Take the picture off",
        TakenOff = "The picture is off, and the drawn coil is the cover.",
        PutBack = "Put it back",
        ChoosePhoto = "A photo of the finished piece",
        PhotoHint = "JPEG or PNG, at most {max}. Where and when it was taken is not kept.",
        Reading = "The photo is being read.",
        NotKept = "It is not on the cover:",
        FromStill = "Make this view the cover of the pattern",
        FromStillNote = "As you look at it now, on white, {widthPx} by {heightPx} pixels: sharp on paper.",
        IsCover = "This view is the cover of the pattern now.",
        Look = "See the pattern on paper",
        NoStill = "This browser gives no picture of the piece in space. The pattern keeps the cover that it has.",
    };
}
