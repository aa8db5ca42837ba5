using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>A model of switch, chassis or host.</summary>
public sealed record DeviceModel : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>What it is for.</summary>
    public required DeviceKind Kind { get; init; }

    /// <summary>Cages on its own faceplate.</summary>
    public ImmutableArray<CageBank> Banks { get; init; } = [];

    /// <summary>Slots for cards.</summary>
    public int Slots { get; init; }

    /// <summary>Height in rack units.</summary>
    public int Units { get; init; } = 1;

    /// <summary>Depth behind the front posts.</summary>
    public Length Depth { get; init; }

    /// <summary>Weight without modules.</summary>
    public Mass Weight { get; init; }

    /// <summary>Power under a usual load, without modules.</summary>
    public Watts Typical { get; init; }

    /// <summary>Most power, without modules.</summary>
    public Watts Maximum { get; init; }

    /// <summary>Power it can spare for modules in total; null when not said.</summary>
    public Watts? ModuleBudget { get; init; }

    /// <summary>Logical ports it can have; null when not said.</summary>
    public int? PortCeiling { get; init; }

    /// <summary>Switching capacity in one direction; no rate when not said.</summary>
    public BitRate Capacity { get; init; }

    /// <summary>Which way its air goes.</summary>
    public string Airflow { get; init; } = FrontToBack;

    /// <summary>Air that comes in at the front.</summary>
    public const string FrontToBack = "front-to-back";

    /// <summary>Air that comes in at the back.</summary>
    public const string BackToFront = "back-to-front";

    /// <summary>Air that comes in at one side.</summary>
    public const string SideToSide = "side-to-side";

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }
}
