using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Core.Settle;

namespace Coilwright.Cli.Calling;

/// <summary>The option of how the arm is held.</summary>
internal static class ArmOption
{
    /// <summary>The words for it.</summary>
    public static string Words { get; } = string.Join(", ", ArmPoses.Words);

    /// <summary>Reads it; the usual where it is not given or not known, and then a fault is added.</summary>
    public static ArmPose Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return ArmPose.TopUp;
        if (ArmPoses.Of(text) is { } pose) return pose;
        faults.Add(Fault.Of(FaultCodes.WordUnknown, option.Name, text, ("known", Words), ("nearest", NearestName.Of(text, ArmPoses.Words) ?? "")));
        return ArmPose.TopUp;
    }
}
