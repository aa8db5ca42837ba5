namespace Lanewright.Engineering.Fabrics;

/// <summary>Chooses a leaf for each kind of host under one upper tier.</summary>
internal sealed class MixedLeaves(
    SearchContext context, Model.Wanted.FabricShape shape, int planes, SwitchBuild build, int count, Incumbent incumbent)
{
    /// <summary>Offers the best choices.</summary>
    public void Try(List<LeafRow>[] rows, double upper)
    {
        _ = (context, shape, planes, build, count, incumbent, rows, upper);
    }
}
