using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Core.Settle;

namespace Coilwright.Cli.Calling;

/// <summary>The option of how the arm is held.</summary>
internal static class ArmOption
{
    private static readonly ImmutableArray<(string Word, ArmPose Pose)> Poses =
    [
        ("top-up", ArmPose.TopUp), ("underside-up", ArmPose.UndersideUp), ("on-its-side", ArmPose.OnItsSide), ("on-the-other-side", ArmPose.OnTheOtherSide), ("hanging", ArmPose.Hanging), ("held-up", ArmPose.HeldUp),
    ];

    /// <summary>The words for it.</summary>
    public static string Words { get; } = string.Join(", ", Poses.Select(p => p.Word));

    /// <summary>Reads it; the usual where it is not given or not known, and then a fault is added.</summary>
    public static ArmPose Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return ArmPose.TopUp;
        foreach (var (word, pose) in Poses)
            if (word.Equals(text, StringComparison.OrdinalIgnoreCase)) return pose;
        faults.Add(Fault.Of(FaultCodes.WordUnknown, option.Name, text, ("known", Words), ("nearest", NearestName.Of(text, [.. Poses.Select(p => p.Word)]) ?? "")));
        return ArmPose.TopUp;
    }
}
