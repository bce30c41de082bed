using System.Collections.Frozen;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English words that stand by themselves.</summary>
internal static class EnglishTerms
{
    internal static Terms Make() => new()
    {
        Mm = "mm",
        Inch = "in",
        Gram = "g",
        ThisFile = "this file",
        AndMore = "{list} and {more} more",
        Places = new Places
        {
            Top = "on top",
            PastTop = "past the top",
            QuarterPast = "a quarter turn past the top",
            BeforeUnderside = "before the underside",
            Underside = "on the underside",
            PastUnderside = "past the underside",
            QuarterBefore = "a quarter turn before the top",
            BeforeTop = "before the top",
        },
        FaultTypes = new Dictionary<string, string>
        {
            [Core.Faults.FaultTypes.Text] = "text in quotes",
            [Core.Faults.FaultTypes.Number] = "a number",
            [Core.Faults.FaultTypes.WholeNumber] = "a whole number",
            [Core.Faults.FaultTypes.List] = "a list in square brackets",
            [Core.Faults.FaultTypes.Fields] = "a set of fields in curly brackets",
            [Core.Faults.FaultTypes.YesOrNo] = "true or false, without quotes",
            [Core.Faults.FaultTypes.Nothing] = "null",
            [Core.Faults.FaultTypes.NumberOrWord] = "a number, or one of the known words in quotes",
            [Core.Faults.FaultTypes.TextOrFields] = "text in quotes, or a set of fields in curly brackets",
            [Core.Faults.FaultTypes.TwoNumbers] = "two numbers in square brackets",
        }.ToFrozenDictionary(),
        OrderExpectations = new Dictionary<string, string>
        {
            [Core.Faults.OrderExpectations.Item] = "a count, a bead, a group or a bracket",
            [Core.Faults.OrderExpectations.Part] = "a bead, a group or a bracket",
            [Core.Faults.OrderExpectations.NameOrBracket] = "the name of a bead or group, or a bracket",
            [Core.Faults.OrderExpectations.OpeningBracket] = "an opening bracket",
            [Core.Faults.OrderExpectations.Between] = "the word \"between\"",
            [Core.Faults.OrderExpectations.CommaOrLineEnd] = "a comma or the end of the line",
            [Core.Faults.OrderExpectations.CommaOrClosingBracket] = "a comma, the end of the line or a closing bracket",
            [Core.Faults.OrderExpectations.LineOfItsOwn] = "a comma, for a group is written down with = on a line of its own",
        }.ToFrozenDictionary(),
        FaultDetails = new Dictionary<string, string>
        {
            [Core.Faults.FaultDetails.Empty] = "there is nothing in it",
            [Core.Faults.FaultDetails.TrailingComma] = "a comma stands before the closing bracket",
            [Core.Faults.FaultDetails.Comment] = "a comment stands here; comments belong in the order's text",
            [Core.Faults.FaultDetails.TextNotClosed] = "the closing quote is missing",
            [Core.Faults.FaultDetails.Escape] = "the backslash is followed by something that it cannot be followed by",
            [Core.Faults.FaultDetails.AfterTheEnd] = "something follows after the last bracket",
            [Core.Faults.FaultDetails.Unexpected] = "something else should stand here",
            [Core.Faults.FaultDetails.NotFound] = "there is no such file or folder",
            [Core.Faults.FaultDetails.IsFolder] = "it is a folder",
            [Core.Faults.FaultDetails.NotAllowed] = "its rights do not allow it",
            [Core.Faults.FaultDetails.DiskFull] = "the disk is full",
            [Core.Faults.FaultDetails.PathForm] = "this cannot be the name of a file",
            [Core.Faults.FaultDetails.Other] = "{?reason:{reason}}",
        }.ToFrozenDictionary(),
        Severities = new Dictionary<Severity, string>
        {
            [Severity.Info] = "note",
            [Severity.Warn] = "look",
            [Severity.Stop] = "stop",
        }.ToFrozenDictionary(),
        NoticeWords = new Dictionary<string, string>
        {
            ["start"] = "start",
            ["finish"] = "finish",
            ["past"] = "past",
            ["before"] = "before",
        }.ToFrozenDictionary(),
        LiningUp = new Dictionary<LiningUpWord, string>
        {
            [LiningUpWord.LinesUp] = "It lines up: like lies over like from turn to turn.",
            [LiningUpWord.Between] = "In between: some places line up, others do not.",
            [LiningUpWord.Mixed] = "It is mixed: like seldom lies over like.",
            [LiningUpWord.TooLittle] = "Too little lies over anything to say how it lines up.",
        }.ToFrozenDictionary(),
        Passing = new Dictionary<Passes, string>
        {
            [Passes.Yes] = "goes on{?clearanceMm:, {clearanceMm:fine} to spare}",
            [Passes.Tight] = "goes on tightly{?clearanceMm:, {clearanceMm:fine} to spare}: try a few",
            [Passes.No] = "does not go on: needs a hole of {neededBoreMm:fine}",
            [Passes.Unknown] = "hole not known: needs {neededBoreMm:fine}",
        }.ToFrozenDictionary(),
        WornBy = new Dictionary<WornBy, string>
        {
            [WornBy.Coil] = "the coil's own size",
            [WornBy.Wrist] = "the wrist opens the coil",
            [WornBy.Given] = "as you measured it",
        }.ToFrozenDictionary(),
        Roles = new Dictionary<Role, string>
        {
            [Role.Main] = "main",
            [Role.Accent] = "accent",
            [Role.Spacer] = "spacer",
            [Role.Connector] = "connector",
            [Role.Focal] = "focal",
        }.ToFrozenDictionary(),
        Shapes = new Dictionary<string, string>
        {
            ["round"] = "round",
            ["rondelle"] = "rondelle",
            ["faceted-rondelle"] = "faceted rondelle",
            ["bicone"] = "bicone",
            ["cube"] = "cube",
            ["coin"] = "coin",
            ["oval"] = "oval",
            ["barrel"] = "barrel",
            ["tube"] = "tube",
            ["curved-tube"] = "curved tube",
            ["chip"] = "chip",
            ["nugget"] = "nugget",
            ["drop"] = "drop",
            ["heishi"] = "heishi",
            ["seed-bead"] = "seed bead",
            ["focal"] = "focal",
        }.ToFrozenDictionary(),
    };

    internal static FrozenDictionary<string, string> Fields() => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["id"] = "the name in the order",
        ["name"] = "the name",
        ["title"] = "the title",
        ["format"] = "the format",
        ["beads"] = "the list of beads",
        ["shape"] = "the shape",
        ["lengthMm"] = "the length along the hole",
        ["lengthRangeMm"] = "the range of lengths",
        ["toleranceMm"] = "the tolerance",
        ["row"] = "the measured row",
        ["count"] = "the count",
        ["totalMm"] = "the whole length",
        ["widthMm"] = "the width",
        ["thicknessMm"] = "the thickness",
        ["boreMm"] = "the hole",
        ["holeOffsetMm"] = "the offset of the hole",
        ["endFaceMm"] = "the flat at each end",
        ["wallMm"] = "the wall",
        ["curveRadiusMm"] = "the radius of the curve",
        ["lengthIs"] = "what the length is measured along",
        ["matched"] = "the mark that it matches the coil",
        ["seat"] = "the drilled back",
        ["clearMm"] = "the room under the overhang",
        ["colours"] = "the colour",
        ["coating"] = "the coating",
        ["material"] = "the material",
        ["densityGPerCm3"] = "the density",
        ["massG"] = "the mass",
        ["role"] = "the role",
        ["shows"] = "how much it shows",
        ["pack"] = "the pack",
        ["unit"] = "the unit of sale",
        ["price"] = "the price",
        ["lot"] = "the lot",
        ["aliases"] = "the other names",
        ["stringingMaterial"] = "the wire",
        ["kind"] = "the kind",
        ["wireMm"] = "the thickness of the wire",
        ["gauge"] = "the gauge",
        ["steel"] = "the steel",
        ["loopMm"] = "the measured loop",
        ["insideMm"] = "the inside diameter",
        ["centreMm"] = "the diameter on the wire's centre",
        ["cutMm"] = "the wire cut",
        ["ends"] = "the ends",
        ["start"] = "the starting end",
        ["finish"] = "the finish",
        ["measuredMm"] = "the practice bend",
        ["gripMm"] = "the wire for the pliers",
        ["spareMm"] = "the spare wire",
        ["overlapMm"] = "the overlap",
        ["wearer"] = "the wearer",
        ["wristMm"] = "the wrist",
        ["easeMm"] = "the ease",
        ["bearingReachMm"] = "the bearing reach",
        ["startAngleDeg"] = "the place of the starting end",
        ["focalOnTop"] = "the wish for the focal on top",
        ["measured"] = "the measured rows",
        ["order"] = "the stringing order",
        ["text"] = "the order's text",
        ["list"] = "the order's list",
        ["group"] = "the group's name",
        ["of"] = "the group's beads",
        ["wishes"] = "the wishes",
        ["liningUp"] = "the wish for lining up",
        ["turns"] = "the number of turns",
        ["focalWithinDeg"] = "how far off the top the focal may lie",
        ["--wrist"] = "the wrist",
        ["--worn-circumference"] = "the worn circumference",
        ["--seed"] = "the seed",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Why a reading cannot be had, by code.</summary>
    internal static FrozenDictionary<string, string> WhyNot() => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["nothing-over"] = "Nothing lies over anything: there is no next turn.",
        ["too-little-over"] = "Too little lies over anything to say.",
        ["no-groups"] = "There are no groups to judge by.",
        ["no-group-over"] = "No group lies over another.",
        ["chance-nought"] = "No two beads are alike, so by luck nothing would line up and there is nothing to compare with.",
        [WhyNotCodes.TurnsNotSaid] = "The piece does not say how many turns it was designed for.",
        [WhyNotCodes.NoEndLoop] = "There is no end loop at this end.",
        [WhyNotCodes.BoreUnknown] = "The hole is not known.",
        [WhyNotCodes.AnyLength] = "A bead of any length passes.",
        [WhyNotCodes.MassUnknown] = "The mass of a bead is not known: write its material, or weigh some.",
        [WhyNotCodes.SteelUnknown] = "The steel of the wire is not known.",
        [WhyNotCodes.NoFocal] = "The piece has no focal.",
        [WhyNotCodes.NoRepeat] = "The order is no plain repeat.",
        [WhyNotCodes.NotCut] = "No wire is cut yet.",
        [WhyNotCodes.NoWrist] = "It suits no wrist as it is.",
        [WhyNotCodes.OneBead] = "There is only one bead of this kind.",
        [WhyNotCodes.NoneOver] = "None of this kind lies over anything.",
        [WhyNotCodes.NotOnThisWrist] = "Too little lies over anything on this wrist to say.",
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
