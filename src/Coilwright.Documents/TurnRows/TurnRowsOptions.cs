using System.Collections.Immutable;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.TurnRows;

/// <summary>How the turn rows are drawn.</summary>
public sealed record TurnRowsOptions
{
    /// <summary>Whether the sheet is covered with the warm paper's colour; without it the picture is see-through.</summary>
    public bool Paper { get; init; } = true;

    /// <summary>Whether the rows stand alone, without title, figures, key and ruler: for a page that has them beside the picture.</summary>
    public bool RowsAlone { get; init; }

    /// <summary>Whether it is drawn in greys, as a greyscale printer would.</summary>
    public bool Greyscale { get; init; }

    /// <summary>Millimetres of the picture for one of the piece: 1 draws it at its own size. Lettering keeps its size. Above 0; at least
    /// <see cref="LeastScale"/> and at most <see cref="MostScale"/> are used.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Width to fill, mm: overrules <see cref="Scale"/>, though rows are never drawn smaller than <see cref="LeastScale"/>. Null: by the scale.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Smallest scale: a 4 mm bead then still has 1 mm.</summary>
    public const double LeastScale = 0.25;

    /// <summary>Largest scale.</summary>
    public const double MostScale = 5;

    /// <summary>Whether the rows stand as close as the turns do on the wrist, without words between them, instead of apart with room for names and places
    /// that line up.</summary>
    public bool Close { get; init; }

    /// <summary>Which drawing each bead has where its kind has several, each from 0, over and over: for a page on which beads keep their looks when others
    /// are strung before them. Null: by turns along each kind.</summary>
    public ImmutableArray<int>? Looks { get; init; }

    /// <summary>The first row that is drawn, from 0: a part of the rows, for a page that cannot hold them all. Not for rows that lie close.</summary>
    internal int FirstRow { get; init; }

    /// <summary>At most so many rows are drawn, from 1.</summary>
    internal int MostRows { get; init; } = int.MaxValue;

    /// <summary>White round the whole, mm: none is needed where the picture stands in a page's own margins.</summary>
    public double MarginMm { get; init; } = 8;

    /// <summary>Language of its words, and the units of its lengths.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>What the words are measured with.</summary>
    public ITypeface Typeface { get; init; } = CautiousSans.Instance;
}
