using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using System.Runtime.InteropServices;
using Coilwright.Cli.Commands;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>One call of the program from the shell: which verb, with what, and how it ends.</summary>
internal static class Call
{
    /// <summary>The flag that every verb has, looked for by hand too: a wrong call must still know how to answer.</summary>
    public const string JsonFlag = "--json";

    // How long a verb may take to stop by itself before it is stopped: it only has to finish a file that it is writing.
    private static readonly TimeSpan StopWithin = TimeSpan.FromSeconds(5);

    // SIGXFSZ on Linux: a limit on the size of files is reached. Unheard it ends the process in the middle of a file; heard, the write fails
    // like one on a full disk, which is told and cleaned up after.
    private const int FileSizeLimitReached = 25;

    /// <summary>The program's version.</summary>
    public static string Version { get; } =
        typeof(Call).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    public static async Task<int> RunAsync(string[] args)
    {
        var output = new Output(LanguageOption.AskedFor(args), args.TakeWhile(a => a != "--").Contains(JsonFlag, StringComparer.Ordinal));
        using var limit = OperatingSystem.IsLinux()
            ? PosixSignalRegistration.Create((PosixSignal)FileSizeLimitReached, context => context.Cancel = true)
            : null;
        try
        {
            var root = Root(output);
            // What many type first.
            if (args is ["help", .. var about])
            {
                // Of a verb that there is none of there is no help, and saying so tells which there are.
                var known = about is not [var verb, ..] || verb.StartsWith('-') || root.Subcommands.Any(c => c.Name == verb);
                args = known ? [.. about, "--help"] : about;
            }
            var parsed = root.Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
            if (args.Length == 0) return output.Answer(HelpPage.Of(root, root, output.Language), ExitCodes.Done);
            if (parsed.Action is not SynchronousCommandLineAction { ClearsParseErrors: true } && CallFaults.In(parsed) is { Count: > 0 } faults)
                return output.Fail(faults, null);
            return await parsed.InvokeAsync(new InvocationConfiguration
            {
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = StopWithin,
            }).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            return output.Stopped();
        }
#pragma warning disable CA1031 // Do not catch general exception types: the last line of defence, which says so and ends with its own code
        catch (Exception e)
#pragma warning restore CA1031
        {
            return output.Fail([Fault.Of(UsageCodes.Internal, "", "", ("detail", $"{e.GetType().Name}: {e.Message}"))], null);
        }
    }

    private static RootCommand Root(Output output)
    {
        var words = output.Language.Help;
        var root = new RootCommand(words.Program);
        root.Directives.Clear();
        root.Options.Clear();
        root.Options.Add(new Option<bool>("--help", "-h", "-?")
        {
            Description = words.Help,
            Recursive = true,
            Action = new Instead(p => output.Answer(HelpPage.Of(root, p.CommandResult.Command, output.Language), ExitCodes.Done)),
        });
        root.Options.Add(new Option<bool>("--version")
        {
            Description = words.Version,
            Action = new Instead(_ => output.Answer($"coilwright {Version}\n", ExitCodes.Done)),
        });
        foreach (var command in CommandList.All(output)) root.Subcommands.Add(command);
        return root;
    }

    /// <summary>What is done in place of a verb, whatever else stands in the call.</summary>
    private sealed class Instead(Func<ParseResult, int> act) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult) => act(parseResult);
    }
}
