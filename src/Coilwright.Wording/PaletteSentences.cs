using Coilwright.Core.Palettes;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>How the colours of a piece go together, in a maker's words.</summary>
public sealed class PaletteSentences(PaletteReport report, Language language)
{
    private readonly PaletteWords _words = language.Palette;

    /// <summary>The piece.</summary>
    public string For() => language.Fill(_words.For, ("title", report.Reckoned.Piece.Title));

    /// <summary>How it is in all: how strongly the colours change.</summary>
    public IEnumerable<string> InAll()
    {
        if (report.AlongMean is { } along) yield return language.Fill(_words.AlongMean, ("difference", language.Number(along, 0)));
        if (report.AcrossMean is { } across) yield return language.Fill(_words.AcrossMean, ("difference", language.Number(across, 0)));
        foreach (var kind in report.WithoutColour) yield return language.Sentence(_words.WithoutColour, ("name", Name(kind)));
    }

    /// <summary>What is lost at a sight, the worst first; a sentence that nothing is, when it is so.</summary>
    public IEnumerable<string> Lost(Sight sight)
    {
        var any = false;
        foreach (var pair in report.Lost(sight))
        {
            any = true;
            var seen = pair.At(sight);
            yield return language.Sentence(seen.Told == Telling.Vanishes ? _words.Vanishes : _words.Unsure, ("one", Name(pair.One.Kind)), ("other", Name(pair.Other.Kind)), ("where", Where(pair)),
                ("difference", Down(seen.Most)), ("least", Down(seen.Least)), ("most", Down(seen.Most)));
        }
        if (!any) yield return !report.Pairs.Any(p => p.AreBeside) ? _words.NoneBeside : sight == Sight.Full ? _words.AllApart : _words.NothingMore;
    }

    /// <summary>What to do; null when nothing is lost to anybody.</summary>
    public string? WhatToDo() => Enum.GetValues<Sight>().Any(s => report.Lost(s).Any()) ? _words.WhatToDo : null;

    /// <summary>What the figures mean and where they come from.</summary>
    public string Sources() => language.Fill(_words.Sources, ("vanish", language.Number(report.Reckoned.Choices.VanishDifference, 1)), ("grey", language.Number(report.Reckoned.Choices.GreyStep, 1)));

    /// <summary>A kind with its letter.</summary>
    public string Name(KindCount kind) => language.Fill(_words.Kind, ("letter", kind.Letter), ("name", kind.Bead.Name));

    // Never up to the border that it lies below.
    private string Down(double difference) => language.Number(Math.Floor(difference * 10) / 10, 1);

    private string Where(PalettePair pair) => string.Join(", ", new[]
    {
        pair.Places > 0 ? language.Fill(_words.Along, ("places", pair.Places)) : null,
        pair.OverMm >= 0.5 ? language.Fill(_words.Across, ("mm", language.ShortLength(pair.OverMm))) : null,
    }.Where(w => w is not null));
}
