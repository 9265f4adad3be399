using System.Xml.Linq;

namespace ClearanceCheck.House.Tests;

public sealed class ProjectTests
{
    [Fact]
    public void Every_project_is_in_the_solution_and_every_entry_is_a_project() =>
        ProjectRules.NotInBoth(Repository.Projects, Repository.SolutionText).ShouldBeEmpty();

    [Fact]
    public void Projects_lie_below_src_and_tests_only() =>
        Repository.Projects.Where(p => !p.StartsWith("src/", StringComparison.Ordinal) && !p.StartsWith("tests/", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void Rooms_refer_to_each_other_in_one_way_as_the_table_says()
    {
        string[] rooms = [.. Repository.Projects.Where(p => p.StartsWith("src/", StringComparison.Ordinal))];

        rooms.Select(ProjectRules.RoomOf).Order().ShouldBe(ProjectRules.Rooms.Keys.Order());
        rooms.SelectMany(p => ProjectRules.WrongReferences(ProjectRules.RoomOf(p), Repository.ReadXml(p))).ShouldBeEmpty();
    }

    [Fact]
    public void The_table_has_no_circle()
    {
        var reached = new HashSet<string>();
        while (ProjectRules.Rooms.FirstOrDefault(r => !reached.Contains(r.Key) && r.Value.All(reached.Contains)).Key is { } next) reached.Add(next);

        reached.Count.ShouldBe(ProjectRules.Rooms.Count);
    }

    [Fact]
    public void Versions_of_packages_stand_in_one_file_only() =>
        Repository.Files
            .Where(f => f.EndsWith(".csproj", StringComparison.Ordinal) || f.EndsWith(".props", StringComparison.Ordinal) || f.EndsWith(".targets", StringComparison.Ordinal))
            .Where(f => f != "Directory.Packages.props")
            .SelectMany(f => ProjectRules.Versions(Repository.ReadXml(f)).Select(v => $"{f}: {v}"))
            .ShouldBeEmpty();

    [Fact]
    public void A_project_left_out_of_the_solution_is_found() =>
        ProjectRules.NotInBoth(["src/A/A.csproj", "src/B/B.csproj"], """Project("{1}") = "A", "src\A\A.csproj", "{2}" """).ShouldBe(["src/B/B.csproj"]);

    [Fact]
    public void An_entry_without_a_project_is_found() =>
        ProjectRules.NotInBoth([], """Project("{1}") = "A", "src\A\A.csproj", "{2}" """).ShouldBe(["src/A/A.csproj"]);

    [Theory]
    [InlineData("Geometry", "Units", "Geometry - Units")]
    [InlineData("Documents", "Vehicles", "Documents - Units,Documents - Vehicles")]
    [InlineData("Attic", "Units", "Attic is not in the table")]
    public void A_reference_against_the_table_is_found(string room, string other, string found)
    {
        XDocument project = XDocument.Parse($"<Project><ItemGroup><ProjectReference Include=\"../ClearanceCheck.{other}/ClearanceCheck.{other}.csproj\" /></ItemGroup></Project>");

        string.Join(",", ProjectRules.WrongReferences(room, project)).ShouldBe(found);
    }

    [Theory]
    [InlineData("<PackageReference Include=\"A\" Version=\"1\" />")]
    [InlineData("<PackageReference Include=\"A\" VersionOverride=\"1\" />")]
    [InlineData("<PackageReference Include=\"A\"><Version>1</Version></PackageReference>")]
    [InlineData("<PackageVersion Include=\"A\" Version=\"1\" />")]
    public void A_version_elsewhere_is_found(string line) =>
        ProjectRules.Versions(XDocument.Parse($"<Project><ItemGroup>{line}<PackageReference Include=\"B\" /></ItemGroup></Project>")).Count().ShouldBe(1);
}
