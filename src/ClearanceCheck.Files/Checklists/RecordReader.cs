using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Checklists;

/// <summary>Reads what the inspector answers for: <c>answers</c>, <c>tightened</c>, <c>temporary</c>, <c>absent</c>, <c>fitted</c>.</summary>
internal static class RecordReader
{
    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        ImmutableArray<Answer> answers = AnswersReader.Read(reader.Optional("answers"), draft);
        Field fitted = reader.Optional("fitted");
        draft.Record = new InspectorsRecord
        {
            Answers = answers,
            Tightened = TightenedReader.Read(reader.Optional("tightened"), draft),
            Temporary = TemporaryReader.Read(reader.Optional("temporary"), draft),
            Absent = AbsentReader.Read(reader.Optional("absent"), answers, draft),
            Fitted = fitted.IsPresent ? ReadFitted(fitted) : null,
        };
    }

    private static ImmutableArray<string>? ReadFitted(Field field)
    {
        if (field.Words(FittedWords.All) is not { } words) return null;
        ImmutableArray<string> fitted = [.. words.Value.Select(w => w.Value)];
        if (fitted.Length > 1 && fitted.Contains(FittedWords.None)) FileMessages.FittedAndNone(field);
        return fitted.Remove(FittedWords.None);
    }
}
