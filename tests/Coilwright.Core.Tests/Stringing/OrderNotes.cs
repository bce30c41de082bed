using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>An order as the tests think of it: a second description beside the program's own tree, written for being plain and not for speed.</summary>
internal abstract record Note
{
    private Note() { }

    public sealed record Bead(string Id) : Note;

    public sealed record Use(string Group) : Note;

    public sealed record Bracket(string? Name, ImmutableArray<NoteItem> Run) : Note;

    public sealed record Mirror(ImmutableArray<NoteItem> Half, NoteItem? Centre) : Note;

    public sealed record Backwards(Note Part) : Note;
}

/// <summary>A note so many times, with something between.</summary>
internal sealed record NoteItem(int Count, Note Part, NoteItem? Between);

/// <summary>A whole order: groups written down on lines of their own, before the items whose index they carry, and the items strung.</summary>
internal sealed record NoteOrder(ImmutableArray<(string Name, ImmutableArray<NoteItem> Run, int Before)> Written, ImmutableArray<NoteItem> Items);

/// <summary>What is strung, one thing after another: a bead, or a group with the things in it.</summary>
internal abstract record Thing
{
    private Thing() { }

    public sealed record Bead(string Id) : Thing;

    public sealed record Group(string Name, List<Thing> Things) : Thing;
}

/// <summary>The naive second way: writes out every bead one by one, with a new list for everything. Shares no code with the program.</summary>
internal static class NaiveStringing
{
    public static StringingOrder Of(NoteOrder order, string[] beadIds)
    {
        var groups = new Dictionary<string, ImmutableArray<NoteItem>>();
        foreach (var (name, run, _) in order.Written)
        {
            groups[name] = run;
            FindNamed(run, groups);
        }
        FindNamed(order.Items, groups);
        return Flat(Run(order.Items, groups), beadIds);
    }

    /// <summary>The same things from the other end.</summary>
    public static List<Thing> Reversed(List<Thing> things) =>
        [.. things.AsEnumerable().Reverse().Select(thing => thing is Thing.Group group ? group with { Things = Reversed(group.Things) } : thing)];

    public static List<Thing> Things(StringingOrder order, string[] beadIds)
    {
        var at = 0;
        var next = 0;
        return Until(order.Count);

        List<Thing> Until(int end)
        {
            var things = new List<Thing>();
            while (at < end)
            {
                if (next < order.Groups.Length && order.Groups[next].First == at)
                {
                    var run = order.Groups[next++];
                    things.Add(new Thing.Group(run.Name, Until(run.End)));
                }
                else
                {
                    things.Add(new Thing.Bead(beadIds[order.Kinds[at++]]));
                }
            }
            return things;
        }
    }

    public static StringingOrder Flat(List<Thing> things, string[] beadIds)
    {
        var kinds = new List<int>();
        var groups = new List<GroupRun>();
        Add(things);
        return new StringingOrder([.. kinds], [.. groups]);

        void Add(List<Thing> inside)
        {
            foreach (var thing in inside)
            {
                if (thing is Thing.Bead bead) kinds.Add(Array.IndexOf(beadIds, bead.Id));
                if (thing is not Thing.Group group) continue;
                groups.Add(new GroupRun(group.Name, kinds.Count, Beads(group)));
                Add(group.Things);
            }
        }

        static int Beads(Thing thing) => thing is Thing.Group group ? group.Things.Sum(Beads) : 1;
    }

    private static void FindNamed(IEnumerable<NoteItem> run, Dictionary<string, ImmutableArray<NoteItem>> groups)
    {
        foreach (var item in run) FindNamed(item, groups);
    }

    private static void FindNamed(NoteItem? item, Dictionary<string, ImmutableArray<NoteItem>> groups)
    {
        if (item is null) return;
        FindNamed(item.Part, groups);
        FindNamed(item.Between, groups);
    }

    private static void FindNamed(Note note, Dictionary<string, ImmutableArray<NoteItem>> groups)
    {
        if (note is Note.Bracket { Name: { } name } named) groups[name] = named.Run;
        if (note is Note.Bracket bracket) FindNamed(bracket.Run, groups);
        if (note is Note.Backwards backwards) FindNamed(backwards.Part, groups);
        if (note is not Note.Mirror mirror) return;
        FindNamed(mirror.Half, groups);
        FindNamed(mirror.Centre, groups);
    }

    private static List<Thing> Run(ImmutableArray<NoteItem> run, Dictionary<string, ImmutableArray<NoteItem>> groups) =>
        [.. run.SelectMany(item => Item(item, groups))];

    private static List<Thing> Item(NoteItem item, Dictionary<string, ImmutableArray<NoteItem>> groups)
    {
        var things = new List<Thing>();
        for (var i = 0; i < item.Count; i++)
        {
            if (i > 0 && item.Between is not null) things.AddRange(Item(item.Between, groups));
            things.AddRange(Part(item.Part, groups));
        }
        return things;
    }

    private static List<Thing> Part(Note note, Dictionary<string, ImmutableArray<NoteItem>> groups) => note switch
    {
        Note.Bead bead => [new Thing.Bead(bead.Id)],
        Note.Use use => [new Thing.Group(use.Group, Run(groups[use.Group], groups))],
        Note.Bracket { Name: { } name } bracket => [new Thing.Group(name, Run(bracket.Run, groups))],
        Note.Bracket bracket => Run(bracket.Run, groups),
        Note.Mirror mirror =>
        [
            .. Run(mirror.Half, groups),
            .. mirror.Centre is null ? [] : Item(mirror.Centre, groups),
            .. Reversed(Run(mirror.Half, groups)),
        ],
        Note.Backwards backwards => Reversed(Part(backwards.Part, groups)),
        _ => throw new InvalidOperationException(),
    };
}

/// <summary>Writes a note order as text, with blanks, comments and line ends taken from a list of random numbers.</summary>
internal sealed class NoteWriter(int[] style)
{
    private static readonly string[] Blanks = [" ", "  ", "\t", " \t ", "\u00a0"];
    private static readonly string[] Comments = ["#", "# the pair", "#(((", "# a, b ) = mirror", "# ünïcödé 𝄞", "#\t# x"];
    private static readonly string[] LineEnds = ["\n", "\r\n", "\n\n", "\r", "\n \t\n"];
    private readonly StringBuilder _text = new();
    private int _next;

    public static string Write(NoteOrder order, int[] style)
    {
        var writer = new NoteWriter(style);
        writer.Write(order);
        return writer._text.ToString();
    }

    private void Write(NoteOrder order)
    {
        if (Chosen(3) == 0) LineEnd();
        for (var i = 0; i <= order.Items.Length; i++)
        {
            var line = false;
            foreach (var (name, run, _) in order.Written.Where(w => Math.Min(w.Before, order.Items.Length) == i))
            {
                if (i > 0 || line) LineEnd();
                line = true;
                Word(name);
                Sign("=");
                Run(run, inBracket: false);
                if (Chosen(4) == 0) Sign(",");
            }
            if (i == order.Items.Length) break;
            if (line) LineEnd();
            else if (i > 0) Part(mayEndLine: true);
            Item(order.Items[i]);
        }
        if (Chosen(3) == 0 && _text[^1] != ',') Sign(",");
        if (Chosen(2) == 0) LineEnd();
    }

    private void Run(ImmutableArray<NoteItem> run, bool inBracket)
    {
        for (var i = 0; i < run.Length; i++)
        {
            if (i > 0) Part(inBracket);
            Item(run[i]);
        }
    }

    private void Item(NoteItem item)
    {
        Counted(item);
        if (item.Between is null) return;
        Word("with");
        Counted(item.Between);
        Word("between");
    }

    private void Counted(NoteItem item)
    {
        if (item.Count > 1 || Chosen(6) == 0)
        {
            Word((Chosen(5) == 0 ? "0" : "") + item.Count);
            if (Chosen(3) == 0)
            {
                // The sign may touch what is before it and after it, the word only the digits before it.
                if (Chosen(2) == 0) Sign("×");
                else if (Chosen(2) == 0) _text.Append("x ");
                else Word("x");
            }
        }
        Written(item.Part);
    }

    private void Written(Note part)
    {
        switch (part)
        {
            case Note.Bead bead:
                Word(bead.Id);
                break;
            case Note.Use use:
                Word(use.Group);
                break;
            case Note.Bracket bracket:
                if (bracket.Name is not null) Word(bracket.Name);
                Bracket(bracket.Run);
                break;
            case Note.Mirror mirror:
                Word("mirror");
                Bracket(mirror.Half);
                if (mirror.Centre is null) break;
                Word("around");
                Counted(mirror.Centre);
                break;
            case Note.Backwards backwards:
                Word("backwards");
                Written(backwards.Part);
                break;
        }
    }

    private void Bracket(ImmutableArray<NoteItem> run)
    {
        Sign("(");
        if (Chosen(4) == 0) LineEnd();
        Run(run, inBracket: true);
        if (Chosen(5) == 0) Sign(",");
        if (Chosen(4) == 0) LineEnd();
        Sign(")");
    }

    private void Part(bool mayEndLine)
    {
        var way = mayEndLine ? Chosen(4) : 0;
        if (way != 3) Sign(",");
        if (way > 0) LineEnd();
    }

    private void LineEnd()
    {
        if (Chosen(3) == 0) Blank();
        if (Chosen(3) == 0) _text.Append(Comments[Chosen(Comments.Length)]);
        _text.Append(LineEnds[Chosen(LineEnds.Length)]);
        if (Chosen(5) == 0) _text.Append(Comments[Chosen(Comments.Length)]).Append('\n');
    }

    private void Word(string word)
    {
        if (_text.Length > 0 && (char.IsLetterOrDigit(_text[^1]) || _text[^1] == '-')) Blank();
        else if (Chosen(3) == 0) Blank();
        _text.Append(word);
    }

    private void Sign(string sign)
    {
        if (Chosen(3) == 0) Blank();
        _text.Append(sign);
    }

    private void Blank() => _text.Append(Blanks[Chosen(Blanks.Length)]);

    private int Chosen(int ways) => style.Length == 0 ? 1 % ways : (int)((uint)style[_next++ % style.Length] % (uint)ways);
}

/// <summary>Random orders.</summary>
internal static class NoteGen
{
    private static readonly string[] GroupNames = ["petal", "cluster-2", "focal"];

    /// <summary>Random blanks, comments and line ends.</summary>
    public static readonly Gen<int[]> Style = Gen.Int[0, 10_000].Array[0, 60];

    /// <summary>Random orders of at most a few thousand beads.</summary>
    public static readonly Gen<NoteOrder> Order = MakeOrder().Where(order => Beads(order) is > 0 and < 4000);

    /// <summary>One of some values.</summary>
    public static Gen<T> OneOf<T>(IReadOnlyList<T> values) => Gen.Int[0, values.Count - 1].Select(i => values[i]);

    private static Gen<NoteOrder> MakeOrder() =>
        Gen.Select(Gen.Int[0, GroupNames.Length], Gen.Bool.Array[3], Gen.Int[0, 4].Array[3]).SelectMany((groups, inPlace, before) =>
            Gen.Select(
                Gen.Select(Run(1, 0), Run(1, Math.Min(groups, 1)), Run(1, Math.Min(groups, 2))),
                Run(2, groups).Array[1, 3],
                (bodies, runs) => Placed(groups, [bodies.Item1, bodies.Item2, bodies.Item3], inPlace, before, [.. runs.SelectMany(r => r)])));

    private static Gen<ImmutableArray<NoteItem>> Run(int depth, int groups) => Item(depth, groups).Array[1, 3].Select(a => a.ToImmutableArray());

    private static Gen<NoteItem> Item(int depth, int groups) =>
        Gen.Select(Count, Part(depth, groups), Gen.Int[0, 3], Gen.Select(Count, Part(Math.Min(depth, 1), groups)),
            (count, part, between, separator) => new NoteItem(count, part, between == 0 ? new NoteItem(separator.Item1, separator.Item2, null) : null));

    private static readonly Gen<int> Count = Gen.Frequency((4, Gen.Const(1)), (2, Gen.Int[2, 4]));

    private static Gen<Note> Part(int depth, int groups)
    {
        var bead = OneOf(OrderTexts.BeadIds).Select(id => (Note)new Note.Bead(id));
        var name = groups == 0 ? bead : Gen.Frequency((2, bead), (1, OneOf(GroupNames[..groups]).Select(g => (Note)new Note.Use(g))));
        if (depth == 0) return Gen.Frequency((5, name), (1, name.Select(part => (Note)new Note.Backwards(part))));
        var bracket = Run(depth - 1, groups).Select(run => (Note)new Note.Bracket(null, run));
        var mirror = Gen.Select(Run(depth - 1, groups), Gen.Bool, Gen.Select(Count, Part(depth - 1, groups)),
            (half, around, centre) => (Note)new Note.Mirror(half, around ? new NoteItem(centre.Item1, centre.Item2, null) : null));
        return Gen.Frequency((5, name), (2, bracket), (2, mirror), (1, bracket.Select(part => (Note)new Note.Backwards(part))));
    }

    /// <summary>Names each group: on a line of its own, or in place where it is first used, if it is.</summary>
    private static NoteOrder Placed(int groups, ImmutableArray<NoteItem>[] bodies, bool[] inPlace, int[] before, ImmutableArray<NoteItem> items)
    {
        var written = new List<(string Name, ImmutableArray<NoteItem> Run, int Before)>();
        // The last group first: its body may hold uses of the ones before it, and these may then be named in place inside it.
        for (var g = groups - 1; g >= 0; g--)
        {
            var done = !inPlace[g];
            if (!done) items = InRun(items, GroupNames[g], bodies[g], ref done);
            if (!inPlace[g] || !done)
            {
                written.Add((GroupNames[g], bodies[g], before[g]));
            }
        }
        return new NoteOrder([.. written], items);
    }

    private static ImmutableArray<NoteItem> InRun(ImmutableArray<NoteItem> run, string name, ImmutableArray<NoteItem> body, ref bool done)
    {
        var items = ImmutableArray.CreateBuilder<NoteItem>();
        foreach (var item in run) items.Add(InItem(item, name, body, ref done));
        return items.ToImmutable();
    }

    private static NoteItem InItem(NoteItem item, string name, ImmutableArray<NoteItem> body, ref bool done)
    {
        var part = InPart(item.Part, name, body, ref done);
        return item with { Part = part, Between = item.Between is null ? null : InItem(item.Between, name, body, ref done) };
    }

    private static Note InPart(Note part, string name, ImmutableArray<NoteItem> body, ref bool done)
    {
        if (done) return part;
        switch (part)
        {
            case Note.Use use when use.Group == name:
                done = true;
                return new Note.Bracket(name, body);
            case Note.Bracket bracket:
                return bracket with { Run = InRun(bracket.Run, name, body, ref done) };
            case Note.Mirror mirror:
                var half = InRun(mirror.Half, name, body, ref done);
                return new Note.Mirror(half, mirror.Centre is null ? null : InItem(mirror.Centre, name, body, ref done));
            case Note.Backwards backwards:
                return new Note.Backwards(InPart(backwards.Part, name, body, ref done));
            default:
                return part;
        }
    }

    private static long Beads(NoteOrder order)
    {
        var sizes = new Dictionary<string, long>();
        foreach (var (name, run, _) in order.Written.Reverse()) sizes[name] = Run(run);
        return Run(order.Items);

        long Run(ImmutableArray<NoteItem> run) => run.Sum(Item);

        long Item(NoteItem item) => (item.Count * Part(item.Part)) + (item.Between is null ? 0 : (item.Count - 1) * Item(item.Between));

        long Part(Note part) => part switch
        {
            Note.Bead => 1,
            Note.Use use => sizes.GetValueOrDefault(use.Group, 1000), // named in place somewhere: a guess that is high enough will do
            Note.Bracket bracket => Run(bracket.Run),
            Note.Mirror mirror => (2 * Run(mirror.Half)) + (mirror.Centre is null ? 0 : Item(mirror.Centre)),
            Note.Backwards backwards => Part(backwards.Part),
            _ => throw new InvalidOperationException(),
        };
    }
}
