namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="MakingWords"/>.</summary>
internal static class GermanBenchMaking
{
    internal static MakingWords Make() => new()
    {
        WhatHeading = "Was du machen möchtest",
        HowMany = "Wie viele von {title}",
        OneFewer = "Eines weniger",
        OneMore = "Eines mehr",
        Nothing = "Wähle ein Stück und wie viele davon.",
        NotBroughtIn = "{file} wurde nicht übernommen. Nichts ist geändert.",
        NotKept = "Es konnte nicht behalten werden.",
        Behind = "Ein anderes Fenster hat die Liste inzwischen geändert; sie steht jetzt da. Von dir wurde nichts behalten.",
    };
}
