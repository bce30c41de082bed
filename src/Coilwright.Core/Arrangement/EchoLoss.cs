namespace Coilwright.Core.Arrangement;

/// <summary>How much an order of single beads repeats itself: the less, the less it does at every distance.</summary>
/// <remarks>
/// <para>For each distance k, A_k = (m_k - c (n - k)) / (1 - c), where m_k counts the beads that have one of their own kind k further on, and c is how often that
/// would be by chance; the loss is the sum of the squares of A_k, without a unit. With two kinds and c = 1/2 the A_k are the aperiodic
/// autocorrelations of a sequence of signs, and the least is what low-autocorrelation binary sequences are about (CSPLib problem 005).</para>
/// <para>The bound: of the pairs that are not laid yet each may match or not, distance by distance.</para>
/// </remarks>
/// <param name="places">How many beads.</param>
/// <param name="kinds">For each thing the number of its kind.</param>
/// <param name="chance">How often two beads are alike by chance, from 0 to below 1.</param>
/// <param name="farthest">The greatest distance that counts.</param>
public sealed class EchoLoss(int places, IReadOnlyList<int> kinds, double chance, int farthest = int.MaxValue) : IOrderLoss
{
    /// <summary>How often two of so many beads of each kind, drawn without putting back, are alike.</summary>
    /// <param name="counts">How many of each kind; two beads or more in all.</param>
    public static double ChanceOf(IReadOnlyCollection<int> counts)
    {
        double n = counts.Sum();
        return counts.Sum(c => c * (c - 1.0)) / (n * (n - 1));
    }

    /// <inheritdoc/>
    public IOrderScore Score() => new Echoes(places, [.. kinds], chance, Math.Min(farthest, places - 1));

    private sealed class Echoes(int places, int[] kinds, double chance, int farthest) : IOrderScore
    {
        private readonly int[] _laid = new int[places], _matches = new int[places];
        private int _count;

        public double Loss
        {
            get
            {
                // Only what no later bead changes: at the end, every distance.
                if (_count < places) return 0;
                double loss = 0;
                for (var k = 1; k <= farthest; k++) loss += Squared(k, _matches[k]);
                return loss;
            }
        }

        public double LeastMore
        {
            get
            {
                if (_count == places) return 0;
                double least = 0;
                for (var k = 1; k <= farthest; k++)
                {
                    var open = places - k - Math.Max(0, _count - k);
                    var wanted = chance * (places - k);
                    // As near to what chance would give as the open pairs allow, a whole number either way.
                    least += Math.Min(Squared(k, Math.Clamp((int)Math.Floor(wanted), _matches[k], _matches[k] + open)),
                        Squared(k, Math.Clamp((int)Math.Ceiling(wanted), _matches[k], _matches[k] + open)));
                }
                return least;
            }
        }

        public void Lay(int thing)
        {
            var kind = kinds[thing];
            for (var k = 1; k <= Math.Min(_count, farthest); k++)
                if (_laid[_count - k] == kind) _matches[k]++;
            _laid[_count++] = kind;
        }

        public void TakeOff()
        {
            var kind = _laid[--_count];
            for (var k = 1; k <= Math.Min(_count, farthest); k++)
                if (_laid[_count - k] == kind) _matches[k]--;
        }

        private double Squared(int k, int matches)
        {
            var a = (matches - chance * (places - k)) / (1 - chance);
            return a * a;
        }
    }
}
