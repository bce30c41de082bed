using Coilwright.Core.Findings;
using Coilwright.Core.Listings;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>A part of a listing.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Lines">Its sentences or lines.</param>
/// <param name="IsList">Whether they are lines of a list.</param>
public sealed record ListingPart(string Heading, IReadOnlyList<string> Lines, bool IsList);

/// <summary>A piece in the words of a listing: to copy whole, as a title line, and in short. Always in mm and inches, grams and ounces: a buyer may know either.</summary>
public sealed class ListingSentences(Listing listing, Language spoken)
{
    /// <summary>Signs in the short form at most: what many places to sell at show of a listing. Our choice.</summary>
    public const int MostInShort = 160;

    // What soaks up water or is scratched and dulled by cleaners. Common practice, no source.
    private static readonly string[] Delicate = ["turquoise", "pearl", "amazonite", "hematite", "balsa", "beech", "ebony", "lignum-vitae", "maple"];

    private readonly Language _language = spoken.In(LengthUnits.Both);
    private readonly ListingWords _words = spoken.Listing;

    /// <summary>What it is called.</summary>
    public string Title => listing.Reckoned.Piece.Title;

    /// <summary>The title line.</summary>
    public string TitleLine() => Fill(_words.TitleLine, ("title", Title), ("turns", Turns()), ("materials", MaterialNames()));

    /// <summary>The whole in at most <see cref="MostInShort"/> signs: the name, and as much of what follows as there is room for.</summary>
    public string Summary()
    {
        var text = Shortened(Title, MostInShort - 1) + ".";
        string?[] parts =
        [
            _language.Sentence(_words.ShortWhat, ("beads", listing.Beads), ("turns", Turns())),
            listing.Reckoned.Wrists is { FromMm: { } from, ToMm: { } to } ? _language.Sentence(_words.ShortSuits, ("fromMm", from), ("toMm", to)) : null,
            MaterialNames(), Mass(),
        ];
        foreach (var part in parts)
            if (part is { Length: > 0 } && text.Length + part.Length + 2 <= MostInShort) text += " " + Template.Capital(part) + ".";
        return text;
    }

    /// <summary>The listing, part by part; the first part's heading is the piece's name.</summary>
    public IEnumerable<ListingPart> Parts()
    {
        yield return new(Title, [_language.Sentence(_words.WhatItIs, ("beads", listing.Beads), ("turns", Turns()))], false);
        yield return new(_words.SizeHeading, [.. Sizes()], true);
        var wrists = listing.Reckoned.Wrists;
        yield return new(_words.SuitsHeading, [_language.Sentence(_language.Report.Suits.Of(wrists), ("fromMm", wrists.FromMm), ("toMm", wrists.ToMm)),
            _language.Sentence(_words.SuitsNote, ("bandMm", listing.Reckoned.Worn.BandMm))], false);
        yield return new(_words.MaterialsHeading, [.. Materials()], true);
        yield return new(_words.MetalsHeading, [.. Metals()], false);
        yield return new(_words.WearHeading, [_words.Wear], false);
        yield return new(_words.CareHeading, [.. Care()], false);
        yield return new(_words.CautionsHeading, [_language.Cautions.SmallParts, _words.SharpEnds], false);
    }

    /// <summary>The whole as plain text to copy: LF at the ends of lines, none at the end of the text.</summary>
    public string Text() => string.Join("\n\n", Parts().Select((part, i) =>
        (i == 0 ? part.Heading + "\n\n" : part.Heading + "\n") + (part.IsList ? string.Join('\n', part.Lines.Select(l => "- " + l)) : string.Join(' ', part.Lines))));

    /// <summary>What the maker should know before she lists it; nothing for the text.</summary>
    public IEnumerable<string> ForTheMaker(SmallPartsCylinder cylinder)
    {
        if (listing.SaysStop) yield return _words.SaysStop;
        if (!listing.SmallParts.IsEmpty)
            yield return _language.Sentence(_words.SmallParts, ("count", listing.SmallParts.Length), ("kinds", listing.Reckoned.Counts.Length), ("insideMm", cylinder.InsideMm));
        yield return _language.Cautions.Metals;
    }

    /// <summary>A limit on a metal.</summary>
    public string LimitOf(MetalLimit limit) =>
        Fill(_words.Limit, ("what", _words.Limits.GetValueOrDefault(limit.Key, limit.Metal)), ("value", _language.Number(limit.Value, 3)), ("unit", limit.Unit), ("source", limit.Source));

    /// <summary>A mass in grams and ounces; tenths of a gram, hundredths of an ounce.</summary>
    public string MassOf(double grams) => Fill(_words.Mass, ("grams", _language.Number(grams, 1)), ("ounces", _language.Number(grams / Ounce.Grams, 2)));

    private IEnumerable<string> Sizes()
    {
        yield return _language.Sentence(_words.Length, ("mm", listing.LengthMm));
        yield return _language.Sentence(_words.Width, ("mm", listing.WidthMm));
        yield return _language.Sentence(_words.Thickness, ("mm", listing.ThicknessMm));
        yield return _language.Sentence(_words.Inside, ("mm", listing.InsideMm), ("acrossMm", listing.InsideAcrossMm));
        yield return Mass() is { } mass ? _language.Sentence(_words.Weight, ("mass", mass)) : _words.WeightUnknown;
    }

    private IEnumerable<string> Materials()
    {
        foreach (var kind in listing.Reckoned.Counts)
            yield return Fill(_words.Kind, ("count", kind.Count), ("name", kind.Bead.Name), ("material", NameOf(kind)), ("lengthMm", kind.Bead.LengthMm), ("widthMm", kind.Bead.WidthMm),
                ("coating", kind.Bead.Description.Coating));
        var (wire, ends) = (listing.Reckoned.Piece.Wire, listing.Reckoned.Piece.Ends);
        yield return wire.Steel is { } steel ? Fill(_words.WireSteel, ("steel", _words.Steels.GetValueOrDefault(steel.Key, steel.Key)), ("mm", wire.WireMm)) : Fill(_words.WireUnknown, ("mm", wire.WireMm));
        yield return (ends.Of(EndFinish.GluedCap), ends.Of(EndFinish.Dangle)) switch
        {
            (0, 0) => _words.EndsLoops,
            (2, _) => _words.EndsCaps,
            (1, 0) => _words.EndsMixed,
            (1, _) => _words.EndsDangleAndCap,
            (_, 1) => _words.EndsDangle,
            _ => _words.EndsDangles,
        };
    }

    private IEnumerable<string> Metals()
    {
        yield return listing.HasMetalBeads
            ? _language.Sentence(_words.MetalBeads, ("names", string.Join(", ", listing.Materials.Where(m => m.Material is { IsMetal: true }).Select(NameOf))))
            : listing.MaterialsAreKnown ? _words.NoMetalBeads : _words.UnknownBeads;
        yield return _words.MetalsNote;
    }

    private IEnumerable<string> Care()
    {
        yield return _words.Care;
        if (!listing.Finishes.IsEmpty) yield return _words.CareCoated;
        string[] delicate = [.. listing.Materials.Where(m => m.Material is { } known && Delicate.Contains(known.Key)).Select(m => NameOf(m)!)];
        if (delicate.Length > 0) yield return _language.Sentence(_words.CarePorous, ("names", string.Join(", ", delicate)));
        if (listing.HasMetalBeads) yield return _words.CareMetal;
    }

    private string? Mass() => listing.MassG is { } grams ? MassOf(grams) : null;

    private string Turns() => _language.Number(listing.Reckoned.Fit.TurnsWorn, 1);

    private string? MaterialNames() => string.Join(", ", listing.Materials.Where(m => m.IsKnown).Select(NameOf)) is { Length: > 0 } names ? names : null;

    private string? NameOf(ListedMaterial material) => material.Material is { } known ? _words.Materials.GetValueOrDefault(known.Key, known.Key) : material.Other;

    private string? NameOf(KindCount kind) => kind.Bead.Description.Material is { } known ? _words.Materials.GetValueOrDefault(known.Key, known.Key) : kind.Bead.Description.OtherMaterial;

    private string Fill(string template, params ReadOnlySpan<(string Name, object? Value)> values) => _language.Fill(template, values);

    // A sign of two halves is not parted.
    private static string Shortened(string text, int most)
    {
        if (text.Length <= most) return text;
        var at = most - 1;
        if (char.IsHighSurrogate(text[at - 1])) at--;
        return text[..at].TrimEnd() + "…";
    }
}
