using Lanewright.Engineering.Links;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>An answer about a code as JSON.</summary>
public static class CodeJson
{
    /// <summary>Writes it.</summary>
    public static void Write(CodeAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("code", answer.Name);
        writer.WriteString("verdict", Checks.Word(answer.Verdict));
        writer.WriteString("mark", answer.Limit is { } limit ? Marks.Name(limit.Source.Mark) : "");
        writer.Share("preFecErrorRatio", answer.Errors);
        writer.Share("preFecErrorLimit", answer.Limit?.Value);
        writer.Number("fecMarginDb", answer.Margin?.Value);
        writer.Share("codewordErrorRatio", answer.Codewords);
        writer.Share("frameLossRatio", answer.Frames);
        writer.Share("frameLossRatioUncoded", answer.FramesUncoded);
        writer.Number("qualityNrz", answer.QualityOfTwo);
        writer.Number("qualityPam4", answer.QualityOfFour);
        writer.Share("postFecErrorRatio", answer.ErrorsBehind);
        writer.WriteEndObject();
    });
}
