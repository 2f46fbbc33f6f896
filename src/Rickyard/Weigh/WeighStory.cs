using Rickyard.Screens;

namespace Rickyard.Weigh;

/// <summary>The answer in sentences.</summary>
internal static class WeighStory
{
    public static void Tell(WeighAnswer answer, Screen screen)
    {
        screen.Paragraph(answer.Sentence);
        screen.Gap();
        screen.Paragraph(answer.Next);
        screen.Gap();
        screen.Bullets(answer.Notes);
        if (answer.Cautions.Count == 0) return;
        screen.Gap();
        screen.Bullets(answer.Cautions);
    }
}
