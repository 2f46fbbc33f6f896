using System.Text;
using Rickyard.Core.Quantities;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Rickyard.Screens;

/// <summary>Where a command speaks: results to one writer, talk to another, plain text without colour, wrapped to one width.</summary>
/// <param name="output">Results.</param>
/// <param name="error">Problems and progress.</param>
/// <param name="width">Columns of text.</param>
/// <param name="isWatched">Whether a person watches the talk, so that progress may overwrite its line.</param>
internal sealed class Screen(TextWriter output, TextWriter error, int width, bool isWatched = false)
{
    private const int WidestText = 100;
    private const int NarrowestText = 40;

    /// <summary>Results.</summary>
    public TextWriter Output { get; } = output;

    /// <summary>Problems and progress.</summary>
    public TextWriter Error { get; } = error;

    /// <summary>Columns of text.</summary>
    public int Width { get; } = width;

    /// <summary>The real console; text into a file or a pipe is as wide as text ever gets.</summary>
    public static Screen OfConsole()
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var width = Console.IsOutputRedirected ? WidestText : Math.Clamp(Console.WindowWidth, NarrowestText, WidestText);
        return new(Console.Out, Console.Error, width, !Console.IsErrorRedirected);
    }

    /// <summary>A paragraph of the result.</summary>
    public void Paragraph(string text) => Write(Output, new Text(text));

    /// <summary>Sentences of the result, each with a dash and hanging lines.</summary>
    public void Bullets(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences) Write(Output, Hanging("- ", sentence));
    }

    /// <summary>An empty line in the result.</summary>
    public void Gap() => Output.WriteLine();

    /// <summary>A table of the result.</summary>
    /// <param name="alignment">A letter a column: l for text, r for numbers, whose digits then stand in line.</param>
    /// <param name="heads">Heads of the columns.</param>
    /// <param name="rows">Cells as they are printed.</param>
    public void Table(string alignment, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table().Border(TableBorder.Simple).HideFooters();
        for (var column = 0; column < heads.Count; column++)
            table.AddColumn(new TableColumn(new Text(heads[column])) { Alignment = alignment[column] == 'r' ? Justify.Right : Justify.Left, NoWrap = alignment[column] == 'r' || column == 0 });
        foreach (var row in rows) table.AddRow(row.Select(cell => new Text(cell)));
        Write(Output, table);
    }

    /// <summary>Every problem in the one layout, as talk.</summary>
    /// <param name="about">What they are about: a file or a command.</param>
    /// <param name="problems">At least one.</param>
    public void Problems(string about, IReadOnlyList<Problem> problems)
    {
        Error.WriteLine(problems.Count == 1 ? $"{about}: 1 problem" : $"{about}: {problems.Count} problems");
        foreach (var problem in problems)
        {
            Write(Error, Hanging("  ", problem.Field));
            Write(Error, Hanging("      ", problem.WhatIsWrong));
            Write(Error, Hanging("      ", problem.WhatToDo));
        }
    }

    /// <summary>A line of talk.</summary>
    public void Say(string line) => Write(Error, new Text(line));

    /// <summary>How far long work has come; silent unless a person watches.</summary>
    /// <param name="fraction">0 to 1.</param>
    public void Progress(double fraction)
    {
        if (!isWatched) return;
        Error.Write(fraction < 1 ? $"\r{100 * Math.Clamp(fraction, 0, 1),3:0} %" : "\r     \r");
        Error.Flush();
    }

    private static Grid Hanging(string mark, string text) => new Grid()
        .AddColumn(new GridColumn { Width = mark.Length, Padding = new(0, 0), NoWrap = true })
        .AddColumn(new GridColumn { Padding = new(0, 0) })
        .AddRow(new Text(mark), new Text(text));

    private void Write(TextWriter writer, IRenderable content)
    {
        using var page = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(page),
        });
        console.Profile.Width = Width;
        console.Profile.Capabilities.Unicode = true;
        console.Write(content);
        foreach (var line in page.ToString().Trim('\r', '\n').Split('\n')) writer.WriteLine(line.TrimEnd());
    }
}
