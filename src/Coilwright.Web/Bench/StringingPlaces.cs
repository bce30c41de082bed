using System.Text.Json;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Lists;

namespace Coilwright.Web.Bench;

/// <summary>How far the stringing of each piece has come, kept beside the pieces: any page on any device goes on from there.</summary>
/// <remarks>A line of JSON for each piece, the one that was strung last first. A place is a step with what it strings (<see cref="StepAnchor"/>), so that an edit of the order does not lose it. A line
/// that cannot be read is a piece that is begun anew.</remarks>
public sealed class StringingPlaces(IKeptLists lists)
{
    // Pieces under way at once; who comes back to an older one begins it at its first step.
    private const int Most = 40;

    // Windows that go on at the same moment; each sees what the other kept and tries again.
    private const int Tries = 20;

    /// <summary>Where the stringing of a piece is; null before it was begun.</summary>
    public async Task<StepAnchor?> OfAsync(Guid piece, CancellationToken cancel = default) =>
        Lines(await lists.ListAsync(ListKind.Places, cancel).ConfigureAwait(false)).FirstOrDefault(l => l.Piece == piece)?.At;

    /// <summary>Keeps where it is. False when it could not be written down.</summary>
    public async Task<bool> KeepAsync(Guid piece, StepAnchor at, CancellationToken cancel = default)
    {
        var now = await lists.ListAsync(ListKind.Places, cancel).ConfigureAwait(false);
        for (var tries = 0; ; tries++)
        {
            var content = string.Join('\n', Lines(now).Where(l => l.Piece != piece).Prepend(new Line(piece, at)).Take(Most).Select(l => JsonSerializer.Serialize(l)));
            switch (await lists.KeepListAsync(ListKind.Places, now?.Revision ?? 0, content, cancel).ConfigureAwait(false))
            {
                case ListAnswer.Kept:
                    return true;
                case ListAnswer.Behind behind when tries < Tries:
                    now = behind.Now;
                    break;
                default:
                    return false;
            }
        }
    }

    private static IEnumerable<Line> Lines(KeptList? kept) => (kept?.Content ?? "").Split('\n').Select(Read).OfType<Line>();

    private static Line? Read(string line)
    {
        try
        {
            return JsonSerializer.Deserialize<Line>(line) is { At: { Step: not null, Strings: not null, After: not null, Before: not null } } read ? read : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private sealed record Line(Guid Piece, StepAnchor At);
}
