using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Web.Bench;

/// <summary>A bead that is being described: what she has typed so far, and what the core says to it.</summary>
public sealed class BeadDraft
{
    private readonly Piece _piece;
    private readonly string? _own;

    private BeadDraft(Piece piece, string? own, BeadDescription bead) => (_piece, _own, Bead) = (piece, own, bead);

    /// <summary>A new bead: round, of no size yet.</summary>
    public static BeadDraft New(Piece piece) => new(piece, null, new BeadDescription { Id = "", Shape = BeadShapes.All[0].Name, Role = Role.Main });

    /// <summary>A bead of the piece to be changed.</summary>
    public static BeadDraft Of(Piece piece, Bead bead) => new(piece, bead.Id, bead.Description);

    /// <summary>The like of a bead, as another colour of it.</summary>
    public static BeadDraft Like(Piece piece, Bead bead) => From(piece, bead.Description);

    /// <summary>A bead that is described already, for a piece that has it not.</summary>
    public static BeadDraft From(Piece piece, BeadDescription bead) => new(piece, null, bead with { Id = "", Lot = null });

    /// <summary>How a bead without a colour is drawn.</summary>
    public static Srgb Plain { get; } = new(0xb9, 0xb2, 0xa4);

    /// <summary>Id of the bead that is changed; null for a new one.</summary>
    public string? Own => _own;

    /// <summary>The bead so far.</summary>
    public BeadDescription Bead { get; private set; }

    /// <summary>Its shape.</summary>
    public BeadShape Shape => BeadShapes.Find(Bead.Shape)!;

    /// <summary>Changes it. A new bead's id follows its name.</summary>
    public void Change(Func<BeadDescription, BeadDescription> change)
    {
        Bead = change(Bead);
        if (_own is null) Bead = Bead with { Id = IdFor(Bead.Name ?? Bead.Shape) };
    }

    /// <summary>Judges it: the bead when it is sound, else what is wrong.</summary>
    public (Bead? Sound, ImmutableArray<Fault> Faults) Judge()
    {
        if (Bead.Id.Length == 0) Change(b => b);
        return Core.Beads.Bead.TryMake(Bead, out var sound, out var faults) ? (sound, []) : (null, faults);
    }

    /// <summary>Her colour as the browser writes it; a plain one when she gave none.</summary>
    public string ColourText => (Bead.Colours.IsDefaultOrEmpty ? Plain : Bead.Colours[0]).ToString();

    /// <summary>Takes a colour as the browser writes it.</summary>
    public void TakeColour(string? text)
    {
        if (Srgb.TryParse(text ?? "", out var colour)) Change(b => b with { Colours = b.Colours.Length > 1 ? b.Colours.SetItem(0, colour) : [colour] });
    }

    // A name of the order made of a name for people: small letters, figures and hyphens, and another than those there are.
    private string IdFor(string name)
    {
        var id = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
            if (c is (>= 'a' and <= 'z') or (>= '0' and <= '9' and var _)) id.Append(c);
            else if (id.Length > 0 && id[^1] != '-' && !char.IsAsciiLetterOrDigit(c) && char.GetUnicodeCategory(c) != System.Globalization.UnicodeCategory.NonSpacingMark) id.Append('-');
        var stem = id.ToString().Trim('-');
        if (stem.Length == 0 || !char.IsAsciiLetterLower(stem[0])) stem = "bead" + (stem.Length == 0 ? "" : "-" + stem);
        if (stem.Length > 24) stem = stem[..24].TrimEnd('-');
        var taken = _piece.Beads.Select(b => b.Id).Concat(_piece.Order.Groups.Select(g => g.Name).OfType<string>()).Concat(OrderWords.Reserved).ToHashSet(StringComparer.Ordinal);
        var free = stem;
        for (var n = 2; taken.Contains(free); n++) free = $"{stem}-{n}";
        return free;
    }
}
