namespace Coilwright.Core.Arrangement;

/// <summary>By how much a repeat shows in an order, told when all of it is laid.</summary>
/// <param name="kinds">For each thing its kind.</param>
/// <param name="places">How many places.</param>
internal sealed class RepeatLoss(int[] kinds, int places) : IOrderLoss
{
    public IOrderScore Score() => new Laid(kinds, new int[places]);

    private sealed class Laid(int[] kinds, int[] laid) : IOrderScore
    {
        private int _count;
        private double? _excess;

        public double Loss => _count < laid.Length ? 0 : _excess ??= RepeatMeasure.Of(laid).Excess;

        public double LeastMore => 0;

        public void Lay(int thing)
        {
            laid[_count++] = kinds[thing];
            _excess = null;
        }

        public void TakeOff() => _count--;
    }
}
