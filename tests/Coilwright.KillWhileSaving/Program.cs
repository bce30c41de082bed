using System.Globalization;
using Coilwright.KillWhileSaving;

// write, receive, make, fill: edits and saves, takes in deliveries, writes down what was made, or takes lists into the tray, until it is killed. check [KILLS [ADDRESS]]: starts such programs, kills them, and looks for what they were told was kept;
// in a folder of its own, or in an empty database.
switch (args)
{
    case ["write", var sort, var way]:
        return await Writer.RunAsync(KillPlace.Of(sort, way));
    case ["receive", var sort, var way]:
        return await Receiver.RunAsync(KillPlace.Of(sort, way));
    case ["make", var sort, var way]:
        return await Keeper.RunAsync(KillPlace.Of(sort, way));
    case ["fill", var sort, var way]:
        return await Filler.RunAsync(KillPlace.Of(sort, way));
    case ["check"] or ["check", _] or ["check", _, _]:
        var kills = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 200;
        var scratch = Directory.CreateTempSubdirectory("coilwright-kills-").FullName;
        try
        {
            KillPlace place = args is [_, _, var address] ? new KillDatabase(address) : new KillFolder(scratch);
            var figures = await KillCheck.RunAsync(kills, place, Console.Out);
            await Console.Out.WriteLineAsync(figures.ToString());
            var stock = await StockKillCheck.RunAsync(kills, place);
            await Console.Out.WriteLineAsync(stock.ToString());
            var made = await MadeKillCheck.RunAsync(kills, place);
            await Console.Out.WriteLineAsync(made.ToString());
            var tray = await TrayKillCheck.RunAsync(kills, place);
            await Console.Out.WriteLineAsync(tray.ToString());
            return figures.IsSound && stock.IsSound && made.IsSound && tray.IsSound ? 0 : 1;
        }
        finally
        {
            Directory.Delete(scratch, recursive: true);
        }
    default:
        await Console.Error.WriteLineAsync("write, receive, make or fill, folder FOLDER or database ADDRESS; or check [KILLS [ADDRESS]]");
        return 2;
}
