namespace ClearanceCheck.Cli;

/// <summary>What a fault of the program looks like to a person: one sentence, and a log file to send in.</summary>
internal static class Crash
{
    public static int Report(Exception fault, Door door)
    {
        string where = WriteLog(fault, door.TempFolder);
        door.Error.WriteLine($"The program itself failed, so nothing is decided about the vehicle; {where}.");
        return ExitStatus.ProgramFault;
    }

    private static string WriteLog(Exception fault, string folder)
    {
        string path = Path.Combine(folder, $"clearance-check-{Guid.NewGuid():N}.log");
        try
        {
            File.WriteAllText(path, $"clearance-check {ProgramVersion.Text}\n{fault}\n");
            return $"what happened is written in {path}";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"it stopped with {fault.GetType().Name}, and no log could be written";
        }
    }
}
