using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>Writes into an order's text what marks say, and touches no other text.</summary>
/// <remarks>
/// <para>Goes down from the whole order to where the marks are. As long as all that an item, a group or a mirror strings is marked alike, its text is
/// changed in place. Where it is not, the item is written out as far as it must be: like passes stay counted together, halves of a mirror part, a
/// group that differs in one place gets a name of its own there.</para>
/// <para>Text that is written out a second time leaves its comments with the first.</para>
/// </remarks>
internal sealed partial class OrderRewriter
{
    private readonly OrderMap _map;
    private readonly IReadOnlyList<string> _beadIds;
    private readonly GroupSurvey _groups;
    private readonly TextRemover _text;
    private readonly HashSet<string> _writtenGroups = new(StringComparer.Ordinal);
    private readonly HashSet<OrderNode> _writtenOut = [];
    private readonly HashSet<int> _toldComments = [];
    private List<TextChange> _changes = [];

    // Above 0 while text is written out rather than changed where it stands: then everything is looked into, for the brackets in it that name groups.
    private int _writing;

    // Above 0 while a group's text is written out away from where the group is written down.
    private int _elsewhere;

    // Above 0 while text is written out whose comments stay where they are.
    private int _commentsStay;

    private OrderRewriter(OrderMap map, IReadOnlyList<string> beadIds, GroupSurvey groups)
    {
        _map = map;
        _beadIds = beadIds;
        _groups = groups;
        _text = new TextRemover(map.Tree);
    }

    /// <summary>The text afterwards, and the groups that came to have a name beside their own: the new name and the one before.</summary>
    /// <param name="map">The order.</param>
    /// <param name="beadIds">Ids of the piece's beads.</param>
    /// <param name="marks">Marks on the whole of it. At least one bead is left.</param>
    public static (OrderTree Tree, IReadOnlyList<(string Name, string From)> Renamed) Rewrite(OrderMap map, IReadOnlyList<string> beadIds, ImmutableArray<Mark> marks)
    {
        var sayable = new WholeItems(map).Sayable(marks);
        ImmutableArray<OrderItem> items = [.. map.Tree.Entries.OfType<OrderItem>()];
        var taken = beadIds.Concat(marks.Select(mark => mark.Doing).OfType<Grouping>().Select(grouping => grouping.Name));
        var groups = GroupSurvey.Of(map, items, sayable, taken);
        var rewriter = new OrderRewriter(map, beadIds, groups);
        foreach (var entry in map.Tree.Entries)
            if (entry is OrderDefinition definition)
                rewriter.Rewrite(definition);
        rewriter.Rewrite(items, sayable);
        return (map.Tree.Replace(rewriter.InOrder(rewriter._changes)), groups.Renamed);
    }

    // Runs ---------------------------------------------------------------------------------------------------------------------------------

    private void Rewrite(OrderDefinition definition)
    {
        if (_groups.Find(definition.Name.Text)!.Kept is not { } kept)
        {
            Change(_text.Cut(definition.Span), "");
            return;
        }
        if (kept.Name != definition.Name.Text) Change(definition.Name.Span, kept.Name);
        Rewrite(definition.Run.Items, kept.Body);
    }

    private void Rewrite(ImmutableArray<OrderItem> items, Mark[] marks)
    {
        if (marks.Length == 0 && _writing == 0 && _groups.Touched.Count == 0) return;
        var cut = RunCut.Of(items, _map.Lengths, marks);
        var results = new Result[items.Length];
        var wrap = 0;
        for (var i = 0; i < items.Length; i++)
        {
            if (wrap < cut.Wraps.Count && cut.Wraps[wrap].From == i)
            {
                var (from, to, doing) = cut.Wraps[wrap++];
                foreach (var inserting in PutWith(items, cut, i, isNext: true)) Change(items[from].Span.Start, Phrase.Join(Phrases(inserting)) + ", ");
                Wrap(items, from, to, doing, results);
                foreach (var inserting in PutWith(items, cut, to + 1, isNext: false)) Change(items[to].Span.End, ", " + Phrase.Join(Phrases(inserting)));
                i = to;
                continue;
            }
            foreach (var inserting in PutWith(items, cut, i, isNext: true)) Put(inserting, items[i], cut.Inside[i], ref results[i].Before, ref results[i].More);
            results[i].Instead = Rewrite(items[i], cut.Inside[i]);
            foreach (var inserting in PutWith(items, cut, i + 1, isNext: false)) Put(inserting, items[i], cut.Inside[i], ref results[i].After, ref results[i].More);
            if (results[i].More > 0) CountOn(items[i], items[i].Times + results[i].More);
        }
        Patch(items, results);
    }

    /// <summary>What is put into a gap and is written with the item after it, or with the one before it.</summary>
    private IEnumerable<Inserting> PutWith(ImmutableArray<OrderItem> items, RunCut cut, int gap, bool isNext) =>
        (cut.Gaps[gap] ?? []).Where(mark => GoesWithNext(items, cut, gap, mark) == isNext).Select(mark => (Inserting)mark.Doing);

    /// <summary>Whether what is put into a gap is written with the item after it: when she says so, at the start, and where that item only needs to be
    /// counted on.</summary>
    private bool GoesWithNext(ImmutableArray<OrderItem> items, RunCut cut, int gap, Mark mark)
    {
        if (gap == 0 || gap == items.Length) return gap == 0;
        var inserting = (Inserting)mark.Doing;
        return mark.Side == Side.Next || (cut.Gaps[gap]!.Count == 1
            && CanCountOn(items[gap], cut.Inside[gap], inserting) && !CanCountOn(items[gap - 1], cut.Inside[gap - 1], inserting));
    }

    private void Put(Inserting inserting, OrderItem beside, Mark[] inside, ref List<Phrase>? phrases, ref int more)
    {
        if (more == 0 && CanCountOn(beside, inside, inserting)) more = inserting.Things.Length * inserting.Times;
        else (phrases ??= []).AddRange(Phrases(inserting));
    }

    private bool CanCountOn(OrderItem item, Mark[] inside, Inserting inserting) =>
        inside.Length == 0 && item is { Part: OrderNameUse use, Separator: null } && inserting.Things.All(thing => IsNamed(use, thing))
        && item.Times + (long)inserting.Things.Length * inserting.Times <= OrderLimits.Count;

    private bool IsNamed(OrderNameUse use, Thing thing) => thing switch
    {
        Thing.Bead bead => bead.Kind == _map.Lengths.KindOf(use),
        Thing.Group { Backwards: false } group => group.Name == use.Name.Text,
        _ => false,
    };

    /// <summary>Puts a bracket, or a count, round whole items.</summary>
    private void Wrap(ImmutableArray<OrderItem> items, int from, int to, Wrapping doing, Result[] results)
    {
        switch (doing)
        {
            case Grouping grouping when !_writtenGroups.Add(grouping.Name):
                for (var i = from; i <= to; i++) results[i].Instead = [];
                results[from].Instead = [new Phrase(grouping.Name, PhraseForm.NameOrBracket)];
                return;
            case Grouping grouping:
                var isBracket = from == to && items[from] is { Count: null, Separator: null, Part: OrderBracket { Name: null } };
                Change(items[from].Span.Start, isBracket ? grouping.Name + " " : grouping.Name + " (");
                Inside(from, to);
                if (!isBracket) Change(items[to].Span.End, ")");
                return;
            case Repeating repeating when from == to && items[from].Separator is null && (long)items[from].Times * repeating.Times <= OrderLimits.Count:
                CountOn(items[from], items[from].Times * repeating.Times);
                Inside(from, to);
                return;
            case Repeating repeating:
                Change(items[from].Span.Start, string.Create(CultureInfo.InvariantCulture, $"{repeating.Times} ("));
                Inside(from, to);
                Change(items[to].Span.End, ")");
                return;
            case Mirroring { Before: true } mirroring:
                results[from].Instead = MirrorBefore(items, from, to, mirroring);
                for (var i = from + 1; i <= to; i++) results[i].Instead = [];
                return;
            case Mirroring mirroring:
                var (centre, _) = WholeItems.CentreOf(items, _map.Lengths, from, to, mirroring)!.Value;
                Change(items[from].Span.Start, "mirror (");
                Inside(from, centre - 1);
                if (centre <= to) Around(centre);
                Inside(centre, to);
                if (centre > to || NeedsBracket(centre)) Change(items[to].Span.End, ")");
                return;
        }

        void Inside(int first, int last)
        {
            for (var i = first; i <= last; i++) results[i].Instead = Rewrite(items[i], []);
        }

        void Around(int centre)
        {
            var between = TextSpan.Between(items[centre - 1].Span.End, items[centre].Span.Start);
            var isPlain = _text.IsPlain(between.Start, between.End);
            Change(isPlain ? between : new TextSpan(between.End, 0), NeedsBracket(centre) ? ") around (" : ") around ");
        }

        bool NeedsBracket(int centre) => centre < to || items[centre].Separator is not null;
    }

    private List<Phrase> MirrorBefore(ImmutableArray<OrderItem> items, int from, int to, Mirroring mirroring)
    {
        var (_, centre) = WholeItems.CentreOf(items, _map.Lengths, from, to, mirroring)!.Value;
        var middle = Enumerable.Range(from, centre - from + 1).SelectMany(i => Phrases(items[i], [])).ToList();
        var half = Enumerable.Range(centre + 1, to - centre).SelectMany(i => Phrases(items[i], [])).ToList();
        var text = $"mirror (backwards {Phrase.As(half, PhraseForm.NameOrBracket).Text})";
        if (middle.Count > 0) text += $" around {Phrase.As(middle, PhraseForm.Counted).Text}";
        return [new Phrase(text, PhraseForm.Part)];
    }

    /// <summary>Brings the outcomes of a run's items into its text.</summary>
    private void Patch(ImmutableArray<OrderItem> items, Result[] results)
    {
        for (var i = 0; i < items.Length; i++)
        {
            var result = results[i];
            if (result.IsGone)
            {
                var last = i;
                while (last + 1 < items.Length && results[last + 1].IsGone && _text.IsPlain(items[last].Span.End, items[last + 1].Span.Start)) last++;
                Change(_text.Cut(TextSpan.Between(items[i].Span.Start, items[last].Span.End)), "");
                i = last;
            }
            else if (result.Instead is not null)
            {
                Change(items[i].Span, Phrase.Join([.. result.Before ?? [], .. result.Instead, .. result.After ?? []]));
            }
            else
            {
                if (result.Before is not null) Change(items[i].Span.Start, Phrase.Join(result.Before) + ", ");
                if (result.After is not null) Change(items[i].Span.End, ", " + Phrase.Join(result.After));
            }
        }
    }

    // Items --------------------------------------------------------------------------------------------------------------------------------

    /// <summary>Changes an item in place, or gives what stands instead of it; nothing when it goes.</summary>
    /// <param name="item">The item.</param>
    /// <param name="marks">Marks on it.</param>
    /// <param name="isInner">Whether it stands between others or in the middle of a mirror, where it can have nothing between itself.</param>
    private List<Phrase>? Rewrite(OrderItem item, Mark[] marks, bool isInner = false)
    {
        if (marks.Length == 0 && _writing == 0 && !_groups.Touched.Contains(item)) return null;
        if (Marks.Empty(marks, _map.Lengths.Of(item))) return [];
        if (item.Times == 1)
        {
            var instead = Rewrite(item.Part!, marks);
            if (item.Separator is null) return instead;
            if (instead is not null) Change(item.Part!.Span, Phrase.As(instead, PhraseForm.Part).Text);
            Rewrite(item.Separator, [], isInner: true);
            return null;
        }
        var stretches = ItemCut.Of(item, _map.Lengths, marks);
        if (stretches is [{ Doing: null, Passes: [{ What.Kind: BitKind.Part } all] }] && !(isInner && all.Between?.Kind == BitKind.Inserted))
        {
            RewriteAlike(item, all);
            return null;
        }
        var phrases = new List<Phrase>();
        foreach (var (passes, doing) in stretches)
        {
            var stretch = passes.SelectMany(pass => Phrases(item, pass)).ToList();
            phrases.AddRange(doing is null ? stretch : [Wrapped(stretch, doing)]);
        }
        return phrases;
    }

    /// <summary>All passes are alike: the count, the part and what is between stay where they are.</summary>
    private void RewriteAlike(OrderItem item, Times all)
    {
        CountOn(item, all.Count);
        var part = item.Part!.Span;
        if (Rewrite(item.Part, all.What.Marks) is { } instead) Change(part, Phrase.As(instead, PhraseForm.Part).Text);
        if (all.Between is not { } between)
        {
            if (item.Separator is not null) Change(TextSpan.Between(part.End, item.Span.End), "");
        }
        else if (between.Kind == BitKind.Separator)
        {
            if (Rewrite(item.Separator!, between.Marks, isInner: true) is { } other) Change(item.Separator!.Span, Phrase.As(other, PhraseForm.Counted).Text);
        }
        else
        {
            var text = Phrase.As(Phrases(between.Inserted!), PhraseForm.Counted).Text;
            if (item.Separator is null) Change(part.End, $" with {text} between");
            else Change(item.Separator.Span, text);
        }
    }

    /// <summary>Gives an item another count, in her way of writing counts.</summary>
    private void CountOn(OrderItem item, int count)
    {
        if (count == item.Times) return;
        if (item.Count is null) Change(item.Part!.Span.Start, string.Create(CultureInfo.InvariantCulture, $"{count} "));
        else if (count == 1) Change(TextSpan.Between(item.Count.Span.Start, item.Part!.Span.Start), "");
        else Change(DigitsOf(item.Count), count.ToString(CultureInfo.InvariantCulture));
    }

    private List<Phrase> Phrases(OrderItem item, Times pass)
    {
        var what = Phrases(item, pass.What);
        if (pass.Count == 1) return what;
        // Her own x between a count and what it counts.
        var x = item.Count is null ? " " : _map.Tree.TextOf(TextSpan.Between(DigitsOf(item.Count).End, item.Part!.Span.Start));
        var part = Phrase.As(what, PhraseForm.Part).Text;
        if (char.IsAsciiLetter(part[0]) && (x.Length == 0 || char.IsAsciiLetter(x[^1]))) x += " ";
        var text = pass.Count.ToString(CultureInfo.InvariantCulture) + x + part;
        if (pass.Between is null) return [new Phrase(text, PhraseForm.Counted)];
        return [new Phrase($"{text} with {Phrase.As(Phrases(item, pass.Between), PhraseForm.Counted).Text} between", PhraseForm.Item)];
    }

    private List<Phrase> Phrases(OrderItem item, Bit bit) => bit.Kind switch
    {
        BitKind.Part => Phrases(item.Part!, bit.Marks),
        BitKind.Separator => Phrases(item.Separator!, bit.Marks),
        _ => Phrases(bit.Inserted!),
    };

    private Phrase Wrapped(List<Phrase> phrases, Wrapping doing)
    {
        switch (doing)
        {
            case Grouping grouping:
                return new Phrase(_writtenGroups.Add(grouping.Name) ? $"{grouping.Name} {Phrase.InBrackets(phrases)}" : grouping.Name, PhraseForm.NameOrBracket);
            case Repeating repeating:
                return Phrase.Times(repeating.Times, phrases);
            case Mirroring { Before: true }:
                return new Phrase($"mirror (backwards {Phrase.As(phrases, PhraseForm.NameOrBracket).Text})", PhraseForm.Part);
            default:
                return new Phrase($"mirror {Phrase.InBrackets(phrases)}", PhraseForm.Part);
        }
    }

    private TextSpan DigitsOf(OrderCount count)
    {
        var end = count.Span.Start;
        while (end < count.Span.End && char.IsAsciiDigit(_map.Tree.Text[end])) end++;
        return TextSpan.Between(count.Span.Start, end);
    }

    /// <summary>What becomes of an item of a run.</summary>
    private struct Result
    {
        /// <summary>What stands instead of it; null when it stays, changed in place or not.</summary>
        public List<Phrase>? Instead;

        /// <summary>What is put before it.</summary>
        public List<Phrase>? Before;

        /// <summary>What is put after it.</summary>
        public List<Phrase>? After;

        /// <summary>How many more of it there are.</summary>
        public int More;

        public readonly bool IsGone => Instead is { Count: 0 } && Before is null && After is null;
    }
}
