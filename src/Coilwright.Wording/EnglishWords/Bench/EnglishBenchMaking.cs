namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="MakingWords"/>.</summary>
internal static class EnglishBenchMaking
{
    internal static MakingWords Make() => new()
    {
        WhatHeading = "What you want to make",
        HowMany = "How many of {title}",
        OneFewer = "One fewer",
        OneMore = "One more",
        Nothing = "Choose a piece and how many of it.",
        NotBroughtIn = "{file} was not brought in. Nothing was changed.",
        NotKept = "It could not be kept.",
        Behind = "Another window changed the list meanwhile; it is shown now. Nothing of yours was kept.",
    };
}
