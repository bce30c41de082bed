using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;
using Coilwright.Storage.Tables;

namespace Coilwright.Storage.Stock;

/// <summary>A line of a file of deliveries.</summary>
/// <param name="Line">Where it begins in the file, from 1.</param>
/// <param name="Item">The item as it is written.</param>
/// <param name="Lot">What came; null where that cannot be said.</param>
/// <param name="Unit">What the item is counted in.</param>
/// <param name="IsNew">Whether the item is not in stock yet and comes with it.</param>
/// <param name="Faults">Everything wrong with the line; empty when it can be taken in.</param>
public sealed record DeliveryRow(int Line, string Item, StockLot? Lot, StockUnit Unit, bool IsNew, ImmutableArray<Fault> Faults);

/// <summary>What came of reading a file of deliveries.</summary>
/// <param name="Rows">Its lines, looked through one by one.</param>
/// <param name="Faults">What keeps it from being read at all; empty when it can be.</param>
/// <param name="Change">All of it, to be done whole; null while anything is wrong. Given twice it counts once.</param>
public sealed record DeliveryReading(ImmutableArray<DeliveryRow> Rows, ImmutableArray<Fault> Faults, StockChange? Change);

/// <summary>Reads deliveries from a table, a line for each lot: values with commas, semicolons or tabs between them, with a line of heads (<see cref="SeparatedValues"/>).</summary>
/// <remarks>Heads in any order: <c>item</c>, <c>unit</c> and <c>howMany</c> must be there; <see cref="Columns"/> lists all. Numbers have a decimal point and no thousands sign, days are written as 2026-01-31. An item
/// that is not in stock is added under its name. Bad input is an answer, never an exception; nothing is written here.</remarks>
public static class DeliveryFile
{
    /// <summary>Lines in one file at most: more than any supplier's bill has.</summary>
    public const int MostRows = 2_000;

    /// <summary>The heads.</summary>
    public static ImmutableArray<string> Columns { get; } =
        ["item", "name", "countedIn", "unit", "howMany", "holds", "lengthMm", "strands", "beadMm", "massG", "beadsPerG", "supplier", "number", "drawer", "received", "cost", "currency", "par", "for"];

    private static readonly string[] Needed = ["item", "unit", "howMany"];

    /// <summary>Reads a file.</summary>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="there">What is in stock.</param>
    /// <param name="data">What beads are read with.</param>
    public static DeliveryReading Read(ReadOnlyMemory<byte> bytes, IEnumerable<StockLine> there, ReckoningData data)
    {
        if (bytes.Length > PieceFile.MaxBytes) return Nothing(PieceFile.TooLarge());
        var read = SeparatedValues.Read(bytes, MostRows);
        if (read.Fault is { } fault) return Nothing(fault);
        if (read.Lines is not [var heads, .. var lines]) return Nothing(Fault.Of(FaultCodes.FieldMissing, "item", ""));
        return HeadsOf(heads) is { Length: > 0 } wrong ? new DeliveryReading([], wrong, null) : new Reading(heads.Cells, there, data).Run(lines);
    }

    private static ImmutableArray<Fault> HeadsOf(TableLine line)
    {
        var heads = line.Cells;
        var known = Columns.ToHashSet(StringComparer.OrdinalIgnoreCase);
        ImmutableArray<Fault> wrong =
        [
            .. Needed.Where(n => !heads.Contains(n, StringComparer.OrdinalIgnoreCase)).Select(n => Fault.Of(FaultCodes.FieldMissing, n, "")),
            .. heads.Where(h => !known.Contains(h)).Select(h => Shown(h)).Select(h => Fault.Of(FaultCodes.FieldUnknown, h, h, ("known", string.Join(", ", Columns)), ("nearest", NearestName.Of(h, Columns) ?? ""))),
            .. heads.GroupBy(h => h, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => Fault.Of(FaultCodes.FieldTwice, Shown(g.Key), "", ("firstLine", line.Line.ToString(CultureInfo.InvariantCulture)))),
        ];
        return [.. wrong.Select(f => f.At(line.Line, 0))];
    }

    private static DeliveryReading Nothing(Fault why) => new([], [why], null);

    private static string Shown(string text) => text.Length <= 60 ? text : text[..60] + "...";

    /// <summary>One reading: what is in stock grows with every line, so that later lines are looked at as they will be met.</summary>
    private sealed class Reading
    {
        private readonly Dictionary<string, int> _columns;
        private readonly ReckoningData _data;
        private readonly Dictionary<string, (StockItem Item, StockBalance Balance)> _stock = new(StringComparer.Ordinal);
        private readonly ImmutableArray<ItemChange>.Builder _items = ImmutableArray.CreateBuilder<ItemChange>();
        private readonly ImmutableArray<Movement>.Builder _movements = ImmutableArray.CreateBuilder<Movement>();
        private List<Fault> _faults = [];
        private ImmutableArray<string> _cells = [];

        public Reading(ImmutableArray<string> heads, IEnumerable<StockLine> there, ReckoningData data)
        {
            _data = data;
            _columns = heads.Select((head, at) => (head, at)).ToDictionary(h => h.head, h => h.at, StringComparer.OrdinalIgnoreCase);
            foreach (var line in there) _stock[line.Item.Key] = (line.Item, line.Balance);
        }

        public DeliveryReading Run(ImmutableArray<TableLine> lines)
        {
            if (lines.IsEmpty) return Nothing(Fault.Of(FaultCodes.TableNoRows, "", ""));
            ImmutableArray<DeliveryRow> rows = [.. lines.Select(Row)];
            var isSound = rows.All(r => r.Faults.IsEmpty);
            return new DeliveryReading(rows, [], isSound ? new StockChange { Items = _items.ToImmutable(), Movements = _movements.ToImmutable() } : null);
        }

        private DeliveryRow Row(TableLine line)
        {
            (_faults, _cells) = ([], line.Cells);
            var key = Text("item") ?? "";
            if (key.Length == 0) Wrong(Fault.Of(FaultCodes.FieldMissing, "item", ""));
            var isNew = key.Length > 0 && !_stock.ContainsKey(key);
            var item = ItemOf(key, isNew);
            var lot = LotOf(item);
            if (_faults.Count == 0)
            {
                var movement = new Movement.Receive(Guid.CreateVersion7(), key, lot!) { For = Text("for") };
                var now = isNew ? StockBalance.Nothing : _stock[key].Balance;
                if (StockBooking.Of(item, now, movement) is Booking.Refused refused) Wrong(refused.Why);
                else
                {
                    if (isNew) _items.Add(new ItemChange(item, 0));
                    _movements.Add(movement);
                    _stock[key] = (item, new StockBalance(now.Lots.Add(new LotBalance(movement.Id, lot!, lot!.Quantity, default)), now.Reservations));
                }
            }
            return new DeliveryRow(line.Line, Shown(key), _faults.Count == 0 ? lot : null, item.Unit, isNew, [.. _faults.Select(f => f.At(line.Line, 0))]);
        }

        private StockItem ItemOf(string key, bool isNew)
        {
            var unit = Text("countedIn") switch
            {
                null or "each" => StockUnit.Each,
                "mm" => StockUnit.Millimetre,
                "g" => StockUnit.Gram,
                var other => Unknown(other),
            };
            if (!isNew && _stock.TryGetValue(key, out var there))
            {
                if (Text("countedIn") is not null && there.Item.Unit != unit) Wrong(Fault.Of(FaultCodes.StockUnitDiffers, "countedIn", StockRules.Word(unit)));
                return there.Item;
            }
            var item = new StockItem(key, Text("name") ?? key, unit) { Par = Number("par") is { } par ? Fine("par", par) : null };
            if (key.Length > 0) foreach (var fault in StockRules.Of(item, _data)) Wrong(fault with { Field = fault.Field == "key" ? "item" : fault.Field });
            return item;

            StockUnit Unknown(string word)
            {
                string[] known = ["each", "mm", "g"];
                Wrong(Fault.Of(FaultCodes.WordUnknown, "countedIn", Shown(word), ("known", string.Join(", ", known)), ("nearest", NearestName.Of(word, known) ?? "")));
                return StockUnit.Each;
            }
        }

        private StockLot? LotOf(StockItem item)
        {
            SaleUnit? unit = null;
            if (Text("unit") is not { } word) Wrong(Fault.Of(FaultCodes.FieldMissing, "unit", ""));
            else if (SaleUnits.Read(word) is SaleUnitReading.Known known) unit = known.Unit;
            else Wrong(SaleUnits.Read(word) switch { SaleUnitReading.Ambiguous ask => ask.Why, SaleUnitReading.Unknown none => none.Why, _ => throw new System.Diagnostics.UnreachableException() });
            var howMany = Number("howMany");
            if (Text("howMany") is null) Wrong(Fault.Of(FaultCodes.FieldMissing, "howMany", ""));
            Bead? bead = null;
            if (item.Bead is { } description) Bead.TryMake(description, out bead, out _);
            var bought = new UnitsBought(unit ?? SaleUnit.Each, howMany ?? 0)
            {
                Holds = Number("holds") is { } holds ? Fine("holds", holds) : null,
                LengthMm = (double?)Number("lengthMm"),
                Strands = Number("strands") is { } strands ? (int)Math.Clamp(strands, 0, 10_000) : 1,
                BeadMm = (double?)Number("beadMm") ?? bead?.LengthMm,
                MassG = (double?)Number("massG"),
                BeadsPerG = (double?)Number("beadsPerG") ?? (bead?.MassG is > 0 and var massG ? 1 / massG : null),
            };
            var cost = Number("cost");
            DateOnly? received = null;
            if (Text("received") is { } day)
            {
                if (DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on)) received = on;
                else Wrong(Fault.Of(FaultCodes.TableDay, "received", Shown(day)));
            }
            if (_faults.Count > 0) return null;
            if (bought.Reckon(item.Unit, out var quantity) is { } why)
            {
                Wrong(why);
                return null;
            }
            return new StockLot(quantity) { Supplier = Text("supplier"), Number = Text("number"), Drawer = Text("drawer"), Received = received, Cost = cost, Currency = Text("currency") };
        }

        private void Wrong(Fault fault) => _faults.Add(fault);

        /// <summary>A field; null when it is empty or not there.</summary>
        private string? Text(string column) => _columns.TryGetValue(column, out var at) && at < _cells.Length && _cells[at] is { Length: > 0 } text ? text : null;

        private decimal? Number(string column)
        {
            if (Text(column) is not { } text) return null;
            if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)) return number;
            Wrong(Fault.Of(FaultCodes.TableNumber, column, Shown(text)));
            return null;
        }

        private Quantity? Fine(string column, decimal number)
        {
            if (Quantity.Exactly(number) is { } quantity) return quantity;
            Wrong(Fault.Of(FaultCodes.TableNumber, column, number.ToString(CultureInfo.InvariantCulture)));
            return null;
        }
    }
}
