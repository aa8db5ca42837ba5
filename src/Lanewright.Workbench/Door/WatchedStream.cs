namespace Lanewright.Workbench.Door;

/// <summary>Collects what is written, until nobody wants it any more.</summary>
/// <param name="gone">Set when nobody does.</param>
internal sealed class WatchedStream(CancellationToken gone) : MemoryStream
{
    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        gone.ThrowIfCancellationRequested();
        base.Write(buffer, offset, count);
    }

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        gone.ThrowIfCancellationRequested();
        base.Write(buffer);
    }

    /// <inheritdoc/>
    public override void WriteByte(byte value)
    {
        gone.ThrowIfCancellationRequested();
        base.WriteByte(value);
    }
}
