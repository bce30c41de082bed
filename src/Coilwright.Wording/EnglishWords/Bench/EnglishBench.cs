namespace Coilwright.Wording.EnglishWords;

/// <summary>English words of the bench in the browser.</summary>
internal static class EnglishBench
{
    internal static BenchWords Make() => new()
    {
        Start = EnglishBenchStart.Make(),
        Frame = EnglishBenchFrame.Make(),
        Rows = EnglishBenchRows.Make(),
        Wrist = EnglishBenchWrist.Make(),
        Readings = EnglishBenchReadings.Make(),
        Order = EnglishBenchOrder.Make(),
        Pieces = EnglishBenchPieces.Make(),
        Sheet = EnglishBenchSheet.Make(),
        Stringing = EnglishBenchStringing.Make(),
        PatternPage = EnglishBenchPatternPage.Make(),
        PatternPaper = EnglishBenchPatternPaper.Make(),
        Errata = EnglishBenchErrata.Make(),
        Edit = EnglishBenchEdit.Make(),
        Form = EnglishBenchForm.Make(),
        BeadForm = EnglishBenchBeadForm.Make(),
        History = EnglishBenchHistory.Make(),
        Compare = EnglishBenchCompare.Make(),
        Trials = EnglishBenchTrials.Make(),
        Backup = EnglishBenchBackup.Make(),
        ShelfTrouble = EnglishBenchShelfTrouble.Make(),
        Cure = EnglishBenchCure.Make(),
        Catalogue = EnglishBenchCatalogue.Make(),
        Colourway = EnglishBenchColourway.Make(),
        StandIns = EnglishBenchStandIns.Make(),
        Jobs = EnglishBenchJobs.Make(),
        Ideas = EnglishBenchIdeas.Make(),
        Wishes = EnglishBenchWishes.Make(),
        Sizes = EnglishBenchSizes.Make(),
        Stock = EnglishBenchStock.Make(),
        Tray = EnglishBenchTray.Make(),
        Made = EnglishBenchMade.Make(),
        Cut = EnglishBenchCut.Make(),
        Price = EnglishBenchPrice.Make(),
        Kit = EnglishBenchKit.Make(),
        Shop = EnglishBenchShop.Make(),
        Making = EnglishBenchMaking.Make(),
        Coil = EnglishBenchCoil.Make(),
        Selling = EnglishBenchSelling.Make(),
        Batch = EnglishBenchBatch.Make(),
        Quote = EnglishBenchQuote.Make(),
    };
}
