using Coilwright.Core.Beads;

namespace Coilwright.Wording;

/// <summary>How many units of sale to buy: strands and bags in their number and language, a unit of her own in her words.</summary>
public static class PackWords
{
    /// <summary>So many units of a bead, as <c>3 strands of 65</c>.</summary>
    /// <param name="packs">How many.</param>
    /// <param name="pack">The unit.</param>
    /// <param name="language">The language.</param>
    /// <param name="own">How words of her own are written; as they stand when null.</param>
    public static string Of(int packs, Pack pack, Language language, Func<string, string>? own = null)
    {
        var words = language.Sheet;
        var packed = language.Fill(words.UsualPacks.GetValueOrDefault(pack.Unit, words.OwnPacks), ("packs", packs), ("unit", own is null ? pack.Unit : own(pack.Unit)));
        return pack.Beads == 1 ? packed : language.Fill(words.PacksOf, ("packed", packed), ("beads", pack.Beads));
    }
}
