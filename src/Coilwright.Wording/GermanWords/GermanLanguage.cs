namespace Coilwright.Wording.GermanWords;

/// <summary>German, put together from its tables.</summary>
/// <remarks>
/// <para>Written as German craft patterns are: what is to be done stands in the infinitive ("2 A auffädeln"), so that nobody is addressed and nobody
/// left out. A turn is a <c>Windung</c>, a loop of the coil as sold a <c>Ring</c>, an end loop an <c>Öse</c>, the coil a <c>Spirale</c>, the focal a
/// <c>Blickfang</c>, a plain repeat a <c>Rapport</c>, a key letter a <c>Kürzel</c>; what is off square is <c>versetzt</c>.</para>
/// </remarks>
internal static class GermanLanguage
{
    internal static Language Make() => new()
    {
        Code = "de",
        Name = "Deutsch",
        DecimalSign = ',',
        PluralForm = Language.OneAndOther,
        Faults = GermanFaults.Make(),
        Notices = GermanNotices.Make(),
        Cures = GermanCures.Make(),
        WhyNot = GermanTerms.WhyNot(),
        Fields = GermanTerms.Fields(),
        Terms = GermanTerms.Make(),
        Cautions = GermanCautions.Make(),
        Report = GermanReport.Make(),
        Sheet = GermanSheet.Make(),
        Pattern = GermanPattern.Make(),
        Ideas = GermanIdeas.Make(),
        Sizes = GermanSizes.Make(),
        Scatter = GermanScatter.Make(),
        Settle = GermanSettle.Make(),
        Cut = GermanCut.Make(),
        Shop = GermanShop.Make(),
        Kit = GermanKit.Make(),
        Price = GermanPrice.Make(),
        Errata = GermanErrata.Make(),
        Publish = GermanPublish.Make(),
        Listing = GermanListing.Make(),
        FitAnswer = GermanFitAnswer.Make(),
        Batch = GermanBatch.Make(),
        Quote = GermanQuote.Make(),
        Class = GermanClass.Make(),
        Substitutes = GermanSubstitutes.Make(),
        Palette = GermanPalette.Make(),
        TrayList = GermanTrayList.Make(),
        Help = GermanHelp.Make(),
        WristCurve = GermanWristCurve.Make(),
        Bench = GermanBench.Make(),
        TurnRows = GermanTurnRows.Make(),
        Pictures = GermanPictures.Make(),
    };
}
