using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>Something that can be bought.</summary>
public interface ICatalogueItem
{
    /// <summary>The model name by which plans ask for it.</summary>
    string Name { get; }

    /// <summary>What it is, in words.</summary>
    string Title { get; }

    /// <summary>How far its price can be trusted.</summary>
    Mark PriceMark { get; }

    /// <summary>Price of one; for a cable, of one of no length.</summary>
    Money Price { get; }

    /// <summary>Where the catalogue says so.</summary>
    SourceSpan Span { get; }
}
