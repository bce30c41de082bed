using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;
using Coilwright.Storage.Json;
using CsvHelper;
using CsvHelper.Configuration;

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

/// <summary>Reads deliveries from a table, a line for each lot: comma- or semicolon-separated values in UTF-8 with a line of heads.</summary>
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
    /// <param name="utf8">Its bytes; a byte order mark is allowed.</param>
    /// <param name="there">What is in stock.</param>
    /// <param name="data">What beads are read with.</param>
    public static DeliveryReading Read(ReadOnlyMemory<byte> utf8, IEnumerable<StockLine> there, ReckoningData data)
    {
        if (utf8.Length > PieceFile.MaxBytes) return Nothing(PieceFile.TooLarge());
        if (!System.Text.Unicode.Utf8.IsValid(utf8.Span)) return Nothing(JsonText.NotUtf8(utf8));
        var text = Encoding.UTF8.GetString(utf8.Span).TrimStart('\uFEFF');
        var isBad = false;
        using var csv = new CsvReader(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            DetectDelimiter = true,
            DetectDelimiterValues = [",", ";", "\t"],
            TrimOptions = TrimOptions.Trim,
            // A quote where none may stand.
            BadDataFound = _ => isBad = true,
            MissingFieldFound = null,
            PrepareHeaderForMatch = head => head.Header.ToUpperInvariant(),
            MaxFieldSize = 10_000,
        });
        try
        {
            if (!csv.Read() || !csv.ReadHeader()) return Nothing(Fault.Of(FaultCodes.FieldMissing, "item", ""));
            // Each quote has its other: one that is left over opened a field that nothing closes, and took all that follows for its text.
            if (text.Count(c => c == '"') % 2 != 0) return Nothing(Broken(text, csv.Configuration));
            if (HeadsOf(csv.HeaderRecord!) is { Length: > 0 } wrong) return new DeliveryReading([], wrong, null);
            var reading = new Reading(csv, there, data).Run();
            return isBad ? Nothing(Broken(text, csv.Configuration)) : reading;
        }
        catch (CsvHelperException)
        {
            // A field without an end: what follows cannot be told apart.
            return Nothing(Broken(text, csv.Configuration));
        }
    }

    // Read once more as far as the line that is at fault begins.
    private static Fault Broken(string text, IReaderConfiguration how)
    {
        var isBad = false;
        using var csv = new CsvParser(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = how.Delimiter, BadDataFound = _ => isBad = true, MaxFieldSize = how.MaxFieldSize });
        var (begin, end) = (1, 0);
        try
        {
            while (!isBad && csv.Read())
            {
                (begin, end) = (end + 1, csv.RawRow);
                // Its cells are looked at only when they are asked for.
                _ = csv.Record;
            }
        }
        catch (CsvHelperException)
        {
            begin = end + 1;
        }
        return Fault.Of(FaultCodes.TableBroken, "", "").At(begin, 0);
    }

    private static ImmutableArray<Fault> HeadsOf(string[] heads)
    {
        var known = Columns.ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. Needed.Where(n => !heads.Contains(n, StringComparer.OrdinalIgnoreCase)).Select(n => Fault.Of(FaultCodes.FieldMissing, n, "").At(1, 0)),
            .. heads.Where(h => !known.Contains(h)).Select(h => Shown(h)).Select(h => Fault.Of(FaultCodes.FieldUnknown, h, h, ("known", string.Join(", ", Columns)), ("nearest", NearestName.Of(h, Columns) ?? "")).At(1, 0)),
            .. heads.GroupBy(h => h, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => Fault.Of(FaultCodes.FieldTwice, Shown(g.Key), "", ("firstLine", "1")).At(1, 0)),
        ];
    }

    private static DeliveryReading Nothing(Fault why) => new([], [why], null);

    private static string Shown(string text) => text.Length <= 60 ? text : text[..60] + "...";

    /// <summary>One reading: what is in stock grows with every line, so that later lines are looked at as they will be met.</summary>
    private sealed class Reading
    {
        private readonly CsvReader _csv;
        private readonly ReckoningData _data;
        private readonly Dictionary<string, (StockItem Item, StockBalance Balance)> _stock = new(StringComparer.Ordinal);
        private readonly ImmutableArray<ItemChange>.Builder _items = ImmutableArray.CreateBuilder<ItemChange>();
        private readonly ImmutableArray<Movement>.Builder _movements = ImmutableArray.CreateBuilder<Movement>();
        private List<Fault> _faults = [];

        public Reading(CsvReader csv, IEnumerable<StockLine> there, ReckoningData data)
        {
            (_csv, _data) = (csv, data);
            foreach (var line in there) _stock[line.Item.Key] = (line.Item, line.Balance);
        }

        public DeliveryReading Run()
        {
            var rows = ImmutableArray.CreateBuilder<DeliveryRow>();
            while (_csv.Read())
            {
                if (_csv.Parser.Record!.All(string.IsNullOrWhiteSpace)) continue;
                if (rows.Count == MostRows) return Nothing(Fault.Of(FaultCodes.TableTooLong, "", "", ("max", MostRows.ToString(CultureInfo.InvariantCulture))).At(_csv.Parser.RawRow, 0));
                rows.Add(Row());
            }
            if (rows.Count == 0) return Nothing(Fault.Of(FaultCodes.TableNoRows, "", ""));
            var isSound = rows.All(r => r.Faults.IsEmpty);
            return new DeliveryReading(rows.ToImmutable(), [], isSound ? new StockChange { Items = _items.ToImmutable(), Movements = _movements.ToImmutable() } : null);
        }

        private DeliveryRow Row()
        {
            _faults = [];
            // The line on which it begins; a field may run over several.
            var line = _csv.Parser.RawRow - _csv.Parser.RawRecord.TrimEnd('\r', '\n').Count(c => c == '\n');
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
            return new DeliveryRow(line, Shown(key), _faults.Count == 0 ? lot : null, item.Unit, isNew, [.. _faults.Select(f => f.At(line, 0))]);
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
        private string? Text(string column) => _csv.TryGetField<string>(column, out var text) && text is { Length: > 0 } ? text : null;

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
