namespace Coilwright.Wording.EnglishWords;

/// <summary>English, put together from its tables.</summary>
internal static class EnglishLanguage
{
    internal static Language Make() => new()
    {
        Code = "en",
        Name = "English",
        DecimalSign = '.',
        PluralForm = Language.OneAndOther,
        Faults = EnglishFaults.Make(),
        Notices = EnglishNotices.Make(),
        Cures = EnglishCures.Make(),
        WhyNot = EnglishTerms.WhyNot(),
        Fields = EnglishTerms.Fields(),
        Terms = EnglishTerms.Make(),
        Cautions = EnglishCautions.Make(),
        Report = EnglishReport.Make(),
        Sheet = EnglishSheet.Make(),
        Pattern = EnglishPattern.Make(),
        Ideas = EnglishIdeas.Make(),
        Sizes = EnglishSizes.Make(),
        Scatter = EnglishScatter.Make(),
        Settle = EnglishSettle.Make(),
        Cut = EnglishCut.Make(),
        Shop = EnglishShop.Make(),
        Kit = EnglishKit.Make(),
        Price = EnglishPrice.Make(),
        Errata = EnglishErrata.Make(),
        Publish = EnglishPublish.Make(),
        Listing = EnglishListing.Make(),
        FitAnswer = EnglishFitAnswer.Make(),
        Batch = EnglishBatch.Make(),
        Quote = EnglishQuote.Make(),
        Class = EnglishClass.Make(),
        Substitutes = EnglishSubstitutes.Make(),
        Palette = EnglishPalette.Make(),
        TrayList = EnglishTrayList.Make(),
        Help = EnglishHelp.Make(),
        WristCurve = EnglishWristCurve.Make(),
        Bench = EnglishBench.Make(),
        TurnRows = EnglishTurnRows.Make(),
        Pictures = EnglishPictures.Make(),
    };
}
