using System.Diagnostics;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads what a part looks like or stops: which form it has by its kind and keys, and the body it is on.</summary>
internal static class PartFormReader
{
    public static (string Body, PartForm Form)? Read(PartSource part)
    {
        if (FormChoice.Of(part) is not { } kind)
        {
            if (part.Reader.Optional("body") is { IsPresent: true } typed) BodyWord.Read(typed, part.Draft);
            return null;
        }

        bool onOneBody = kind is PartFormKind.Chain or PartFormKind.Plate or PartFormKind.Box or PartFormKind.Turned or PartFormKind.Scanned or PartFormKind.Unshaped;
        Placed<string>? body = onOneBody ? BodyWord.Read(part.Reader.Required("body", "the body it is fixed to"), part.Draft) : null;
        PartForm? form = Form(kind, part with { Body = body?.Value });
        if (form is null || (onOneBody && body is null)) return null;
        return (body?.Value ?? form.Ends[0].Body, form);
    }

    private static PartForm? Form(PartFormKind kind, PartSource part) => kind switch
    {
        PartFormKind.Chain => ChainForm.Read(part),
        PartFormKind.Plate => PlateForm.Read(part),
        PartFormKind.Box => BoxForm.Read(part),
        PartFormKind.Turned => TurnedForm.Read(part),
        PartFormKind.Scanned => ScanForm.Read(part),
        PartFormKind.Hose => HoseForm.Read(part),
        PartFormKind.Link => LinkForm.Read(part),
        PartFormKind.Shock => ShockForm.Read(part),
        PartFormKind.Shaft => ShaftForm.Read(part),
        PartFormKind.Coil => CoilForm.Read(part),
        PartFormKind.BumpStop => BumpStopForm.Read(part),
        PartFormKind.LimitStrap => LimitStrapForm.Read(part),
        PartFormKind.SteeringStop => SteeringStopForm.Read(part),
        PartFormKind.Unshaped => new PartForm.Unshaped(),
        _ => throw new UnreachableException(),
    };
}
