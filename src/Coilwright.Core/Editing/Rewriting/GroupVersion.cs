using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>One way in which a group of the text comes to be strung: every stringing of it that is marked alike.</summary>
internal sealed class GroupVersion
{
    public GroupVersion(WrittenGroup group, Mark[] marks, int length)
    {
        Group = group;
        Regrouping = marks.Select(mark => mark.Doing).OfType<Regrouping>().FirstOrDefault(_ => marks.Any(IsOfGroup));
        Body = [.. marks.Where(mark => !IsOfGroup(mark)).Select(mark => mark.Inside())];
        IsEmpty = Marks.Empty(Body, length);
        Name = group.Name;

        bool IsOfGroup(Mark mark) => mark is { Depth: 0, Doing: Marking.Regrouping } && mark.First == 0 && mark.Count == length;
    }

    public WrittenGroup Group { get; }

    /// <summary>Marks on what it strings.</summary>
    public Mark[] Body { get; }

    /// <summary>What is done to it as a group.</summary>
    public Regrouping? Regrouping { get; }

    /// <summary>Whether nothing of it is left.</summary>
    public bool IsEmpty { get; }

    /// <summary>Whether it is to be named no more.</summary>
    public bool IsUngrouped => Regrouping is Ungrouping;

    /// <summary>Whether it stands in the text under a name.</summary>
    public bool IsNamed => !IsEmpty && !IsUngrouped;

    /// <summary>Whether it stands at the bracket that names the group: then it is written down there and nowhere else.</summary>
    public bool IsAtBracket { get; set; }

    /// <summary>Its name afterwards.</summary>
    public string Name { get; set; }

    /// <summary>A use of it by the group's name; null where only the bracket that names it strings it, or where it is only put in.</summary>
    public OrderNameUse? Use { get; set; }
}

/// <summary>A group that the text writes down, and all that becomes of it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Run">What it strings.</param>
/// <param name="Bracket">The bracket that names it where it is strung; null when it stands on a line of its own.</param>
internal sealed record WrittenGroup(string Name, OrderRun Run, OrderBracket? Bracket)
{
    /// <summary>Its versions in the order in which they were met.</summary>
    public List<GroupVersion> Versions { get; } = [];

    /// <summary>The version that keeps the place where the group is written down; null when none does.</summary>
    public GroupVersion? Kept { get; set; }

    /// <summary>Where it is named, or written down, in text that is not strung: those places follow whatever becomes of it.</summary>
    public List<OrderPart> Unstrung { get; } = [];

    /// <summary>Whether the bracket that names the group stays where it is, with whatever version.</summary>
    public bool IsBracketThere => Versions.Exists(version => version.IsAtBracket);
}
