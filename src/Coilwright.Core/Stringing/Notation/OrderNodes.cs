using System.Collections.Immutable;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>A part of an order's tree. Immutable.</summary>
/// <remarks>The <see cref="Id"/> is stable: after <see cref="OrderTree.Replace(TextSpan, string)"/> every part outside the replaced text, and every part that
/// stands round it, keeps its id. The span is that of the text without the blanks and comments before and after it.</remarks>
public abstract class OrderNode
{
    private protected OrderNode(int id, TextSpan span) => (Id, Span) = (id, span);

    /// <summary>Stable id, unique in its tree, from 1.</summary>
    public int Id { get; }

    /// <summary>Where it stands in the text.</summary>
    public TextSpan Span { get; }

    /// <summary>The parts directly inside, in the order of the text.</summary>
    public abstract IEnumerable<OrderNode> Children { get; }
}

/// <summary>What stands on the top level of an order: an item that is strung, or a group written down.</summary>
public abstract class OrderEntry : OrderNode
{
    private protected OrderEntry(int id, TextSpan span) : base(id, span) { }
}

/// <summary>A name as written: of a bead, of a group used, or of a group being named.</summary>
public sealed class OrderName : OrderNode
{
    internal OrderName(int id, TextSpan span, string text, bool isWellFormed) : base(id, span) => (Text, IsWellFormed) = (text, isWellFormed);

    /// <summary>The name as written.</summary>
    public string Text { get; }

    /// <summary>Whether it matches <c>[a-z][a-z0-9-]*</c> and is not reserved; a fault tells of it when not.</summary>
    public bool IsWellFormed { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => [];
}

/// <summary>A count with its x, where one is written.</summary>
public sealed class OrderCount : OrderNode
{
    internal OrderCount(int id, TextSpan span, int value) : base(id, span) => Value = value;

    /// <summary>How many, 1 to <see cref="OrderLimits.Count"/>; 1 where a fault tells that the count is out of range.</summary>
    public int Value { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => [];
}

/// <summary>Items one after another.</summary>
public sealed class OrderRun : OrderNode
{
    internal OrderRun(int id, TextSpan span, ImmutableArray<OrderItem> items) : base(id, span) => Items = items;

    /// <summary>The items. Empty only where a fault tells of it.</summary>
    public ImmutableArray<OrderItem> Items { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => Items;
}

/// <summary>A part, how many times, and what goes between: <c>5 round with 2 disc between</c>.</summary>
public sealed class OrderItem : OrderEntry
{
    internal OrderItem(int id, TextSpan span, OrderCount? count, OrderPart? part, OrderItem? separator) : base(id, span) =>
        (Count, Part, Separator) = (count, part, separator);

    /// <summary>The count as written; null when there is none, which means one.</summary>
    public OrderCount? Count { get; }

    /// <summary>How many times the part is strung.</summary>
    public int Times => Count?.Value ?? 1;

    /// <summary>What is strung; null only where a fault tells of it.</summary>
    public OrderPart? Part { get; }

    /// <summary>What goes between two of the part; it has no separator of its own. Null when nothing does.</summary>
    public OrderItem? Separator { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children
    {
        get
        {
            if (Count is not null) yield return Count;
            if (Part is not null) yield return Part;
            if (Separator is not null) yield return Separator;
        }
    }
}

/// <summary>A group written down on a line of its own, not strung there: <c>cluster = 2 chip, disc, 3 chip</c>.</summary>
public sealed class OrderDefinition : OrderEntry
{
    internal OrderDefinition(int id, TextSpan span, OrderName name, OrderRun run) : base(id, span) => (Name, Run) = (name, run);

    /// <summary>The group's name.</summary>
    public OrderName Name { get; }

    /// <summary>What the group strings.</summary>
    public OrderRun Run { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => [Name, Run];
}

/// <summary>What an item strings.</summary>
public abstract class OrderPart : OrderNode
{
    private protected OrderPart(int id, TextSpan span) : base(id, span) { }
}

/// <summary>A bead, or a group used by its name.</summary>
public sealed class OrderNameUse : OrderPart
{
    internal OrderNameUse(int id, TextSpan span, OrderName name) : base(id, span) => Name = name;

    /// <summary>The name.</summary>
    public OrderName Name { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => [Name];
}

/// <summary>A bracket: <c>(round, disc)</c>, or with a name before it a group strung and named at once: <c>focal-group (disc, stone, disc)</c>.</summary>
public sealed class OrderBracket : OrderPart
{
    internal OrderBracket(int id, TextSpan span, OrderName? name, OrderRun run) : base(id, span) => (Name, Run) = (name, run);

    /// <summary>The name that the bracket gives to what is in it; null when it has none.</summary>
    public OrderName? Name { get; }

    /// <summary>What is in the bracket.</summary>
    public OrderRun Run { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => Name is null ? [Run] : [Name, Run];
}

/// <summary>A run and then the same run from its other end: <c>mirror (a, b) around c</c> strings a b c b a.</summary>
public sealed class OrderMirror : OrderPart
{
    internal OrderMirror(int id, TextSpan span, OrderRun half, OrderItem? centre) : base(id, span) => (Half, Centre) = (half, centre);

    /// <summary>The first half, as strung from the starting end.</summary>
    public OrderRun Half { get; }

    /// <summary>What stands once in the middle, not reversed; null when nothing does.</summary>
    public OrderItem? Centre { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => Centre is null ? [Half] : [Half, Centre];
}

/// <summary>A name or bracket strung from its other end: <c>backwards cluster</c>.</summary>
public sealed class OrderBackwards : OrderPart
{
    internal OrderBackwards(int id, TextSpan span, OrderPart part) : base(id, span) => Part = part;

    /// <summary>What is strung from its other end: a name use or a bracket.</summary>
    public OrderPart Part { get; }

    /// <inheritdoc/>
    public override IEnumerable<OrderNode> Children => [Part];
}
