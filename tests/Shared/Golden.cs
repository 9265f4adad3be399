namespace ClearanceCheck.Tests.Shared;

/// <summary>Compares text with a file beside the tests; CLEARANCECHECK_RENEW=1 rewrites the files in the folder named by CLEARANCECHECK_EXPECTATIONS.</summary>
internal static class Golden
{
    public static void Matches(string name, string actual)
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Expectations", name + ".txt");
        if (Environment.GetEnvironmentVariable("CLEARANCECHECK_RENEW") == "1")
        {
            string folder = Environment.GetEnvironmentVariable("CLEARANCECHECK_EXPECTATIONS") ?? throw new InvalidOperationException("Set CLEARANCECHECK_EXPECTATIONS to the folder of the expected texts.");
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, name + ".txt"), actual + "\n");
            return;
        }

        File.Exists(file).ShouldBeTrue($"There is no expected text {name}.txt; renew and read it.");
        actual.ShouldBe(File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd('\n'));
    }
}
