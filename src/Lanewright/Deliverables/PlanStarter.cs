using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>The commented plan that <c>new</c> writes.</summary>
public static class PlanStarter
{
    private const string Name = "data/starter/plan.yaml";

    /// <summary>Writes it.</summary>
    public static void Write(Stream stream)
    {
        using var writer = new StreamWriter(stream, new System.Text.UTF8Encoding(false), leaveOpen: true);
        writer.Write(EmbeddedText.Read(Name).Content);
    }
}
