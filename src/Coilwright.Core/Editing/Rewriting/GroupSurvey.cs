using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>Looks through a marked order for what becomes of each of its groups, before a word is written.</summary>
/// <remarks>A group is written in one place and may be strung in many. When they come to differ, one version keeps the name and the place, and the
/// others need names of their own; when the bracket that names the group goes, the group has to be written down somewhere else.</remarks>
internal sealed class GroupSurvey
{
    private readonly OrderMap _map;
    private readonly Dictionary<string, WrittenGroup> _groups = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Group, Mark[] Marks), GroupVersion> _versions = new(new VersionKey());
    private readonly HashSet<OrderNode> _seenPlain = [];

    private GroupSurvey(OrderMap map)
    {
        _map = map;
        foreach (var node in map.Tree.Nodes())
            if (node is OrderDefinition definition) _groups.Add(definition.Name.Text, new WrittenGroup(definition.Name.Text, definition.Run, null));
            else if (node is OrderBracket { Name: not null } bracket) _groups.Add(bracket.Name.Text, new WrittenGroup(bracket.Name.Text, bracket.Run, bracket));
    }

    /// <summary>Groups that are new beside others: the new name, and the one they came from.</summary>
    public List<(string Name, string From)> Renamed { get; } = [];

    /// <summary>Parts that have to be looked into although they are not marked: something in them has to be written down there.</summary>
    public HashSet<OrderNode> Touched { get; } = [];

    /// <summary>Surveys an order.</summary>
    /// <param name="map">The order.</param>
    /// <param name="items">Its items outside all groups.</param>
    /// <param name="marks">Marks on them.</param>
    /// <param name="taken">Names that no group may get.</param>
    public static GroupSurvey Of(OrderMap map, ImmutableArray<OrderItem> items, Mark[] marks, IEnumerable<string> taken)
    {
        var survey = new GroupSurvey(map);
        survey.Visit(items, marks);
        survey.VisitUnstrung();
        survey.Name([.. taken, .. survey._groups.Keys]);
        survey.Keep(items, marks);
        survey.Touch();
        return survey;
    }

    /// <summary>The group of a name; null when the text writes none.</summary>
    public WrittenGroup? Find(string name) => _groups.GetValueOrDefault(name);

    /// <summary>The version of a group that is marked so; where it is not strung, the one that is kept.</summary>
    public GroupVersion VersionOf(string group, Mark[] marks) =>
        _versions.TryGetValue((group, marks), out var version) ? version : marks.Length == 0 ? _groups[group].Kept! : throw new KeyNotFoundException(group);

    // Versions -----------------------------------------------------------------------------------------------------------------------------

    private void Visit(ImmutableArray<OrderItem> items, Mark[] marks)
    {
        foreach (var mark in marks) Visit(mark.Doing);
        var cut = RunCut.Of(items, _map.Lengths, marks);
        for (var i = 0; i < items.Length; i++) Visit(items[i], cut.Inside[i]);
    }

    private void Visit(Doing doing)
    {
        if (doing is Inserting inserting) Visit(inserting.Things);
        if (doing is not Becoming becoming) return;
        Visit(becoming.Before);
        Visit(becoming.After);
    }

    private void Visit(ImmutableArray<Thing> things)
    {
        foreach (var thing in things)
            if (thing is Thing.Group group)
            {
                if (_groups.TryGetValue(group.Name, out var written)) VisitGroup(written, [], null);
                else Visit(group.Of);
            }
    }

    private void Visit(OrderItem item, Mark[] marks)
    {
        if (marks.Length == 0 && !_seenPlain.Add(item)) return;
        if (Marks.Empty(marks, _map.Lengths.Of(item))) return;
        if (item.Times == 1)
        {
            Visit(item.Part!, marks);
            // What would be between is not strung, but it is written.
            if (item.Separator is not null) FindUnstrung(item.Separator);
            return;
        }
        foreach (var passes in ItemCut.Of(item, _map.Lengths, marks).SelectMany(stretch => stretch.Passes))
        {
            Visit(item, passes.What);
            if (passes.Between is not null) Visit(item, passes.Between);
        }
    }

    private void Visit(OrderItem item, Bit bit)
    {
        if (bit.Kind == BitKind.Part) Visit(item.Part!, bit.Marks);
        else if (bit.Kind == BitKind.Separator) Visit(item.Separator!, bit.Marks);
        else Visit(bit.Inserted!.Things);
    }

    private void Visit(OrderPart part, Mark[] marks)
    {
        switch (part)
        {
            case OrderNameUse use when _map.Lengths.KindOf(use) >= 0:
                foreach (var mark in marks) Visit(mark.Doing);
                break;
            case OrderNameUse use:
                VisitGroup(_groups[use.Name.Text], marks, use);
                break;
            case OrderBracket { Name: not null } bracket:
                VisitGroup(_groups[bracket.Name.Text], marks, null);
                break;
            case OrderBracket bracket:
                Visit(bracket.Run.Items, marks);
                break;
            case OrderBackwards backwards:
                Visit(backwards.Part, Marks.Turned(marks, _map.Lengths.Of(backwards.Part)));
                break;
            case OrderMirror mirror:
                var cut = MirrorCut.Of(mirror, _map.Lengths, marks);
                Visit(mirror.Half.Items, cut.Half);
                if (mirror.Centre is not null) Visit(mirror.Centre, cut.Centre);
                Visit(mirror.Half.Items, cut.OtherHalf);
                if (cut.Middle is { } middle) Visit(middle.Things);
                break;
        }
    }

    private void VisitGroup(WrittenGroup group, Mark[] marks, OrderNameUse? use)
    {
        if (_versions.TryGetValue((group.Name, marks), out var version))
        {
            version.Use ??= use;
            return;
        }
        version = Add(group, marks, use);
        if (!version.IsEmpty) Visit(group.Run.Items, version.Body);
    }

    private GroupVersion Add(WrittenGroup group, Mark[] marks, OrderNameUse? use)
    {
        var version = new GroupVersion(group, marks, _map.Lengths.Of(group.Run)) { Use = use };
        _versions.Add((group.Name, marks), version);
        group.Versions.Add(version);
        return version;
    }

    /// <summary>Finds what is written and not strung, and keeps the groups that are named there.</summary>
    private void VisitUnstrung()
    {
        foreach (var group in _groups.Values)
            if (group is { Bracket: null, Versions: [] })
                FindUnstrung(group.Run);
        // What one group keeps may name another.
        for (var more = true; more;)
        {
            more = false;
            foreach (var group in _groups.Values)
            {
                if (group.Versions.Exists(version => version.IsNamed) || (group.Unstrung.Count == 0 && group is not { Bracket: null, Versions: [] })) continue;
                if (group is not { Bracket: null, Versions: [] }) FindUnstrung(group.Run);
                Add(group, [], group.Unstrung.OfType<OrderNameUse>().FirstOrDefault());
                more = true;
            }
        }
    }

    private void FindUnstrung(OrderNode node)
    {
        if (node is OrderNameUse use && _groups.TryGetValue(use.Name.Text, out var group)) group.Unstrung.Add(use);
        else if (node is OrderBracket { Name: not null } bracket) _groups[bracket.Name.Text].Unstrung.Add(bracket);
        foreach (var child in node.Children) FindUnstrung(child);
    }

    // Names --------------------------------------------------------------------------------------------------------------------------------

    private void Name(HashSet<string> taken)
    {
        foreach (var version in _groups.Values.SelectMany(group => group.Versions))
            if (version.Regrouping is Renaming renaming)
                taken.Add(version.Name = renaming.Name);
        foreach (var group in _groups.Values)
        {
            var named = group.Versions.Where(version => version.IsNamed).ToList();
            group.Kept = named.Find(version => version is { Body: [], Regrouping: null }) ?? named.FirstOrDefault();
            foreach (var version in named)
            {
                if (version != group.Kept && version.Regrouping is not Renaming) version.Name = FreeName(group.Name, taken);
                if (version.Name != group.Name) Renamed.Add((version.Name, group.Name));
            }
        }
    }

    /// <summary>The group's name with the next free number: cluster is followed by cluster-2, and cluster-2 by cluster-3.</summary>
    internal static string FreeName(string name, HashSet<string> taken)
    {
        var stem = name.AsSpan().TrimEnd("0123456789").ToString();
        stem = stem.Length < name.Length && stem.Length > 1 && stem[^1] == '-' ? stem[..^1] : name;
        for (var number = 2; ; number++)
            if (string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}") is var free && taken.Add(free))
                return free;
    }

    // Places -------------------------------------------------------------------------------------------------------------------------------

    private void Keep(ImmutableArray<OrderItem> items, Mark[] marks)
    {
        KeepIn(items, marks);
        foreach (var group in _groups.Values)
            if (group is { Bracket: null, Kept: not null })
                KeepIn(group.Run.Items, group.Kept.Body);
    }

    private void KeepIn(ImmutableArray<OrderItem> items, Mark[] marks)
    {
        var cut = RunCut.Of(items, _map.Lengths, marks);
        for (var i = 0; i < items.Length; i++) KeepIn(items[i], cut.Inside[i]);
    }

    private void KeepIn(OrderItem item, Mark[] marks)
    {
        if (Marks.Empty(marks, _map.Lengths.Of(item))) return;
        if (item.Times == 1)
        {
            KeepIn(item.Part!, marks);
            if (item.Separator is not null) KeepIn(item.Separator, []);
            return;
        }
        foreach (var passes in ItemCut.Of(item, _map.Lengths, marks).SelectMany(stretch => stretch.Passes))
            foreach (var bit in passes.Between is null ? (ReadOnlySpan<Bit>)[passes.What] : [passes.What, passes.Between])
                if (bit.Kind == BitKind.Part) KeepIn(item.Part!, bit.Marks);
                else if (bit.Kind == BitKind.Separator) KeepIn(item.Separator!, bit.Marks);
    }

    /// <summary>Notes which versions stand at the brackets that name groups and stay where they are.</summary>
    private void KeepIn(OrderPart part, Mark[] marks)
    {
        switch (part)
        {
            case OrderBracket { Name: not null } bracket:
                var version = VersionOf(bracket.Name.Text, marks);
                if (version.IsAtBracket) break;
                version.IsAtBracket = true;
                KeepIn(bracket.Run.Items, version.Body);
                break;
            case OrderBracket bracket:
                KeepIn(bracket.Run.Items, marks);
                break;
            case OrderBackwards backwards:
                KeepIn(backwards.Part, Marks.Turned(marks, _map.Lengths.Of(backwards.Part)));
                break;
            case OrderMirror mirror:
                var cut = MirrorCut.Of(mirror, _map.Lengths, marks);
                KeepIn(mirror.Half.Items, cut.Half);
                if (mirror.Centre is not null) KeepIn(mirror.Centre, cut.Centre);
                KeepIn(mirror.Half.Items, cut.OtherHalf);
                break;
        }
    }

    /// <summary>Where a group's bracket lost its place, a use of the group is to write it down, so that use is looked for; and what is not strung is
    /// looked for where the group that it names changes.</summary>
    private void Touch()
    {
        var parts = new List<OrderPart>();
        foreach (var group in _groups.Values)
        {
            if (group.Kept is not { } kept) continue;
            if (group.Bracket is not null && kept is { IsAtBracket: false, Use: not null }) parts.Add(kept.Use);
            if (kept.Name != group.Name || kept.Body.Length > 0) parts.AddRange(group.Unstrung);
        }
        if (parts.Count == 0) return;
        var parents = new Dictionary<OrderNode, OrderNode>();
        foreach (var node in _map.Tree.Nodes())
            foreach (var child in node.Children)
                parents.Add(child, node);
        foreach (var part in parts)
            for (OrderNode? node = part; node is not null; node = parents.GetValueOrDefault(node))
                Touched.Add(node);
    }

    private sealed class VersionKey : IEqualityComparer<(string Group, Mark[] Marks)>
    {
        private static readonly MarksComparer Comparer = new();

        public bool Equals((string Group, Mark[] Marks) x, (string Group, Mark[] Marks) y) => x.Group == y.Group && Comparer.Equals(x.Marks, y.Marks);

        public int GetHashCode((string Group, Mark[] Marks) obj) => HashCode.Combine(obj.Group, Comparer.GetHashCode(obj.Marks));
    }
}
