using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Space;

/// <summary>What is clear between two rows that stand one behind the other.</summary>
/// <param name="Near">The row of the smaller distance across the hall.</param>
/// <param name="Far">The row behind it.</param>
/// <param name="Clear">From the back of the one to the front of the other.</param>
public sealed record Aisle(Rack Near, Rack Far, Length Clear)
{
    /// <summary>Rows that touch stand back to back; rows that reach into one another are told by another rule.</summary>
    private static readonly Length Touching = Length.FromMillimetres(1);

    /// <summary>All aisles of a building, hall by hall: of each row to the next one behind it.</summary>
    public static IEnumerable<Aisle> Of(Plan plan)
    {
        foreach (var hall in plan.Building.Racks.GroupBy(r => r.Hall.Index))
        {
            var rows = hall.GroupBy(r => r.Row).Select(r => r.ToArray()).OrderBy(r => r[0].Y).ToArray();
            for (var i = 0; i < rows.Length; i++)
            {
                for (var j = i + 1; j < rows.Length; j++)
                {
                    if (!StandBehind(rows[i], rows[j])) continue;
                    var clear = rows[j][0].Y - (rows[i][0].Y + rows[i][0].Type.Depth);
                    if (clear > Touching) yield return new Aisle(rows[i][0], rows[j][0], clear);
                    break;
                }
            }
        }
    }

    private static bool StandBehind(Rack[] near, Rack[] far) =>
        Left(far) < Right(near) - Touching && Left(near) < Right(far) - Touching;

    private static Length Left(Rack[] row) => row.Min(r => r.X - (r.Type.Width * (1 / 2.0)));

    private static Length Right(Rack[] row) => row.Max(r => r.X + (r.Type.Width * (1 / 2.0)));
}
