namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="IdeaWords"/>.</summary>
internal static class EnglishIdeas
{
    internal static IdeaWords Make() => new()
    {
        Heading = "Ideas",
        Now = "As it is strung, {against:percent} of the groups' length lies against your wish, on average over {wrists} {wrists:wrist|wrists}.",
        NowFails = "Your wish fails on {wrists}.",
        NowHolds = "Your wish holds on every one of them.",
        SmallestCure = "The smallest change that cures it",
        FewBeads = "The best that up to three beads can do",
        Best = "The best found",
        More = "{by} more {bead}, {to} in all, {where}",
        Fewer = "{by} fewer {bead}, {to} in all, {where}",
        Where = "{?before:after {before} }({?last:beads {first} to {last}}{?one:bead {one}}){?after: before {after}}",
        Brings = "What lies against your wish goes from {before:percent} to {after:percent}.",
        Holds = "Your wish then holds on every wrist looked at.",
        Fails = "Your wish then fails on {wrists}.",
        Longer = "The beads take {mm:size} more wire.",
        Shorter = "The beads take {mm:size} less wire.",
        SameLength = "The beads take as much wire as before.",
        Cut = "To cut: {after:cut} of wire, {before:cut} so far.",
        Focal = "The focal comes to lie on turn {turn}, {angleDeg:place}.",
        NoSmaller = "Every smaller change was tried: none holds on all wrists.",
        PerhapsSmaller = "Not every smaller change could be tried; one may do as well.",
        NoBetter = "No other counts that are allowed do better.",
        PerhapsAnother = "Not every change of up to three beads could be looked at; another may do better.",
        NoBetterFew = "No other change of up to three beads does better.",
        PerhapsBetter = "The best there is may be better by up to {gap:percent}, no more.",
        Ways = "{gaps} {gaps:run|runs} of spacers and connectors may change, in {ways} ways.",
        Stopped = "The search was stopped before its end.",
        NoWish = "The piece has no wish for what lines up, so no order is better than another. Wish for mixed or for columns, then ask again.",
        NoGap = "Between the groups there is no run of spacers or connectors that may change. Give a bead the role of spacer or connector, or free it under the wishes.",
        NoneAllowed = "No order is allowed. What cannot be kept together: {rules}.",
        RuleLength = "the length of the piece",
        RuleOnHand = "the {bead} to hand",
        And = " and ",
        NoneBetter = "No allowed change does better than what is strung.",
        Written = "The best is written to {file}.",
        NotWritten = "{file} was not written: there is nothing better to write.",
    };
}
