using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Classes;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The options of a class: times of day, breaks, shared tools, minutes of steps, how much longer a learner takes.</summary>
internal static class ClassOptions
{
    private static readonly (string Word, BenchTool Tool)[] Tools = [("shears", BenchTool.Shears), ("pliers", BenchTool.RoundNosePliers), ("file", BenchTool.File), ("glue", BenchTool.Glue), ("ruler", BenchTool.Ruler)];

    private static readonly (string Word, StepAction Action)[] Actions =
        [("cutWire", StepAction.CutWire), ("firstEnd", StepAction.FirstEnd), ("stringBeads", StepAction.StringBeads), ("lastEnd", StepAction.LastEnd), ("tryOn", StepAction.TryOn)];

    /// <summary>The tools that can be shared, in one line.</summary>
    public static string ToolWords { get; } = string.Join(", ", Tools.Select(t => t.Word));

    /// <summary>The steps of a pattern, in one line.</summary>
    public static string ActionWords { get; } = string.Join(", ", Actions.Select(a => a.Word));

    /// <summary>Reads a time of day; null when it is not given or is wrong, and then a fault is added.</summary>
    public static TimeOnly? ReadTime(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (TryTime(text, out var time)) return time;
        faults.Add(Fault.Of(UsageCodes.TimeForm, option.Name, text));
        return null;
    }

    /// <summary>Reads breaks, as <c>11:30+15</c>.</summary>
    public static ImmutableArray<ClassBreak> ReadBreaks(ParseResult parsed, Option<string[]> option, List<Fault> faults)
    {
        var breaks = ImmutableArray.CreateBuilder<ClassBreak>();
        foreach (var text in parsed.GetValue(option) ?? [])
            if (text.Split('+') is [var at, var minutes] && TryTime(at, out var time) && int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= ClassAsk.MostMinutes)
                breaks.Add(new ClassBreak(time, number));
            else
                faults.Add(Fault.Of(UsageCodes.BreakForm, option.Name, text, ("max", Language.PlainNumber(ClassAsk.MostMinutes, 0))));
        return breaks.ToImmutable();
    }

    /// <summary>Reads shared tools, as <c>shears=3</c>. That eye protection is never shared is the core's.</summary>
    public static ImmutableSortedDictionary<BenchTool, int> ReadShared(ParseResult parsed, Option<string[]> option, List<Fault> faults) =>
        Read<BenchTool, int>(parsed, option, faults, [.. Tools, ("eyeProtection", BenchTool.EyeProtection)], UsageCodes.SharedToolForm, ToolWords, ClassAsk.MostParticipants,
            text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 2 and <= ClassAsk.MostParticipants ? number : null);

    /// <summary>Reads minutes of steps, as <c>cutWire=3</c>.</summary>
    public static ImmutableSortedDictionary<StepAction, decimal> ReadMinutes(ParseResult parsed, Option<string[]> option, List<Fault> faults) =>
        Read<StepAction, decimal>(parsed, option, faults, Actions, UsageCodes.StepMinutesForm, ActionWords, ClassAsk.MostMinutes,
            text => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0 and <= ClassAsk.MostMinutes ? number : null);

    /// <summary>Reads how many times as long a learner takes; null when it is not given or is wrong, and then a fault is added.</summary>
    public static decimal? ReadFactor(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var factor) && factor is >= 1 and <= ClassAsk.MostFactor) return factor;
        faults.Add(Fault.Of(UsageCodes.FactorForm, option.Name, text, ("max", Language.PlainNumber((double)ClassAsk.MostFactor, 0))));
        return null;
    }

    private static bool TryTime(string text, out TimeOnly time) => TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out time);

    private static ImmutableSortedDictionary<TKey, TValue> Read<TKey, TValue>(ParseResult parsed, Option<string[]> option, List<Fault> faults, (string Word, TKey Key)[] known, string code, string words, int most, Func<string, TValue?> read)
        where TKey : struct, Enum where TValue : struct
    {
        var found = ImmutableSortedDictionary.CreateBuilder<TKey, TValue>();
        foreach (var text in parsed.GetValue(option) ?? [])
        {
            if (text.Split('=') is not [var word, var number] || Array.FindIndex(known, k => k.Word == word) is not (>= 0 and var at) || read(number) is not { } value)
                faults.Add(Fault.Of(code, option.Name, text, ("max", Language.PlainNumber(most, 0)), ("known", words)));
            else if (!found.TryAdd(known[at].Key, value)) faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option.Name} {word}"));
        }
        return found.ToImmutable();
    }
}
