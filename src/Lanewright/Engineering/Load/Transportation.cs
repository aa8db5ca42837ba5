namespace Lanewright.Engineering.Load;

/// <summary>The transportation problem: so much to send from each row, so much to take at each column, and the most worth of it; with
/// equal amounts it is the assignment problem. Shortest augmenting paths with prices, all in whole numbers, so that it ends and ends
/// right.</summary>
public sealed class Transportation
{
    /// <summary>Worths between 0 and 1 are taken in this many steps.</summary>
    public const long Steps = 1L << 40;

    private const long Unreached = long.MaxValue / 2;

    private readonly long[,] cost;
    private readonly long[] rowPrice;
    private readonly long[] columnPrice;
    private readonly long[] left;
    private readonly int rows;
    private readonly int columns;

    private Transportation(long[] supply, long[] demand, double[,] worth)
    {
        (rows, columns) = (supply.Length, demand.Length + 1);
        cost = new long[rows, columns];
        // The last column takes what is better not sent at all.
        for (var row = 0; row < rows; row++)
            for (var column = 0; column < demand.Length; column++) cost[row, column] = -(long)Math.Round(worth[row, column] * Steps);
        rowPrice = new long[rows];
        columnPrice = new long[columns];
        for (var row = 0; row < rows; row++)
            for (var column = 0; column < columns; column++) rowPrice[row] = Math.Min(rowPrice[row], cost[row, column]);
        left = [.. demand, supply.Sum()];
        Sent = new long[rows, columns];
        for (var row = 0; row < rows; row++)
            for (var toSend = supply[row]; toSend > 0;) toSend -= Augment(row, toSend);
        AtMost = Bound(supply, demand);
    }

    /// <summary>What each row sends to each column.</summary>
    public long[,] Sent { get; }

    /// <summary>A worth that no way of sending exceeds, by the prices.</summary>
    public double AtMost { get; }

    /// <summary>Solves a problem.</summary>
    /// <param name="supply">What each row can send.</param>
    /// <param name="demand">What each column can take.</param>
    /// <param name="worth">What sending one from a row to a column is worth, 0 to 1.</param>
    public static Transportation Of(long[] supply, long[] demand, double[,] worth) => new(supply, demand, worth);

    /// <summary>Sends as much as one cheapest path allows from a row to a column with room.</summary>
    private long Augment(int start, long wanted)
    {
        var distance = new long[columns];
        var cameFrom = new int[columns];
        var isDone = new bool[columns];
        var rowDistance = new long[rows];
        var rowCameFrom = new int[rows];
        Array.Fill(distance, Unreached);
        Array.Fill(rowDistance, Unreached);
        rowDistance[start] = 0;
        rowCameFrom[start] = -1;
        Relax(start, 0, distance, cameFrom, isDone);
        var end = -1;
        while (end < 0)
        {
            var nearest = -1;
            for (var column = 0; column < columns; column++)
                if (!isDone[column] && (nearest < 0 || distance[column] < distance[nearest])) nearest = column;
            isDone[nearest] = true;
            if (left[nearest] > 0) end = nearest;
            else
                for (var row = 0; row < rows; row++)
                {
                    // Back along what a row sends here costs nothing more: its reduced cost is zero.
                    if (Sent[row, nearest] == 0 || rowDistance[row] < Unreached) continue;
                    (rowDistance[row], rowCameFrom[row]) = (distance[nearest], nearest);
                    Relax(row, distance[nearest], distance, cameFrom, isDone);
                }
        }
        var length = distance[end];
        for (var column = 0; column < columns; column++)
            if (isDone[column]) columnPrice[column] += distance[column] - length;
        for (var row = 0; row < rows; row++)
            if (rowDistance[row] < Unreached) rowPrice[row] += length - rowDistance[row];
        return Send(start, end, wanted, cameFrom, rowCameFrom);
    }

    private void Relax(int row, long reached, long[] distance, int[] cameFrom, bool[] isDone)
    {
        for (var column = 0; column < columns; column++)
        {
            var through = reached + cost[row, column] - rowPrice[row] - columnPrice[column];
            if (isDone[column] || through >= distance[column]) continue;
            (distance[column], cameFrom[column]) = (through, row);
        }
    }

    private long Send(int start, int end, long wanted, int[] cameFrom, int[] rowCameFrom)
    {
        var amount = Math.Min(wanted, left[end]);
        for (var (column, row) = (end, cameFrom[end]); row != start; row = cameFrom[column])
        {
            column = rowCameFrom[row];
            amount = Math.Min(amount, Sent[row, column]);
        }
        left[end] -= amount;
        for (var (column, row) = (end, cameFrom[end]); ; row = cameFrom[column])
        {
            Sent[row, column] += amount;
            if (row == start) return amount;
            column = rowCameFrom[row];
            Sent[row, column] -= amount;
        }
    }

    private double Bound(long[] supply, long[] demand)
    {
        var bound = 0.0;
        for (var row = 0; row < rows; row++) bound -= supply[row] * (double)rowPrice[row];
        for (var column = 0; column < demand.Length; column++) bound -= demand[column] * (double)columnPrice[column];
        return bound / Steps;
    }
}
