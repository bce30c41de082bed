using System.Collections.Frozen;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PublishWords"/>.</summary>
internal static class EnglishPublish
{
    internal static PublishWords Make() => new()
    {
        Verb = "Put everything to sell a pattern with into one zip: its documents as PDF and web page, pictures, a model to turn, a key card, the materials as a table, a listing, and a list of it all.",
        OutOption = "The zip to write. A file of that name is replaced.",
        PixelsOption = "A size of the pictures, width x height in pixels; may stand several times. Without it: {usual}.",
        WhiteOption = "Draw the pictures on white instead of warm paper.",
        ExamplePack = "my-bracelet.zip",
        Written = "Written: {file}, with {files} {files:file|files}",
        OnPaper = "The {name}, to print on {paper}{?large:, in large print}.",
        OnScreen = "The {name}, as a web page that stands alone.",
        Letter = "US Letter",
        Documents = new Dictionary<string, string> { ["sheet"] = "pattern sheet", ["pattern"] = "written pattern" }.ToFrozenDictionary(StringComparer.Ordinal),
        Materials = "What goes in and what to buy, as a table.",
        Model = "The piece as worn, as a model in space to turn (glTF 2.0, metres, +Y up).",
        ModelSettled = "The piece as it sits on the wrist, as a model in space to turn (glTF 2.0, metres, +Y up).",
        ListingText = "The text to sell it with.",
        SaveAsItSits = "The model as it sits on the wrist",
        Save = "Save the publish pack",
        SaveNote = "One zip: documents, pictures, a model to turn, key card, materials, listing.",
    };
}
