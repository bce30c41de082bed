using System.Text;
using Coilwright.Cli.Reports;
using Coilwright.Core.Faults;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>Where answers and errors go: answers to standard output, errors for people to standard error, and as JSON nothing but JSON to standard
/// output.</summary>
internal sealed class Output(Language language, bool json)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public Language Language { get; } = language;

    public bool IsJson { get; } = json;

    /// <summary>Writes an answer whole, then gives back its exit code; a full disk under standard output is an error like any other.</summary>
    public int Answer(string text, int code) => Answer(Utf8.GetBytes(text), code);

    /// <inheritdoc cref="Answer(string, int)"/>
    public int Answer(ReadOnlySpan<byte> bytes, int code)
    {
        try
        {
            using var stream = Console.OpenStandardOutput();
            stream.Write(bytes);
            stream.Flush();
            return code;
        }
        catch (IOException e)
        {
            Complain(FaultText.Of([SafeFile.Why("-", e)], "-", Language));
            return ExitCodes.BadInput;
        }
    }

    /// <summary>Says what is wrong, and gives back the exit code.</summary>
    /// <param name="faults">What is wrong, at least one.</param>
    /// <param name="file">The file that it is wrong with; null for the call itself.</param>
    public int Fail(IReadOnlyList<Fault> faults, string? file)
    {
        var code = ExitCodes.Of(faults);
        if (IsJson) return Answer(ErrorJson.Of(faults, file, Language), code);
        Complain(FaultText.Of(faults, file, Language));
        return code;
    }

    /// <summary>Says that it was stopped, and gives back the exit code.</summary>
    public int Stopped()
    {
        Complain(Language.Help.Stopped + "\n");
        return ExitCodes.Cancelled;
    }

    private static void Complain(string text)
    {
        try
        {
            using var stream = Console.OpenStandardError();
            stream.Write(Utf8.GetBytes(text));
        }
        catch (IOException)
        {
            // Nobody is left to tell; the exit code still does.
        }
    }
}
