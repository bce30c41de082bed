using System.Collections.Immutable;
using Coilwright.Core.Listings;
using Coilwright.Core.Quotes;

namespace Coilwright.Wording;

/// <summary>A quote with all that is told of it.</summary>
/// <param name="Quote">The quote.</param>
/// <param name="Listing">What is told of the size that is ordered.</param>
/// <param name="Written">Files that were written of it.</param>
public sealed record Quoted(Quote Quote, Listing Listing, ImmutableArray<string> Written)
{
    /// <summary>The same in words.</summary>
    public QuoteSentences Said(Language language) => new(Quote, Listing, language);
}
