using System.Collections.Frozen;
using Coilwright.Core.Palettes;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PaletteWords"/>.</summary>
internal static class EnglishPalette
{
    internal static PaletteWords Make() => new()
    {
        Verb = "Look at a piece's colours: which beads vanish beside each other, to every eye, to colour-blind eyes and in a print in greys.",
        Heading = "Palette",
        Lead = "Which beads are told apart by their colour where they lie beside each other, along the wire and on neighbouring turns. Size and shape may tell them apart all the same.",
        For = "The colours of {title}",
        Sights = new Dictionary<Sight, string>
        {
            [Sight.Full] = "To most eyes",
            [Sight.Protan] = "To an eye blind to red (protan)",
            [Sight.Deutan] = "To an eye blind to green (deutan)",
            [Sight.Tritan] = "To an eye blind to blue (tritan)",
            [Sight.Grey] = "Printed in greys",
        }.ToFrozenDictionary(),
        Explained = new Dictionary<Sight, string>
        {
            [Sight.Full] = "As the colours were written down.",
            [Sight.Protan] = "About one man in a hundred. Reds are dark, and near to browns and greens.",
            [Sight.Deutan] = "About one man in a hundred, and five more in a milder form. Reds, greens and browns come near to each other.",
            [Sight.Tritan] = "Rare, in women as often as in men. Blues come near to greens, yellows to greys and pinks.",
            [Sight.Grey] = "As a sheet in greys shows them, and as they are in a dim light.",
        }.ToFrozenDictionary(),
        AllApart = "Every bead stands out from its neighbours.",
        NothingMore = "Nothing is lost that others see.",
        NoneBeside = "No two colours lie beside each other.",
        Vanishes = "{one} and {other} vanish beside each other: {where} (difference {difference}).",
        Unsure = "{one} and {other} may vanish beside each other: {where} (difference {least} to {most}, by the way it is simulated).",
        Along = "in {places} {places:place|places} along the wire",
        Across = "{mm} on neighbouring turns",
        Kind = "{letter} {name}",
        WithoutColour = "{name} has no colour written down, so it is left out.",
        AlongMean = "Along the wire one colour differs from the next by {difference} on average; 0 is the same, 100 is black on white.",
        AcrossMean = "From turn to turn it is {difference}.",
        WhatToDo = "To keep them apart: make one of them lighter or darker, which every eye sees and every print shows; or let a third bead stand between them.",
        KindsHeading = "Beads and their colours",
        Letter = "Key",
        Bead = "Bead",
        Colours = "Colours",
        Lightness = "How light",
        SourcesHeading = "How this is worked out",
        Sources = "Differences are CIEDE2000; below {vanish} one bead vanishes beside another. In greys it is how light they are, 0 to 100, and the border is {grey}. Both borders are our choice. What colour-blind eyes see is simulated as published by Brettel, Viénot and Mollon (1997), Viénot, Brettel and Mollon (1999; red and green) and Machado, Oliveira and Fernandes (2009); pictures by the first. A bead of several colours counts as their mean. A screen colour is not a bead: hold them side by side before you decide.",
    };
}
