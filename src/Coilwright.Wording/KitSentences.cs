using Coilwright.Core.Beads;
using Coilwright.Core.Kits;
using Coilwright.Core.Shopping;

namespace Coilwright.Wording;

/// <summary>A batch of kits in a maker's words.</summary>
public sealed class KitSentences(KitPlan plan, Language language)
{
    private readonly KitWords _words = language.Kit;

    /// <summary>What it is for.</summary>
    public string For() => language.Sentence(language.Shop.For, ("pieces", string.Join(", ", plan.Kits.Select(k => language.Fill(language.Shop.PieceOf, ("count", k.Count), ("name", k.Name))))));

    /// <summary>What to look at before anything is packed.</summary>
    public IEnumerable<string> Mind()
    {
        foreach (var kit in plan.Kits.Where(k => k.SaysStop)) yield return language.Sentence(_words.SaysStop, ("name", kit.Name));
        foreach (var item in plan.Picks.Select(p => p.Item))
            foreach (var p in item.DescribedOtherwise)
                yield return language.Sentence(language.Shop.DescribedOtherwise, ("bead", NameOf(item)), ("first", plan.Kits[Enumerable.Range(0, item.Each.Length).First(k => item.Each[k] > 0)].Name), ("other", plan.Kits[p].Name));
        if (plan.Spares == Spares.None) yield return language.Shop.NoSpares;
    }

    /// <summary>A bead's name for people; caps and dangles in a word.</summary>
    public string NameOf(ShoppingItem item) => item.Bead?.Name ?? ShopSentences.OfEnd(item.Id, language);

    /// <summary>A bead's name for people; caps and dangles in a word.</summary>
    public string NameOf(KitBag bag) => bag.Kind?.Bead.Name ?? ShopSentences.OfEnd(bag.Item, language);

    /// <summary>How many kits of which piece, over what lies in each.</summary>
    public string Heading(Kit kit) => language.Sentence(_words.KitHeading, ("count", kit.Count), ("name", kit.Name), ("version", kit.Version));

    /// <summary>What lies in each kit: key letter, bead, to use, to spare, in the bag.</summary>
    public IEnumerable<string[]> Bags(Kit kit) => kit.Bags.Select(b => new[] { b.Letter, NameOf(b), Count(b.Use), Count(b.Spare), Count(b.Count) });

    /// <summary>The wire of one kit.</summary>
    public string Wire(Kit kit) => language.Sentence(_words.Wire, ("loops", kit.Reckoned.Wire.LoopsToCut), ("cutMm", kit.Reckoned.Wire.CutMm));

    /// <summary>The wire of all kits, a line for each piece.</summary>
    public IEnumerable<string> CutAll() => plan.Kits.Select(k => language.Fill(_words.CutAll, ("count", k.Count), ("name", k.Name), ("loops", k.Reckoned.Wire.LoopsToCut), ("cutMm", k.Reckoned.Wire.CutMm)));

    /// <summary>The drawers of something, as they stand.</summary>
    public static string Drawers(PickLine line) => string.Join(", ", line.Drawers);

    /// <summary>Where it goes: the bags, and what is laid aside.</summary>
    public string Into(PickLine line)
    {
        var shares = line.Shares.Select(s => language.Fill(_words.Into, ("times", plan.Kits[s.Kit].Count), ("count", s.Bag.Count), ("letter", s.Bag.Letter), ("name", plan.Kits[s.Kit].Name)));
        return string.Join("; ", line.Aside > 0 ? shares.Append(language.Fill(_words.Aside, ("count", line.Aside))) : shares);
    }

    /// <summary>How to read the pick list.</summary>
    public IEnumerable<string> PickNotes()
    {
        if (plan.HasDrawers) yield return _words.ByDrawer;
        if (plan.Picks.Any(p => p.Aside > 0)) yield return _words.AsideNote;
    }

    /// <summary>How many kits what is at home makes, and what one more pack brings.</summary>
    public IEnumerable<string> Now()
    {
        foreach (var now in plan.Now)
        {
            yield return language.Sentence(_words.Now, ("count", now.Count), ("name", plan.Kits[now.Kit].Name), ("first", Names(now.First)));
            yield return now.Then is { } then
                ? language.Sentence(_words.OneMorePack, ("packs", string.Join(", ", now.First.Zip(then.Packs, OnePack))), ("count", then.Count), ("first", Names(then.First)))
                : _words.NoPackKnown;
        }
        if (plan.HomeIsKnown) yield return _words.NowNote;
    }

    /// <summary>The cautions of kits: they leave the house as loose beads and cut wire.</summary>
    public IEnumerable<string> Cautions()
    {
        yield return language.Cautions.SmallParts;
        foreach (var caution in language.Cautions.OfMemoryWire) yield return caution;
        if (plan.Kits.Any(k => k.HasMetal)) yield return language.Cautions.Metals;
    }

    /// <summary>A whole number.</summary>
    public string Count(int count) => language.Number(count, 0);

    private string Names(IEnumerable<ShoppingItem> items) => string.Join(", ", items.Select(NameOf));

    private string OnePack(ShoppingItem item, Pack pack) => language.Fill(language.Shop.Line, ("packs", PackWords.Of(1, pack, language)), ("bead", NameOf(item)));
}
