namespace ClearanceCheck.Scans.Ply;

/// <summary>The numbers of a PLY body that is text.</summary>
internal sealed class PlyTextValues(ScanFile file, PlyHeader header) : PlyValues
{
    private readonly AsciiTokens tokens = new(file.Content, header.BodyAt, header.BodyLine);

    public override long Left => file.Length - tokens.Position;

    public override bool TryNext(PlyType type, out double value)
    {
        ReadOnlySpan<byte> word = tokens.Next();
        if (AsciiTokens.TryNumber(word, out value)) return true;
        if (word.IsEmpty) ScanMessages.PlyEnds(file);
        else ScanMessages.TextNumber(file, tokens.Line, AsciiTokens.Shown(word));
        return false;
    }

    public override bool TrySkip(PlyType type)
    {
        if (!tokens.Next().IsEmpty) return true;
        ScanMessages.PlyEnds(file);
        return false;
    }

    // A figure and what parts it from the next; the last figure may stand at the end of the file.
    public override long LeastSize(PlyElement element) => 2L * element.Properties.Count;

    public override bool IsAtEnd() => tokens.Next().IsEmpty;
}
