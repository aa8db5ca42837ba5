using Lanewright.Model.Labels;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>labels</c>, or its absence, into a sheet.</summary>
internal static class LabelBinder
{
    /// <summary>The sheet.</summary>
    public static LabelSheet Bind(MapNode? section, StandardsLibrary standards)
    {
        var map = section ?? new MapNode(default, []);
        var page = map.Text("page") ?? LabelLanguage.Pages[0];
        return new LabelSheet(
            page,
            standards.Facility("page-" + page, "width").As(Length.FromMillimetres).Value,
            standards.Facility("page-" + page, "height").As(Length.FromMillimetres).Value,
            map.Length("width") ?? Length.FromMillimetres(60),
            map.Length("height") ?? Length.FromMillimetres(24),
            map.Whole("columns") ?? 3,
            map.Whole("rows") ?? 11,
            map.Length("left") ?? Length.FromMillimetres(15),
            map.Length("top") ?? Length.FromMillimetres(16.5),
            map.Length("gap-across") ?? default,
            map.Length("gap-down") ?? default,
            map.Span);
    }
}
