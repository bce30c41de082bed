namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ErrataPageWords"/>.</summary>
internal static class EnglishBenchErrata
{
    internal static ErrataPageWords Make() => new()
    {
        Heading = "Corrections",
        Lead = "What is wrong in a version of the pattern that people have already, beside what stands in a later one: to print and to send them.",
        Old = "The version that people have",
        New = "The version that is right",
        Look = "The corrections as they will be saved",
        Making = "The two versions are being compared.",
        NotMade = "The corrections cannot be made:",
        OneAlone = "There is only one version so far. Each change of the piece or of its pattern makes another.",
        Since = "Corrections since then",
    };
}
