using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Palettes;

/// <summary>Who looks at the palette, or by what it is shown.</summary>
public enum Sight
{
    /// <summary>An eye that lacks nothing.</summary>
    Full,

    /// <summary>One without cones for long waves.</summary>
    Protan,

    /// <summary>One without cones for middle waves.</summary>
    Deutan,

    /// <summary>One without cones for short waves.</summary>
    Tritan,

    /// <summary>Any, at a print in greys.</summary>
    Grey,
}

/// <summary>Whether two kinds are told apart beside each other by their colour.</summary>
public enum Telling
{
    /// <summary>They are.</summary>
    Apart,

    /// <summary>By some of the published simulations they are, by others not.</summary>
    Unsure,

    /// <summary>One vanishes beside the other.</summary>
    Vanishes,
}

/// <summary>Two kinds as they are told apart at one sight.</summary>
/// <param name="Sight">The sight.</param>
/// <param name="Least">Difference by the simulation that finds the least: CIEDE2000; for greys the difference of L*.</param>
/// <param name="Most">The same by the one that finds the most; the same number where there is but one way.</param>
/// <param name="Told">Whether they are told apart.</param>
public sealed record PairSeen(Sight Sight, double Least, double Most, Telling Told);

/// <summary>A kind of bead in the palette.</summary>
/// <param name="Kind">The kind, its letter and how many are strung.</param>
/// <param name="Lab">The mean of its colours.</param>
/// <param name="GreyL">The mean L* of its colours: how light it is in a print in greys.</param>
public sealed record PaletteKind(KindCount Kind, Lab Lab, double GreyL)
{
    /// <summary>Its colours at a sight, by the model that pictures are drawn by.</summary>
    public ImmutableArray<Srgb> Seen(Sight sight) => [.. Kind.Bead.Colours.Select(c => PaletteReport.Seen(c, sight))];
}

/// <summary>Two kinds of the palette.</summary>
/// <param name="One">The one whose letter comes first.</param>
/// <param name="Other">The other.</param>
/// <param name="Places">How often they stand next to each other along the wire.</param>
/// <param name="OverMm">How much of one lies over or under the other on neighbouring turns, mm.</param>
/// <param name="Seen">How they are told apart at each sight, in the order of <see cref="Sight"/>.</param>
public sealed record PalettePair(PaletteKind One, PaletteKind Other, int Places, double OverMm, ImmutableArray<PairSeen> Seen)
{
    /// <summary>Whether they lie beside each other anywhere: less than half a millimetre over each other is the edge of a bead.</summary>
    public bool AreBeside => Places > 0 || OverMm >= 0.5;

    /// <summary>The pair at a sight.</summary>
    public PairSeen At(Sight sight) => Seen[(int)sight];
}

/// <summary>How the colours of a piece go together: which kinds are told apart beside each other, by every eye and in greys.</summary>
/// <remarks>
/// <para>About colour alone: a large ball is told from a small dot of the same colour. A kind without a colour is left out. Several colours of a bead count as their mean, so
/// that a pattern on it is lost. Not a judgement of taste.</para>
/// <para>Two kinds vanish beside each other below <see cref="ReckoningChoices.VanishDifference"/> (CIEDE2000), in greys below <see cref="ReckoningChoices.GreyStep"/> of L*.
/// Model and sources: docs/theory/colour-vision.md.</para>
/// </remarks>
public sealed record PaletteReport
{
    /// <summary>What it was made of.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>The kinds that are strung and have a colour, in the order of their letters.</summary>
    public required ImmutableArray<PaletteKind> Kinds { get; init; }

    /// <summary>The kinds that are strung and have none.</summary>
    public required ImmutableArray<KindCount> WithoutColour { get; init; }

    /// <summary>Every two kinds: those that lie beside each other first, of them the hardest to tell apart first.</summary>
    public required ImmutableArray<PalettePair> Pairs { get; init; }

    /// <summary>Mean difference (CIEDE2000) from one bead to the next where the kind changes; null where it never does between kinds with a colour.</summary>
    public required double? AlongMean { get; init; }

    /// <summary>The same over all that lies over another kind on the next turn; null where nothing does.</summary>
    public required double? AcrossMean { get; init; }

    /// <summary>Those that lie beside each other and are not surely told apart at a sight; without those that vanish to every eye already, unless that is the sight.</summary>
    public IEnumerable<PalettePair> Lost(Sight sight) =>
        Pairs.Where(p => p.AreBeside && p.At(sight).Told != Telling.Apart && (sight == Sight.Full || p.At(Sight.Full).Told == Telling.Apart));

    /// <summary>Looks at a piece's colours.</summary>
    public static PaletteReport Of(Reckoned reckoned)
    {
        var beside = Alignment.KindsBeside.Of(reckoned.Piece, reckoned.Lie, reckoned.Worn.PitchMm);
        ImmutableArray<PaletteKind> kinds = [.. reckoned.Counts.Where(k => !k.Bead.Colours.IsEmpty)
            .Select(k => new PaletteKind(k, Lab.MeanOf(k.Bead.Colours)!.Value, k.Bead.Colours.Average(c => Lab.FromSrgb(c).L)))];
        var pairs = new List<PalettePair>();
        for (var i = 0; i < kinds.Length; i++)
            for (var j = i + 1; j < kinds.Length; j++)
            {
                var (one, other) = (kinds[i].Kind.KindIndex, kinds[j].Kind.KindIndex);
                pairs.Add(new PalettePair(kinds[i], kinds[j], beside.Places(one, other), beside.OverMm(one, other), [.. Enum.GetValues<Sight>().Select(s => SeenAt(kinds[i], kinds[j], s, reckoned.Choices))]));
            }
        var (places, over) = (pairs.Sum(p => p.Places), pairs.Sum(p => p.OverMm));
        return new PaletteReport
        {
            Reckoned = reckoned,
            Kinds = kinds,
            WithoutColour = [.. reckoned.Counts.Where(k => k.Bead.Colours.IsEmpty)],
            Pairs = [.. pairs.OrderByDescending(p => p.AreBeside).ThenBy(p => p.At(Sight.Full).Least)],
            AlongMean = places == 0 ? null : pairs.Sum(p => p.Places * p.At(Sight.Full).Least) / places,
            AcrossMean = over == 0 ? null : pairs.Sum(p => p.OverMm * p.At(Sight.Full).Least) / over,
        };
    }

    /// <summary>The same piece with its beads in the colours of a sight, for drawing. Nothing else of it changes.</summary>
    public Reckoned At(Sight sight) => sight == Sight.Full ? Reckoned : Reckoned with
    {
        Piece = Reckoned.Piece with { Beads = [.. Reckoned.Piece.Beads.Select(b => b.WithColours([.. b.Colours.Select(c => Seen(c, sight))]))] },
        Counts = [.. Reckoned.Counts.Select(k => k with { Bead = k.Bead.WithColours([.. k.Bead.Colours.Select(c => Seen(c, sight))]) })],
    };

    /// <summary>A colour at a sight, by the model that pictures are drawn by.</summary>
    public static Srgb Seen(Srgb colour, Sight sight) => sight switch
    {
        Sight.Full => colour,
        Sight.Grey => LinearLight.FromSrgb(colour).InGrey().ToSrgb(),
        _ => DichromatSight.Seen(LinearLight.FromSrgb(colour), EyeOf(sight), DichromatSight.ModelsFor(EyeOf(sight))[0]).ToSrgb(),
    };

    private static PairSeen SeenAt(PaletteKind one, PaletteKind other, Sight sight, ReckoningChoices choices)
    {
        double[] differences = sight switch
        {
            Sight.Full => [ColourDifference.Ciede2000(one.Lab, other.Lab)],
            Sight.Grey => [Math.Abs(one.GreyL - other.GreyL)],
            _ => [.. DichromatSight.ModelsFor(EyeOf(sight)).Select(m => ColourDifference.Ciede2000(MeanSeen(one, EyeOf(sight), m), MeanSeen(other, EyeOf(sight), m)))],
        };
        var (least, most, from) = (differences.Min(), differences.Max(), sight == Sight.Grey ? choices.GreyStep : choices.VanishDifference);
        return new PairSeen(sight, least, most, most < from ? Telling.Vanishes : least < from ? Telling.Unsure : Telling.Apart);
    }

    private static Lab MeanSeen(PaletteKind kind, Dichromacy eye, DichromacyModel model) =>
        Lab.Mean([.. kind.Kind.Bead.Colours.Select(c => Lab.FromLight(DichromatSight.Seen(LinearLight.FromSrgb(c), eye, model)))])!.Value;

    private static Dichromacy EyeOf(Sight sight) => sight switch
    {
        Sight.Protan => Dichromacy.Protan,
        Sight.Deutan => Dichromacy.Deutan,
        Sight.Tritan => Dichromacy.Tritan,
        _ => throw new ArgumentOutOfRangeException(nameof(sight), sight, "It is no eye that lacks something."),
    };
}
