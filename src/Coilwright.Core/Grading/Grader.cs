using Coilwright.Core.Arrangement;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Grading;

/// <summary>The one entry point: one design on a table of wrists. Model: docs/theory/sizes.md.</summary>
public static class Grader
{
    /// <summary>Makes the sizes.</summary>
    /// <param name="piece">The design, in its base size.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="request">The wrists, and how much to try.</param>
    /// <param name="progress">Is told of each size when it is made.</param>
    /// <param name="cancel">Stops the work: the sizes so far are given back.</param>
    /// <exception cref="ArgumentException">There are no wrists, more than <see cref="SizesRequest.MostWrists"/>, one twice, or one or the effort out of its range.</exception>
    public static Sizes Of(Piece piece, ReckoningData data, SizesRequest request, IProgress<Size>? progress = null, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Effort, 1, nameof(request));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(request.Effort, ArrangeRequest.MostEffort, nameof(request));
        if (request.WristsMm.IsDefaultOrEmpty || request.WristsMm.Length > SizesRequest.MostWrists) throw new ArgumentException("No wrists, or too many.", nameof(request));
        if (request.WristsMm.Distinct().Count() < request.WristsMm.Length) throw new ArgumentException("A wrist is there twice.", nameof(request));
        // Written so that NaN is refused too.
        if (!request.WristsMm.All(w => w is >= Wearer.LeastWristMm and <= Wearer.MostWristMm)) throw new ArgumentOutOfRangeException(nameof(request), "A wrist is out of range.");

        var maker = new SizeMaker(piece, data, request, CancellationToken.None);
        var sizes = new List<Size>();
        try
        {
            foreach (var wrist in request.WristsMm.Order())
            {
                cancel.ThrowIfCancellationRequested();
                var size = InOrder(maker, sizes, maker.Make(wrist, cancel), cancel);
                sizes.Add(size);
                progress?.Report(size);
            }
        }
        catch (OperationCanceledException)
        {
            // What was made so far is given back.
        }
        return new Sizes
        {
            Base = maker.Base,
            Gaps = maker.Gaps,
            All = [.. sizes],
            Turns = maker.Wanted.Turns,
            OverlapMm = maker.Wanted.OverlapMm,
            ToleranceMm = maker.Wanted.ToleranceMm,
            IsMirrored = maker.Mirrored,
            WasStopped = cancel.IsCancellationRequested,
        };
    }

    // Two wrists may be so near each other that the larger would get a shorter row, both within what is allowed: then both get the smaller's.
    private static Size InOrder(SizeMaker maker, List<Size> smaller, Size size, CancellationToken cancel)
    {
        if (smaller is not [.., { ComesOut: true } before] || !size.ComesOut || size.Reckoned.RuledMm >= before.Reckoned.RuledMm) return size;
        // The design's own size stays as it is: what is smaller then gives way.
        if (size.IsBase)
        {
            for (var i = smaller.Count - 1; i >= 0 && smaller[i].Reckoned.RuledMm > size.Reckoned.RuledMm; i--)
                if (maker.Worn(size, smaller[i].WristMm, smaller[i].Coil, cancel) is { ComesOut: true } same) smaller[i] = same;
            return size;
        }
        return maker.Worn(before, size.WristMm, size.Coil, cancel) is { ComesOut: true } worn ? worn : size;
    }
}
