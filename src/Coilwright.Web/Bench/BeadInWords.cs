using Coilwright.Core.Readings;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>One strung bead in words.</summary>
internal static class BeadInWords
{
    /// <summary>Fills a template that asks for {number}, {name}, {letter}, {turn} and {angleDeg}.</summary>
    public static string Of(string template, Reckoned reckoned, int bead, Language language)
    {
        var kindIndex = reckoned.Piece.Order.Kinds[bead];
        var kind = reckoned.Counts.First(k => k.KindIndex == kindIndex);
        return language.Fill(template, ("number", bead + 1), ("name", kind.Bead.Name), ("letter", kind.Letter), ("turn", reckoned.Lie.Turn(bead)),
            ("angleDeg", reckoned.Lie.AngleDeg(bead)));
    }
}
