using System.Collections.Immutable;

namespace Coilwright.Core.Pieces;

/// <summary>Rules of the order, by number instead of by name: for sequences of kinds that are laid one after another.</summary>
/// <remarks>A run of at most m is at most m of any m + 1, so that both are windows.</remarks>
public sealed class KindRules
{
    private readonly bool[][] _windowHas;
    private readonly (int UpTo, int OfAny)[] _windows;
    private readonly bool[,] _apart;
    private readonly (int Kind, int Beside)[] _together;
    private readonly int _first = -1, _last = -1;

    /// <summary>Takes those rules whose names are all among the kinds.</summary>
    /// <param name="names">Names of the kinds, by number.</param>
    /// <param name="rules">The rules.</param>
    public KindRules(ImmutableArray<string> names, IEnumerable<OrderRule> rules)
    {
        Kinds = names.Length;
        var taken = rules.Where(rule => rule.Named.All(name => names.Contains(name))).ToArray();
        Count = taken.Length;
        var windows = new List<(bool[] Has, int UpTo, int OfAny)>();
        var together = new List<(int, int)>();
        _apart = new bool[Kinds, Kinds];
        foreach (var rule in taken)
            switch (rule)
            {
                case OrderRule.LongestRun run:
                    windows.Add((Mask([run.Name]), run.Most, run.Most + 1));
                    break;
                case OrderRule.InAnyRow row:
                    windows.Add((Mask(row.Names), row.UpTo, row.OfAny));
                    break;
                case OrderRule.Apart apart:
                    var (a, b) = (names.IndexOf(apart.Name), names.IndexOf(apart.Beside));
                    _apart[a, b] = _apart[b, a] = true;
                    break;
                case OrderRule.Together each:
                    together.Add((names.IndexOf(each.Name), names.IndexOf(each.Beside)));
                    break;
                case OrderRule.StartsWith starts:
                    _first = _first < 0 || _first == names.IndexOf(starts.Name) ? names.IndexOf(starts.Name) : int.MaxValue;
                    break;
                case OrderRule.EndsWith ends:
                    _last = _last < 0 || _last == names.IndexOf(ends.Name) ? names.IndexOf(ends.Name) : int.MaxValue;
                    break;
            }
        _windowHas = [.. windows.Select(w => w.Has)];
        _windows = [.. windows.Select(w => (w.UpTo, w.OfAny))];
        _together = [.. together];

        bool[] Mask(IEnumerable<string> of)
        {
            var mask = new bool[Kinds];
            foreach (var name in of) mask[names.IndexOf(name)] = true;
            return mask;
        }
    }

    /// <summary>How many kinds.</summary>
    public int Kinds { get; }

    /// <summary>How many rules were taken.</summary>
    public int Count { get; }

    /// <summary>Watches a sequence as it grows.</summary>
    public sealed class Watch
    {
        private readonly KindRules _rules;
        private readonly List<int> _laid = [];
        private readonly List<int>[] _so;

        /// <summary>Starts with nothing laid.</summary>
        public Watch(KindRules rules)
        {
            _rules = rules;
            _so = [.. rules._windows.Select(_ => new List<int> { 0 })];
        }

        /// <summary>How many are laid.</summary>
        public int Count => _laid.Count;

        /// <summary>Lays one more.</summary>
        /// <returns>Whether every rule can still be kept, as far as what is laid tells. It is laid either way.</returns>
        public bool Lay(int kind)
        {
            var i = _laid.Count;
            _laid.Add(kind);
            var kept = i > 0 || _rules._first < 0 || _rules._first == kind;
            for (var w = 0; w < _so.Length; w++)
            {
                _so[w].Add(_so[w][i] + (_rules._windowHas[w][kind] ? 1 : 0));
                kept &= _so[w][i + 1] - _so[w][Math.Max(0, i + 1 - _rules._windows[w].OfAny)] <= _rules._windows[w].UpTo;
            }
            if (i == 0) return kept;
            kept &= !_rules._apart[_laid[i - 1], kind];
            foreach (var (each, beside) in _rules._together)
                kept &= _laid[i - 1] != each || kind == beside || (i > 1 && _laid[i - 2] == beside) || (i == 1 && WrapsRound);
            return kept;
        }

        /// <summary>Whether the last is followed by the first, as in a piece that is closed.</summary>
        public bool WrapsRound { get; init; }

        /// <summary>Takes the last off again.</summary>
        public void TakeOff()
        {
            _laid.RemoveAt(_laid.Count - 1);
            foreach (var so in _so) so.RemoveAt(so.Count - 1);
        }

        /// <summary>Whether what was laid, each of it keeping the rules, keeps them too as a whole.</summary>
        public bool IsWhole()
        {
            var n = _laid.Count;
            if (n == 0) return true;
            if (_rules._last >= 0 && _laid[^1] != _rules._last) return false;
            if (!WrapsRound)
            {
                foreach (var (each, beside) in _rules._together)
                    if (_laid[^1] == each && (n == 1 || _laid[^2] != beside)) return false;
                return true;
            }
            if (_rules._apart[_laid[^1], _laid[0]]) return false;
            foreach (var (each, beside) in _rules._together)
                foreach (var at in (ReadOnlySpan<int>)[0, n - 1])
                    if (_laid[at] == each && _laid[(at + 1) % n] != beside && _laid[(at + n - 1) % n] != beside) return false;
            for (var w = 0; w < _so.Length; w++)
            {
                var (upTo, ofAny) = _rules._windows[w];
                for (var start = Math.Max(0, n - ofAny + 1); start < n; start++)
                {
                    // From here to the end and on from the beginning, never more than once round.
                    var over = Math.Min(ofAny - (n - start), start);
                    if (_so[w][n] - _so[w][start] + _so[w][Math.Max(0, over)] > upTo) return false;
                }
            }
            return true;
        }

        /// <summary>Whether those still to come have room under every window: so many places, and of each kind at least so many in them.</summary>
        /// <remarks>A necessary thing only: of q neighbours p at most, and so of any number of places.</remarks>
        public bool HasRoom(int places, ReadOnlySpan<int> least)
        {
            for (var w = 0; w < _so.Length; w++)
            {
                var (upTo, ofAny) = _rules._windows[w];
                long needed = 0;
                for (var kind = 0; kind < least.Length; kind++)
                    if (_rules._windowHas[w][kind]) needed += least[kind];
                if (needed > (long)(places / ofAny) * upTo + Math.Min(upTo, places % ofAny)) return false;
            }
            return true;
        }
    }
}
