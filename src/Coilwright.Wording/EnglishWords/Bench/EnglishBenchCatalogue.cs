using System.Collections.Frozen;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CatalogueWords"/>.</summary>
internal static class EnglishBenchCatalogue
{
    internal static CatalogueWords Make() => new()
    {
        Open = "From the catalogue",
        Heading = "Beads to take",
        Search = "Look for a bead",
        From = "From",
        OfTheTrade = "the trade's usual kinds",
        OfMyPieces = "my other pieces",
        Hint = "Tap one. Its form opens filled in: give it your colour, put right what differs, and add it.",
        None = "No bead goes by these words.",
        More = "And {more} more: look for one by another word.",
        Name = "{kind} {label}",
        InPiece = "in “{piece}”",
        Close = "Close the catalogue",
        Kinds = new Dictionary<string, string>
        {
            ["round"] = "Round",
            ["rondelle"] = "Rondelle",
            ["faceted-rondelle"] = "Faceted rondelle",
            ["bicone"] = "Bicone",
            ["cube"] = "Cube",
            ["oval"] = "Oval",
            ["barrel"] = "Barrel",
            ["coin"] = "Coin",
            ["heishi"] = "Heishi",
            ["spacer-disc"] = "Spacer disc",
            ["tube"] = "Tube",
            ["curved-tube"] = "Curved tube",
            ["chip"] = "Chips",
            ["nugget"] = "Nugget",
            ["pressed-drop"] = "Pressed drop",
            ["seed-bead"] = "Seed bead",
            ["cylinder-seed"] = "Cylinder bead",
            ["bugle"] = "Bugle",
        }.ToFrozenDictionary(),
        OtherWords = new Dictionary<string, string>
        {
            ["round"] = "ball, sphere, bead",
            ["rondelle"] = "wheel, abacus",
            ["faceted-rondelle"] = "cut rondelle, crystal, wheel",
            ["bicone"] = "double cone, crystal",
            ["cube"] = "square, block",
            ["oval"] = "rice, olive",
            ["barrel"] = "keg, bulge",
            ["coin"] = "disc, flat round",
            ["heishi"] = "disc, shell disc",
            ["spacer-disc"] = "washer, ring, metal",
            ["tube"] = "pipe, connector",
            ["curved-tube"] = "noodle, pipe, connector",
            ["chip"] = "stone, gravel, gemstone",
            ["nugget"] = "stone, pebble, gemstone",
            ["pressed-drop"] = "teardrop, briolette",
            ["seed-bead"] = "rocaille, small glass",
            ["cylinder-seed"] = "straight seed, small glass",
            ["bugle"] = "long seed, glass pipe",
        }.ToFrozenDictionary(),
    };
}
