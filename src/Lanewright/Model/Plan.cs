using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Demands;
using Lanewright.Model.Devices;
using Lanewright.Model.Labels;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;
using Lanewright.Model.Places;
using Lanewright.Model.Plant;
using Lanewright.Model.Power;
using Lanewright.Model.Wanted;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model;

/// <summary>A plan with all names resolved and all groups expanded.</summary>
public sealed record Plan
{
    /// <summary>Its name, used in file names and headings.</summary>
    public required string Name { get; init; }

    /// <summary>What it is about, in words.</summary>
    public required string Title { get; init; }

    /// <summary>Its revision; empty when not stated.</summary>
    public required string Revision { get; init; }

    /// <summary>Its date; empty when not stated. No clock is ever read.</summary>
    public required string Date { get; init; }

    /// <summary>The unit its prices are in.</summary>
    public required string Currency { get; init; }

    /// <summary>The limits it is judged by.</summary>
    public required StandardsLibrary Standards { get; init; }

    /// <summary>What can be bought.</summary>
    public required Catalogue Catalogue { get; init; }

    /// <summary>What holds for the whole project.</summary>
    public required Policy Policy { get; init; }

    /// <summary>Where things stand.</summary>
    public required Building Building { get; init; }

    /// <summary>The devices.</summary>
    public required DeviceTable Devices { get; init; }

    /// <summary>What the plan says of links, in natural order of the statements' names.</summary>
    public required ImmutableArray<LinkStatement> Statements { get; init; }

    /// <summary>The links.</summary>
    public required LinkTable Links { get; init; }

    /// <summary>Traffic the network has to carry, in natural order of the names; none when the plan states none.</summary>
    public ImmutableArray<Demand> Demands { get; init; } = [];

    /// <summary>Trunks between panels, in natural order of their names; none when the plan describes none.</summary>
    public ImmutableArray<TrunkGroup> Trunks { get; init; } = [];

    /// <summary>Demands that could not be read, by name; what is wrong with them has been reported.</summary>
    public ImmutableArray<string> DemandsLeftOut { get; init; } = [];

    /// <summary>Demands of which a part could not be read, by name: they are studied without it.</summary>
    public ImmutableArray<string> DemandsInPart { get; init; } = [];

    /// <summary>Power feeds, in natural order of their names; none when the plan describes none.</summary>
    public ImmutableArray<PowerFeed> Power { get; init; } = [];

    /// <summary>Fibre between sites, in natural order of the names.</summary>
    public ImmutableArray<FibreSpan> Spans { get; init; } = [];

    /// <summary>Lines between sites, in natural order of the names.</summary>
    public ImmutableArray<LineStatement> Lines { get; init; } = [];

    /// <summary>Ports of the channels of lines, line by line, route by route, channel by channel; none of lines whose ports the plan does
    /// not name.</summary>
    public ImmutableArray<LinePort> LinePorts { get; init; } = [];

    /// <summary>The sheet that labels are printed on.</summary>
    public required LabelSheet Labels { get; init; }

    /// <summary>Equipment on hand.</summary>
    public required ImmutableArray<StockItem> Stock { get; init; }

    /// <summary>The fabric that is asked for; null when none is.</summary>
    public WantedFabric? Wanted { get; init; }

    /// <summary>The catalogue files it names, in the order they were read.</summary>
    public ImmutableArray<string> CatalogueFiles { get; init; } = [];

    /// <summary>The tables of standards values it names, in the order they were read.</summary>
    public ImmutableArray<string> StandardsFiles { get; init; } = [];

    /// <summary>The files it was read from, in the order they were read.</summary>
    public required ImmutableArray<SourceText> Sources { get; init; }
}
