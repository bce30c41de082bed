using System.Collections.Immutable;

namespace Coilwright.Core.Editing.Marking;

/// <summary>What is done at a mark. Places that are to stay alike share one instance, which is how alike places are known.</summary>
internal abstract class Doing
{
    private Doing? _reversed;

    /// <summary>The same for a stretch that is written from its other end.</summary>
    public Doing Reversed
    {
        get
        {
            if (_reversed is null)
            {
                _reversed = Turned();
                _reversed._reversed = this;
            }
            return _reversed;
        }
    }

    /// <summary>A new one for the other direction, or itself when the direction makes no difference.</summary>
    protected virtual Doing Turned() => this;
}

/// <summary>Things are put into a gap.</summary>
internal sealed class Inserting(ImmutableArray<Thing> things, int times = 1) : Doing
{
    /// <summary>The things, in the direction of the text.</summary>
    public ImmutableArray<Thing> Things => things;

    /// <summary>How many times they are put there.</summary>
    public int Times => times;

    protected override Doing Turned() => Marking.Things.IsSameFromBothEnds(things) ? this : new Inserting(Marking.Things.Reversed(things), times);
}

/// <summary>A bead is taken out, replaced, or given company that belongs to the same place in the text.</summary>
internal sealed class Becoming(ImmutableArray<Thing> before, bool stays, ImmutableArray<Thing> after) : Doing
{
    /// <summary>What stands before it; all that stands instead of it.</summary>
    public ImmutableArray<Thing> Before => before;

    /// <summary>Whether it is still there.</summary>
    public bool Stays => stays;

    /// <summary>What stands after it; nothing when it is gone.</summary>
    public ImmutableArray<Thing> After => after;

    /// <summary>Whether nothing stands there any more.</summary>
    public bool IsGone => !stays && before.IsEmpty && after.IsEmpty;

    protected override Doing Turned()
    {
        if (stays) return new Becoming(Marking.Things.Reversed(after), true, Marking.Things.Reversed(before));
        return Marking.Things.IsSameFromBothEnds(before) ? this : new Becoming(Marking.Things.Reversed(before), false, []);
    }
}

/// <summary>A stretch of neighbouring beads is made into something.</summary>
/// <remarks>Told apart by direction even where that makes no difference to what is made, so that one written stretch that is strung both ways is known
/// to be marked alike.</remarks>
internal abstract class Wrapping : Doing;

/// <summary>The stretch becomes a named group.</summary>
internal sealed class Grouping(string name) : Wrapping
{
    public string Name => name;

    protected override Doing Turned() => new Grouping(name);
}

/// <summary>The stretch is strung so many times in all.</summary>
internal sealed class Repeating(int times) : Wrapping
{
    public int Times => times;

    protected override Doing Turned() => new Repeating(times);
}

/// <summary>The stretch is followed by itself from its other end.</summary>
internal sealed class Mirroring(int centre, bool before) : Wrapping
{
    /// <summary>How many of its beads, at the end where the halves meet, stand once in the middle.</summary>
    public int Centre => centre;

    /// <summary>Whether the other half comes before it, as where the same words are strung from their other end.</summary>
    public bool Before => before;

    protected override Doing Turned() => new Mirroring(centre, !before);
}

/// <summary>A stringing of a group is changed as a group.</summary>
internal abstract class Regrouping : Doing;

/// <summary>It is a group no more; its beads stay.</summary>
internal sealed class Ungrouping : Regrouping;

/// <summary>It has another name.</summary>
internal sealed class Renaming(string name) : Regrouping
{
    public string Name => name;
}
