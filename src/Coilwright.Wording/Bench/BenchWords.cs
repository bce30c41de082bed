namespace Coilwright.Wording;

/// <summary>Words of the bench in the browser. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record BenchWords
{
    /// <summary>What the program says where it was started.</summary>
    public required StartWords Start { get; init; }

    /// <summary>Head and foot of every page, and its settings.</summary>
    public required FrameWords Frame { get; init; }

    /// <summary>The turn rows and what is selected on them.</summary>
    public required RowsWords Rows { get; init; }

    /// <summary>The wrist that the piece is looked at on.</summary>
    public required WristWords Wrist { get; init; }

    /// <summary>The readings beside the rows.</summary>
    public required ReadingsWords Readings { get; init; }

    /// <summary>The order as cards and as text.</summary>
    public required OrderViewWords Order { get; init; }

    /// <summary>The page of all pieces.</summary>
    public required PiecesWords Pieces { get; init; }

    /// <summary>The page of a piece's pattern sheet.</summary>
    public required SheetPageWords Sheet { get; init; }

    /// <summary>The page that leads through the stringing.</summary>
    public required StringingGuideWords Stringing { get; init; }

    /// <summary>The page where the pattern is written.</summary>
    public required PatternPageWords PatternPage { get; init; }

    /// <summary>The written pattern on paper.</summary>
    public required PatternPaperWords PatternPaper { get; init; }

    /// <summary>What is wrong in an earlier version of a pattern.</summary>
    public required ErrataPageWords Errata { get; init; }

    /// <summary>What she does to the order, and what the bench says to it.</summary>
    public required EditWords Edit { get; init; }

    /// <summary>What the piece is besides its order.</summary>
    public required FormWords Form { get; init; }

    /// <summary>A bead being described.</summary>
    public required BeadFormWords BeadForm { get; init; }

    /// <summary>The page of a piece's history.</summary>
    public required HistoryWords History { get; init; }

    /// <summary>The page of two versions side by side.</summary>
    public required CompareWords Compare { get; init; }

    /// <summary>The page of a piece's trial log.</summary>
    public required TrialWords Trials { get; init; }

    /// <summary>The page where everything is saved and brought back.</summary>
    public required BackupWords Backup { get; init; }

    /// <summary>The page that stands where the pieces cannot be read.</summary>
    public required ShelfTroubleWords ShelfTrouble { get; init; }

    /// <summary>Trying what would end a notice.</summary>
    public required CureWords Cure { get; init; }

    /// <summary>The small catalogue of beads.</summary>
    public required CatalogueWords Catalogue { get; init; }

    /// <summary>The piece again in other colours.</summary>
    public required ColourwayWords Colourway { get; init; }

    /// <summary>Beads that may stand in for another, on the bench.</summary>
    public required StandInsWords StandIns { get; init; }

    /// <summary>Work that goes on while she does something else.</summary>
    public required JobWords Jobs { get; init; }

    /// <summary>The page of better orders.</summary>
    public required IdeasPageWords Ideas { get; init; }

    /// <summary>What a maker wants of a better order.</summary>
    public required WishFormWords Wishes { get; init; }

    /// <summary>The page of sizes.</summary>
    public required SizesPageWords Sizes { get; init; }

    /// <summary>The pages of the stock.</summary>
    public required StockPageWords Stock { get; init; }

    /// <summary>The pages of the bead tray.</summary>
    public required TrayPageWords Tray { get; init; }

    /// <summary>The pages of what was made.</summary>
    public required MadeWords Made { get; init; }

    /// <summary>What the pages of shopping and of wire have in common.</summary>
    public required MakingWords Making { get; init; }

    /// <summary>The page of shopping.</summary>
    public required ShopPageWords Shop { get; init; }

    /// <summary>The page of the wire.</summary>
    public required CutPageWords Cut { get; init; }

    /// <summary>The page of prices.</summary>
    public required PricePageWords Price { get; init; }

    /// <summary>The page of kits.</summary>
    public required KitPageWords Kit { get; init; }

    /// <summary>The page of quotes for custom orders.</summary>
    public required QuotePageWords Quote { get; init; }

    /// <summary>Words of the page of a class.</summary>
    public required ClassPageWords Class { get; init; }

    /// <summary>The page of several alike.</summary>
    public required BatchPageWords Batch { get; init; }

    /// <summary>Where a picture is put on the pattern's cover.</summary>
    public required CoverWords Cover { get; init; }

    /// <summary>The page of the piece in space.</summary>
    public required CoilPageWords Coil { get; init; }

    /// <summary>The manual, the list of keys, the look round.</summary>
    public required GuideWords Guide { get; init; }

    /// <summary>Where a colour is read off a photo.</summary>
    public required PhotoColourWords PhotoColour { get; init; }

    /// <summary>The page of what is told to buyers.</summary>
    public required SellingPageWords Selling { get; init; }
}
