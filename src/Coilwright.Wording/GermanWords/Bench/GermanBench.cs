namespace Coilwright.Wording.GermanWords;

/// <summary>German words of the bench in the browser.</summary>
internal static class GermanBench
{
    internal static BenchWords Make() => new()
    {
        Start = GermanBenchStart.Make(),
        Frame = GermanBenchFrame.Make(),
        Rows = GermanBenchRows.Make(),
        Wrist = GermanBenchWrist.Make(),
        Readings = GermanBenchReadings.Make(),
        Order = GermanBenchOrder.Make(),
        Pieces = GermanBenchPieces.Make(),
        Sheet = GermanBenchSheet.Make(),
        Stringing = GermanBenchStringing.Make(),
        PatternPage = GermanBenchPatternPage.Make(),
        PatternPaper = GermanBenchPatternPaper.Make(),
        Errata = GermanBenchErrata.Make(),
        Edit = GermanBenchEdit.Make(),
        Form = GermanBenchForm.Make(),
        BeadForm = GermanBenchBeadForm.Make(),
        History = GermanBenchHistory.Make(),
        Compare = GermanBenchCompare.Make(),
        Trials = GermanBenchTrials.Make(),
        Backup = GermanBenchBackup.Make(),
        ShelfTrouble = GermanBenchShelfTrouble.Make(),
        Cure = GermanBenchCure.Make(),
        Catalogue = GermanBenchCatalogue.Make(),
        Colourway = GermanBenchColourway.Make(),
        StandIns = GermanBenchStandIns.Make(),
        Jobs = GermanBenchJobs.Make(),
        Ideas = GermanBenchIdeas.Make(),
        Wishes = GermanBenchWishes.Make(),
        Sizes = GermanBenchSizes.Make(),
        Stock = GermanBenchStock.Make(),
        Tray = GermanBenchTray.Make(),
        Made = GermanBenchMade.Make(),
        Cut = GermanBenchCut.Make(),
        Price = GermanBenchPrice.Make(),
        Kit = GermanBenchKit.Make(),
        Shop = GermanBenchShop.Make(),
        Making = GermanBenchMaking.Make(),
        Coil = GermanBenchCoil.Make(),
        Selling = GermanBenchSelling.Make(),
        Batch = GermanBenchBatch.Make(),
        Quote = GermanBenchQuote.Make(),
    };
}
