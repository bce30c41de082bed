using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Storage;
using Coilwright.Storage.Lists;

namespace Coilwright.Web.Bench;

/// <summary>The costs as they are kept, and which list that is.</summary>
/// <param name="Read">The list as it was read, with its places; null when there is none yet.</param>
/// <param name="Kept">The list; null when there is none yet.</param>
public sealed record KeptCosts(CostsRead? Read, KeptList? Kept)
{
    /// <summary>The costs, <see cref="Core.Pricing.Costs.Empty"/> when there is no list yet; null when the list cannot be read.</summary>
    public Costs? Costs => Read is null ? Costs.Empty : Read.Costs;

    /// <summary>Why it cannot be read.</summary>
    public ImmutableArray<Fault> Faults => Read?.Faults ?? [];

    /// <summary>Its revision; 0 when there is none yet.</summary>
    public long Revision => Kept?.Revision ?? 0;
}

/// <summary>What the studio's work costs and how it is priced, kept beside the pieces.</summary>
public sealed class CostsDesk(IKeptLists lists)
{
    /// <summary>The costs.</summary>
    public async Task<KeptCosts> CostsAsync(CancellationToken cancel = default) =>
        await lists.ListAsync(ListKind.Costs, cancel).ConfigureAwait(false) is { } kept ? new KeptCosts(CostsFile.Read(Encoding.UTF8.GetBytes(kept.Content)), kept) : new KeptCosts(null, null);

    /// <summary>Keeps costs that can be read.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="seen">The revision that was seen before; 0 when there was none.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    public Task<ListAnswer> KeepAsync(CostsDraft draft, long seen, CancellationToken cancel = default) => lists.KeepListAsync(ListKind.Costs, seen, draft.Text, cancel);
}
