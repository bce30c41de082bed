using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Lies;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Making;

/// <summary>One step at the bench: a named group, or a stretch of beads that stand in none.</summary>
/// <param name="Id">What it is called wherever something is tied to it; see <see cref="StringingSteps"/>.</param>
/// <param name="Group">The group's name; null for loose beads.</param>
/// <param name="First">Index of its first bead in the order, from 0.</param>
/// <param name="Times">How often it is strung, one after the other, 1 or more.</param>
/// <param name="Parts">What is strung each time.</param>
public sealed record StringingStep(string Id, string? Group, int First, int Times, ImmutableArray<StepPart> Parts)
{
    /// <summary>Beads strung in it, all times together.</summary>
    public int Beads => Parts.Sum(p => p.Beads) * Times;

    /// <summary>Index after its last bead.</summary>
    public int End => First + Beads;

    /// <summary>Its beads one by one, as they are strung.</summary>
    public IEnumerable<int> Kinds => Enumerable.Repeat(Parts, Times).SelectMany(once => once.SelectMany(p => p.Kinds));
}

/// <summary>The stringing order as steps to work through: by group and turn, with what repeats said once.</summary>
/// <remarks>
/// <para>Every bead of the order is in exactly one step, in its order: the steps' counts add up to the materials list. Only the groups that read as
/// one thing count (<see cref="StringingOrder.ReadingGroups"/>); one group strung several times on end is one step. Each is said as shortly as is clear
/// (<see cref="ShortestSaying"/>).</para>
/// <para>A group is never parted, nor is what repeats parted inside one time: where a turn begins, a new step begins at the next such place.</para>
/// <para>A step's id is the group's name and which stringing of that name it is from the starting end, as <c>wave.2</c>; of several on end the first counts. Loose beads are named by
/// the step before them, as <c>after.wave.2</c>, with <c>.b</c> and so on for further steps of one stretch; at the starting end <c>first</c>.
/// An edit elsewhere leaves most ids alone; what is tied to a step keeps what the step strung beside its id, so that it can follow (<see cref="StepTexts"/>).</para>
/// </remarks>
public static class StringingSteps
{
    /// <summary>Parts in a step of loose beads at most; more become several steps, to be ticked off one by one. Our choice.</summary>
    public const int PartsInStep = 8;

    /// <summary>The steps, in stringing order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="lie">Where each bead lies: a step begins where a turn does; null to part by group alone.</param>
    public static ImmutableArray<StringingStep> Of(StringingOrder order, Lie? lie = null)
    {
        var steps = new Steps(order, lie);
        var groups = order.ReadingGroups;
        var at = 0;
        for (var g = 0; g < groups.Length; g++)
        {
            var group = groups[g];
            if (group.First > at) steps.Loose(at, group.First);
            var times = 1;
            while (g + 1 < groups.Length && Same(order, group, groups[g + 1]) && groups[g + 1].First == groups[g].End)
            {
                times++;
                g++;
            }
            steps.Group(group, times);
            at = groups[g].End;
        }
        if (at < order.Count) steps.Loose(at, order.Count);
        return steps.Made();
    }

    private static bool Same(StringingOrder order, GroupRun one, GroupRun other) => one.Name == other.Name && one.Count == other.Count
        && order.Kinds.AsSpan(one.First, one.Count).SequenceEqual(order.Kinds.AsSpan(other.First, other.Count));

    private sealed class Steps(StringingOrder order, Lie? lie)
    {
        private readonly ImmutableArray<StringingStep>.Builder _made = ImmutableArray.CreateBuilder<StringingStep>();
        private readonly Dictionary<string, int> _strung = new(StringComparer.Ordinal);
        private string _after = "first";

        public ImmutableArray<StringingStep> Made() => _made.ToImmutable();

        public void Group(GroupRun group, int times)
        {
            var parts = ShortestSaying.Of(order.Kinds.AsSpan(group.First, group.Count));
            for (var first = group.First; times > 0;)
            {
                var here = times;
                for (var t = 1; t < times && here == times; t++)
                    if (BeginsTurn(first, first + t * group.Count)) here = t;
                var nth = _strung[group.Name] = _strung.GetValueOrDefault(group.Name) + 1;
                _strung[group.Name] += here - 1;
                var id = group.Name + "." + nth.ToString(CultureInfo.InvariantCulture);
                _made.Add(new StringingStep(id, group.Name, first, here, parts));
                _after = "after." + id;
                first += here * group.Count;
                times -= here;
            }
        }

        public void Loose(int from, int to)
        {
            var pieces = new Queue<StepPart>(ShortestSaying.Of(order.Kinds.AsSpan(from, to - from)));
            var step = ImmutableArray.CreateBuilder<StepPart>();
            int first = from, at = from, nth = 0;
            while (pieces.Count > 0)
            {
                foreach (var piece in Parted(pieces.Dequeue(), at))
                {
                    if (step.Count > 0 && (step.Count == PartsInStep || BeginsTurn(first, at))) Close();
                    step.Add(piece);
                    at += piece.Beads;
                }
            }
            Close();

            void Close()
            {
                var id = nth == 0 ? _after : _after + "." + (nth < 26 ? ((char)('a' + nth)).ToString() : "z" + (nth + 1).ToString(CultureInfo.InvariantCulture));
                _made.Add(new StringingStep(id, null, first, 1, step.ToImmutable()));
                step.Clear();
                first = at;
                nth++;
            }
        }

        // What repeats may be parted between two times where a turn begins.
        private IEnumerable<StepPart> Parted(StepPart part, int at)
        {
            if (lie is null) return [part];
            return part switch
            {
                RepeatPart repeat => Shares(repeat.Times, repeat.Beads / repeat.Times, at).SelectMany(times => times == 1 ? repeat.Parts : [new RepeatPart(repeat.Parts, times)]),
                RunPart run => Shares(run.Count, 1, at).Select(count => new RunPart(run.Kind, count)),
                _ => [part],
            };
        }

        private List<int> Shares(int times, int beads, int at)
        {
            var shares = new List<int>();
            for (int done = 0, since = 0; done < times; since = done)
            {
                done++;
                while (done < times && !BeginsTurn(at + since * beads, at + done * beads)) done++;
                shares.Add(done - since);
            }
            return shares;
        }

        // Whether a later turn has begun with the bead than that on which the step's first bead lies.
        private bool BeginsTurn(int first, int bead) => lie is not null && lie.TurnWithOverlap(bead) > lie.TurnWithOverlap(first);
    }
}
