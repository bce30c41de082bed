using System.Collections.Immutable;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.StepFigures;

/// <summary>How the figures of steps are drawn: in a pattern as they come, on the bench larger and barer.</summary>
public sealed record StepFigureOptions
{
    /// <summary>Width of a figure, mm.</summary>
    public double WidthMm { get; init; } = 90;

    /// <summary>Whether a figure is always as wide as that; otherwise less is used where less will do.</summary>
    public bool FillsWidth { get; init; } = true;

    /// <summary>Sizes that beads may be drawn at, of true size, the largest first: the first that keeps a step on one line is taken, the last where none does.</summary>
    /// <remarks>Few, so that a document's figures share their symbols.</remarks>
    public ImmutableArray<double> Scales { get; init; } = [1, 0.85, 0.7, 0.6, 0.5, 0.42];

    /// <summary>How much larger key letters are than in print.</summary>
    public double Letters { get; init; } = 1;

    /// <summary>Whether a bar says how long 10 mm are.</summary>
    public bool Bar { get; init; } = true;

    /// <summary>White beneath beads and bar, for words that stand on the picture's foot, mm.</summary>
    public double FootMm { get; init; }

    /// <summary>Whether the coil stands beside it, seen end-on, with where the step is on it.</summary>
    public bool EndOn { get; init; } = true;

    /// <summary>Whether an arrow says which way the stringing goes on.</summary>
    public bool Arrow { get; init; } = true;

    /// <summary>Whether it is drawn in greys, as a greyscale printer would.</summary>
    public bool Greyscale { get; init; }

    /// <summary>Language of its words, and the units of its lengths.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>What the words are measured with.</summary>
    public ITypeface Typeface { get; init; } = CautiousSans.Instance;
}
