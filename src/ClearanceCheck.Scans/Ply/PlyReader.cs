namespace ClearanceCheck.Scans.Ply;

/// <summary>Reads PLY: text and binary, any tables and columns, faces of three or more corners.</summary>
internal static class PlyReader
{
    /// <summary>The triangles; null, and said, where the file can't be used.</summary>
    public static MeshBuilder? Read(ScanFile file)
    {
        PlyHeader? header = PlyHeaderReader.Read(file);
        if (header is null || !IsUsable(file, header)) return null;
        PlyValues values = header.Format == PlyFormat.Text ? new PlyTextValues(file, header) : new PlyBinaryValues(file, header);
        if (!CountsFit(file, header, values)) return null;
        var body = new PlyBody(file, values);
        return body.Read(header) ? Mesh(file, body) : null;
    }

    private static bool IsUsable(ScanFile file, PlyHeader header)
    {
        if (header.Element(PlyElement.Vertices) is not { } vertices || !HasCoordinates(vertices)) ScanMessages.PlyNoCoordinates(file);
        else if (header.Element(PlyElement.Strips) is not null) ScanMessages.PlyStrips(file);
        else if (header.Element(PlyElement.Faces) is not { Count: > 0 } faces) ScanMessages.NoTriangles(file);
        else if (PlyBody.CornerColumn(faces) is var corners && (corners < 0 || faces.Properties[corners] is not { IsList: true } list || !list.Type.IsWhole())) ScanMessages.PlyNoCorners(file);
        else if (vertices.Count > ScanLimits.MostPoints) ScanMessages.PlyTooManyPoints(file, vertices.Count);
        else if (faces.Count > ScanLimits.MostTriangles) ScanMessages.TooManyTriangles(file, faces.Count);
        else return true;
        return false;
    }

    private static bool HasCoordinates(PlyElement vertices) =>
        HasNumber(vertices, "x") && HasNumber(vertices, "y") && HasNumber(vertices, "z");

    private static bool HasNumber(PlyElement vertices, string name) => vertices.Column(name) is >= 0 and var column && !vertices.Properties[column].IsList;

    // Before anything is allocated or walked through: the bytes that the counts ask for at least must be there.
    private static bool CountsFit(ScanFile file, PlyHeader header, PlyValues values)
    {
        long left = values.Left + (header.Format == PlyFormat.Text ? 1 : 0);
        foreach (PlyElement element in header.Elements)
        {
            long row = Math.Max(1, values.LeastSize(element));
            if (element.Count > left / row)
            {
                ScanMessages.PlyCount(file, element.Name, element.Count, values.Left);
                return false;
            }

            left -= element.Count * row;
        }

        return true;
    }

    private static MeshBuilder? Mesh(ScanFile file, PlyBody body)
    {
        var mesh = new MeshBuilder(file, body.Corners.Length / 3);
        int[] numbers = new int[body.Points.Length];
        ReadOnlySpan<int> corners = body.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            ref int number = ref numbers[corners[i]];
            if (number == 0) number = mesh.Point(body.Points[corners[i]]) + 1;
            if (number == 0) return null;
            if (i % 3 == 2 && !mesh.Triangle(numbers[corners[i - 2]] - 1, numbers[corners[i - 1]] - 1, number - 1)) return null;
        }

        int unused = numbers.Count(0);
        if (unused > 0) ScanMessages.PlyUnusedPoints(file, unused);
        if (body.Fanned > 0) ScanMessages.PlyFanned(file, body.Fanned);
        if (body.TooFew > 0) ScanMessages.PlyTooFewCorners(file, body.TooFew);
        return mesh;
    }
}
