using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>A value with its source. A value that is not known is a null of this type: an empty cell is never "no limit".</summary>
/// <param name="Value">The value.</param>
/// <param name="Source">Who says so.</param>
public readonly record struct Known<T>(T Value, Citation Source)
{
    /// <summary>The same source with another value, for a change of unit.</summary>
    public Known<TOther> As<TOther>(Func<T, TOther> change) => new(change(Value), Source);
}
