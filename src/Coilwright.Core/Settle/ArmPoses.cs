using System.Collections.Immutable;

namespace Coilwright.Core.Settle;

/// <summary>The words by which ways of holding the arm are asked for, on the command line and in addresses; for other programs, not for reading.</summary>
public static class ArmPoses
{
    private static readonly ImmutableArray<(string Word, ArmPose Pose)> Poses =
    [
        ("top-up", ArmPose.TopUp), ("underside-up", ArmPose.UndersideUp), ("on-its-side", ArmPose.OnItsSide), ("on-the-other-side", ArmPose.OnTheOtherSide), ("hanging", ArmPose.Hanging), ("held-up", ArmPose.HeldUp),
    ];

    /// <summary>All of them, in the order of <see cref="ArmPose"/>.</summary>
    public static ImmutableArray<string> Words { get; } = [.. Poses.Select(p => p.Word)];

    /// <summary>The word for one.</summary>
    public static string Word(ArmPose pose) => Poses.First(p => p.Pose == pose).Word;

    /// <summary>The one that a word asks for, in capitals or not; null where it asks for none.</summary>
    public static ArmPose? Of(string word)
    {
        foreach (var (known, pose) in Poses)
            if (known.Equals(word, StringComparison.OrdinalIgnoreCase)) return pose;
        return null;
    }
}
