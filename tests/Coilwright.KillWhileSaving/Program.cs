using System.Globalization;
using Coilwright.KillWhileSaving;

// write FOLDER: edits and saves until it is killed. receive FOLDER: takes in deliveries until it is killed. check [KILLS]: starts such writers, kills them, and looks for what they were
// told was kept.
switch (args)
{
    case ["write", var folder]:
        return await Writer.RunAsync(folder);
    case ["receive", var folder]:
        return await Receiver.RunAsync(folder);
    case ["check"] or ["check", _]:
        var kills = args.Length == 2 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 200;
        var scratch = Directory.CreateTempSubdirectory("coilwright-kills-").FullName;
        try
        {
            var figures = await KillCheck.RunAsync(kills, scratch, Console.Out);
            await Console.Out.WriteLineAsync(figures.ToString());
            var stock = await StockKillCheck.RunAsync(kills, Directory.CreateDirectory(Path.Combine(scratch, "stock")).FullName);
            await Console.Out.WriteLineAsync(stock.ToString());
            return figures.IsSound && stock.IsSound ? 0 : 1;
        }
        finally
        {
            Directory.Delete(scratch, recursive: true);
        }
    default:
        await Console.Error.WriteLineAsync("write FOLDER, or check [KILLS]");
        return 2;
}
