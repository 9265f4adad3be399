using System.Reflection;

namespace ClearanceCheck.Cli;

/// <summary>The program's version, as it stands in every report.</summary>
internal static class ProgramVersion
{
    public static string Text { get; } =
        typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
        ?? throw new InvalidOperationException("The program carries no version.");
}
