using System.Collections.Frozen;
using Coilwright.Core.Colour;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PhotoColourWords"/>.</summary>
internal static class EnglishBenchPhotoColour
{
    internal static PhotoColourWords Make() => new()
    {
        Heading = "Colour from a photo",
        Lead = "Tap a bead in your own photo to read its colour. The photo stays in this browser: only the few dots in the ring are looked at, and nothing of it is kept.",
        Choose = "Choose a photo",
        ChooseHint = "JPEG, PNG, WebP or GIF. Best by a window, without flash, with a sheet of white paper beside the beads.",
        Takes = "A tap takes",
        TakesBead = "the colour of a bead",
        TakesWhite = "white paper",
        Ring = "Ring",
        Small = "small",
        Middling = "middling",
        Large = "large",
        Photo = "Your photo",
        Keys = "Tap where you want it read. By keys: the arrow keys move the ring, with Shift by single dots; Enter takes what is in it; plus and minus change its size.",
        Take = "Take what is in the ring",
        Opened = "Opened: {wide} by {high} dots.",
        SampledDown = "It is large, so it is read at {wide} by {high} dots.",
        Moves = "It is a moving picture; its first one is shown.",
        CalledOtherwise = "By its name it is of another kind, but it is {kind} and was read as that.",
        Refused = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["no-picture"] = "That file is no picture that can be read here. Choose a JPEG, PNG, WebP or GIF.",
            ["heic"] = "That is a HEIC picture, which browsers do not open. Save it as JPEG: on a telephone, by sending it to yourself or by its camera settings.",
            ["too-large"] = "That picture has {megapixels} million dots, and at most {most} million are read. Make it smaller, or cut out the part with the beads.",
            ["broken"] = "That picture cannot be opened: something in it is broken. Copy it from the camera once more.",
            ["cut-short"] = "That picture is cut short: its end is missing. Copy it from the camera once more.",
            ["inks"] = "That picture is in printing inks (CMYK), of which the colours on a screen are anyone's guess. Save it in RGB.",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Taken = "{colour}, lightness {l}, green to red {a}, blue to yellow {b}",
        Counted = "{counted} of {pixels} dots counted; glare and shadow were left out.",
        Mixed = "The dots in the ring differ much: it may lie on an edge or on a pattern.",
        OffScreen = "No screen shows it as strong as it is; the nearest that one does was taken.",
        AsTaken = "Colours are as the camera balanced them. With white paper in the photo they come out truer: choose white paper above and tap it.",
        Balanced = "Colours are balanced by the paper.",
        Unbalance = "As the camera had it",
        WhiteTroubles = new Dictionary<WhiteTrouble, string>
        {
            [WhiteTrouble.TooBright] = "The paper is so bright there that its tint is lost. Tap where it is a little darker.",
            [WhiteTrouble.TooDark] = "It is too dark there to tell the light by it. Tap where the paper is lit.",
            [WhiteTrouble.NotWhite] = "That is hardly white paper. Tap a plain white place.",
        }.ToFrozenDictionary(),
        How = "How this is worked out",
        HowText = "Of the dots in the ring the darkest quarter and the lightest third are left out, and those at the camera's end; the rest is averaged as light. By white paper, light is brought to daylight (D65) by Bradford's matrix, and made as strong as if the paper sent back 88 of 100. Lab is CIE Lab under D65.",
        PutOn = "Bead",
        MakeColour = "Make it its colour",
        AddColour = "Add it to its colours",
        Put = "{name} has it now.",
    };
}
