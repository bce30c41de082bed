using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>How much a part of an order strings once everything is counted out. Saturates far above the limits and never overflows.</summary>
/// <param name="Beads">Beads.</param>
/// <param name="Groups">Stringings of named groups.</param>
/// <param name="Depth">How deep brackets, mirrors with a centre and groups stand inside one another; 0 for a bead.</param>
/// <param name="IsTold">Whether a fault has told that something in it is too deep, so that what is around it need not tell it again.</param>
internal readonly record struct OrderMeasure(long Beads, long Groups, int Depth, bool IsTold)
{
    public const long Most = 1_000_000_000_000_000;

    public static readonly OrderMeasure Nothing;

    public static readonly OrderMeasure Bead = new(1, 0, 0, false);

    public bool IsTooDeep => Depth > OrderLimits.Depth && !IsTold;

    /// <summary>This and then another.</summary>
    public OrderMeasure Then(OrderMeasure other) =>
        new(Math.Min(Most, Beads + other.Beads), Math.Min(Most, Groups + other.Groups), Math.Max(Depth, other.Depth), IsTold || other.IsTold);

    public OrderMeasure Times(int count) => this with { Beads = Multiplied(Beads, count), Groups = Multiplied(Groups, count) };

    public OrderMeasure OneDeeper() => this with { Depth = Depth + 1 };

    private static long Multiplied(long size, int count) => count > 0 && size > Most / count ? Most : size * count;
}

/// <summary>The groups named in an order's tree and what every name in it means. Finds unknown names, clashes of names, groups inside
/// themselves, and how much is strung, all without stringing anything.</summary>
internal sealed class OrderGroups
{
    private readonly OrderTree _tree;
    private readonly OrderFaultList _faults = new();
    private readonly List<Group> _groups = [];
    private readonly Dictionary<OrderBracket, int> _bracketGroups = [];
    private readonly Dictionary<string, int> _beads = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _byName = new(StringComparer.Ordinal);
    private readonly List<(int Owner, OrderName Name)> _uses = [];

    public OrderGroups(OrderTree tree, IReadOnlyList<string> beadIds)
    {
        _tree = tree;
        for (var i = 0; i < beadIds.Count; i++) _beads.TryAdd(beadIds[i], i);
        foreach (var entry in tree.Entries)
        {
            if (entry is OrderDefinition definition) AddGroup(-1, definition.Name, definition.Run);
            else if (entry is OrderItem item) Collect(-1, item);
        }
        LookUpUses();
        var sound = MeasureGroups();
        if (sound) MeasureOrder();
    }

    /// <summary>What is wrong, in no order.</summary>
    public OrderFaultList Faults => _faults;

    /// <summary>Names of the groups, as first written.</summary>
    public IEnumerable<string> Names => _byName.Keys;

    /// <summary>What the whole order strings. Only when there are no faults.</summary>
    public OrderMeasure Whole { get; private set; }

    /// <summary>The index of a bead of this id; -1 when there is none.</summary>
    public int Bead(string name) => _beads.GetValueOrDefault(name, -1);

    /// <summary>What the group of a name strings. Only for names that are groups.</summary>
    public OrderRun Run(string name) => _groups[_byName[name]].Run;

    // Names --------------------------------------------------------------------------------------------------------------------------------

    private int AddGroup(int owner, OrderName name, OrderRun run)
    {
        var index = _groups.Count;
        _groups.Add(new Group(name, run));
        if (owner >= 0) _groups[owner].Uses.Add((index, name));
        if (name.IsWellFormed)
        {
            if (_beads.ContainsKey(name.Text))
            {
                _faults.Add(name.Span.Start, FaultCodes.OrderGroupIsBead, name.Text);
            }
            else if (!_byName.TryAdd(name.Text, index) && !_faults.IsFull)
            {
                var (line, column) = _tree.Places.Of(_groups[_byName[name.Text]].Name.Span.Start);
                _faults.Add(name.Span.Start, FaultCodes.OrderGroupTwice, name.Text,
                    ("firstLine", OrderFaultList.Number(line)), ("firstColumn", OrderFaultList.Number(column)));
            }
        }
        foreach (var item in run.Items) Collect(index, item);
        return index;
    }

    private void Collect(int owner, OrderItem item)
    {
        if (item.Part is not null) Collect(owner, item.Part);
        if (item.Separator is not null) Collect(owner, item.Separator);
    }

    private void Collect(int owner, OrderPart part)
    {
        switch (part)
        {
            case OrderNameUse use:
                _uses.Add((owner, use.Name));
                break;
            case OrderBracket { Name: not null } bracket:
                _bracketGroups.Add(bracket, AddGroup(owner, bracket.Name, bracket.Run));
                break;
            case OrderBracket bracket:
                foreach (var item in bracket.Run.Items) Collect(owner, item);
                break;
            case OrderMirror mirror:
                foreach (var item in mirror.Half.Items) Collect(owner, item);
                if (mirror.Centre is not null) Collect(owner, mirror.Centre);
                break;
            case OrderBackwards backwards:
                Collect(owner, backwards.Part);
                break;
        }
    }

    private void LookUpUses()
    {
        foreach (var (owner, name) in _uses)
        {
            if (_beads.ContainsKey(name.Text)) continue;
            if (_byName.TryGetValue(name.Text, out var group))
            {
                if (owner >= 0) _groups[owner].Uses.Add((group, name));
            }
            else if (!_faults.IsFull && name.IsWellFormed && !_tree.Hidden.Contains(name.Text))
            {
                _faults.Add(name.Span.Start, Fault.Of(FaultCodes.OrderUnknownName, "", OrderFaultList.Clipped(name.Text)), name.Text);
            }
        }
    }

    // Measures -----------------------------------------------------------------------------------------------------------------------------

    /// <summary>Measures every group once, those inside it first. False when some group contains itself.</summary>
    /// <remarks>With its own stack: a hostile text can chain a hundred thousand groups.</remarks>
    private bool MeasureGroups()
    {
        var sound = true;
        var path = new Stack<(int Group, int NextUse)>();
        var ringsTold = new HashSet<(int, int)>();
        for (var root = 0; root < _groups.Count; root++)
        {
            if (_groups[root].State == State.Measured) continue;
            Open(root);
            while (path.TryPop(out var top))
            {
                var group = _groups[top.Group];
                if (top.NextUse == group.Uses.Count)
                {
                    Measure(group);
                    continue;
                }
                path.Push((top.Group, top.NextUse + 1));
                var inner = group.Uses[top.NextUse].Group;
                if (_groups[inner].State == State.Unseen)
                {
                    Open(inner);
                }
                else if (_groups[inner].State == State.Open)
                {
                    sound = false;
                    if (ringsTold.Add((top.Group, inner)) && !_faults.IsFull) TellRing(path, inner);
                }
            }
        }
        return sound;

        void Open(int group)
        {
            _groups[group].State = State.Open;
            path.Push((group, 0));
        }
    }

    /// <summary>Tells that a group contains itself: at the use inside it that leads back to it.</summary>
    private void TellRing(Stack<(int Group, int NextUse)> path, int start)
    {
        const int namesTold = 10;
        var ring = path.TakeWhile(step => step.Group != start).Select(step => step.Group).Reverse().Prepend(start).ToList();
        var first = path.First(step => step.Group == start);
        var use = _groups[start].Uses[first.NextUse - 1].Name;
        var names = ring.Take(namesTold).Select(group => _groups[group].Name.Text).ToList();
        if (ring.Count > namesTold) names.Add("…");
        names.Add(_groups[start].Name.Text);
        _faults.Add(use.Span.Start, FaultCodes.OrderGroupInItself, _groups[start].Name.Text, ("path", string.Join(" > ", names)));
    }

    private void Measure(Group group)
    {
        var measure = Of(group.Run).OneDeeper();
        if (measure.IsTooDeep)
        {
            TellTooDeep(group.Name);
            measure = measure with { IsTold = true };
        }
        group.Measure = measure with { Groups = Math.Min(OrderMeasure.Most, measure.Groups + 1) };
        group.State = State.Measured;
    }

    private void MeasureOrder()
    {
        var whole = OrderMeasure.Nothing;
        OrderItem? last = null;
        OrderItem? tooMany = null;
        OrderItem? tooManyGroups = null;
        foreach (var entry in _tree.Entries)
        {
            if (entry is not OrderItem item) continue;
            last = item;
            var measure = Of(item);
            if (measure.IsTooDeep) TellTooDeep(item);
            whole = whole.Then(measure);
            if (whole.Beads > OrderLimits.Beads) tooMany ??= item;
            if (whole.Groups > OrderLimits.GroupStringings) tooManyGroups ??= item;
        }
        Whole = whole;
        if (tooMany is not null) TellTooMany(tooMany, FaultCodes.OrderTooMany, whole.Beads, OrderLimits.Beads);
        else if (tooManyGroups is not null) TellTooMany(tooManyGroups, FaultCodes.OrderTooManyGroups, whole.Groups, OrderLimits.GroupStringings);
        if (last is null && _tree.IsWhole) _faults.Add(_tree.Text.Length, FaultCodes.OrderEmpty, "");
    }

    private void TellTooDeep(OrderNode node) =>
        _faults.Add(node.Span.Start, FaultCodes.OrderTooDeep, _tree.TextOf(node.Span), ("max", OrderFaultList.Number(OrderLimits.Depth)));

    private void TellTooMany(OrderItem item, string code, long found, int max) =>
        _faults.Add(item.Span.Start, code, found < OrderMeasure.Most ? OrderFaultList.Number(found) : "", ("max", OrderFaultList.Number(max)));

    private OrderMeasure Of(OrderRun run)
    {
        var measure = OrderMeasure.Nothing;
        foreach (var item in run.Items) measure = measure.Then(Of(item));
        return measure;
    }

    private OrderMeasure Of(OrderItem item)
    {
        var measure = (item.Part is null ? OrderMeasure.Nothing : Of(item.Part)).Times(item.Times);
        return item.Separator is null ? measure : measure.Then(Of(item.Separator).Times(item.Times - 1));
    }

    private OrderMeasure Of(OrderPart part) => part switch
    {
        OrderNameUse use => _byName.TryGetValue(use.Name.Text, out var group) ? _groups[group].Measure : OrderMeasure.Bead,
        OrderBracket bracket => _bracketGroups.TryGetValue(bracket, out var group) ? _groups[group].Measure : Of(bracket.Run).OneDeeper(),
        OrderMirror mirror => Of(mirror.Half).OneDeeper().Times(2).Then(mirror.Centre is null ? OrderMeasure.Nothing : Of(mirror.Centre).OneDeeper()),
        OrderBackwards backwards => Of(backwards.Part),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private enum State
    {
        Unseen,
        Open,
        Measured,
    }

    private sealed class Group(OrderName name, OrderRun run)
    {
        public OrderName Name => name;

        public OrderRun Run => run;

        /// <summary>Groups used directly inside, and where.</summary>
        public List<(int Group, OrderName Name)> Uses { get; } = [];

        public State State { get; set; }

        public OrderMeasure Measure { get; set; }
    }
}
