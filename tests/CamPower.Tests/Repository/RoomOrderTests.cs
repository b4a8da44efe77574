namespace CamPower.Tests.Repository;

/// <summary>Holds the order of the rooms: an arrow may only point up their list.</summary>
public class RoomOrderTests
{
    private static readonly RoomSurvey Package = RoomSurvey.OfThePackage();

    [Fact]
    public void Package_CompilesInTheSurvey() => Assert.Empty(Package.Errors);

    [Fact]
    public void EveryFile_LiesInARoom() => Assert.Empty(Package.Homeless);

    [Fact]
    public void EveryNamespace_IsThePackagesOrTheRoomsOwn() => Assert.Empty(Package.Misnamed);

    [Fact]
    public void NoArrow_PointsDown() => Assert.Empty(Package.ArrowsDown);

    private const string Lower = "namespace CamPower; public class Lamp { public static Lamp Lit() => new(); public int Volts => 12; }";

    [Theory]
    [InlineData("public class Upper { Lamp? _lamp; }")]
    [InlineData("public class Upper { public object M() => Lamp.Lit(); }")]
    [InlineData("public class Upper : Lamp;")]
    [InlineData("public class Upper { public System.Collections.Generic.List<Lamp> Lamps => []; }")]
    public void ArrowThatPointsDown_IsCaught(string upper)
    {
        var survey = new RoomSurvey([("Conductors/Upper.cs", "namespace CamPower; " + upper), ("Loads/Lamp.cs", Lower)]);
        Assert.Empty(survey.Errors);
        Assert.Contains("Conductors/Upper.cs uses Lamp of Loads", survey.ArrowsDown);
    }

    [Fact]
    public void ArrowBetweenRoomsOfOneRow_IsCaught()
    {
        var survey = new RoomSurvey([("Mains/Upper.cs", "namespace CamPower; class Upper : Lamp;"), ("Backup/Lamp.cs", Lower)]);
        Assert.NotEmpty(survey.ArrowsDown);
    }

    [Fact]
    public void ArrowThatPointsUp_AndAWordInAComment_Pass()
    {
        var survey = new RoomSurvey(
        [
            ("Circuits/Lower.cs", "namespace CamPower; public class Lower { public int M() => Lamp.Lit().Volts; }"),
            ("Loads/Lamp.cs", "/// <summary>Like <see cref=\"CamPower.Lower\"/>, a Lower.</summary>\n" + Lower),
        ]);
        Assert.Empty(survey.Errors);
        Assert.Empty(survey.ArrowsDown);
    }

    [Fact]
    public void FileInNoRoom_AndStrangeNamespace_AreCaught()
    {
        var survey = new RoomSurvey([("Attic/Lamp.cs", Lower), ("Lamp2.cs", "class Lamp2;"), ("Loads/Far.cs", "namespace CamPower.Circuits; class Far;")]);
        Assert.Equal(["Attic/Lamp.cs", "Lamp2.cs"], survey.Homeless);
        Assert.Equal(["Loads/Far.cs declares CamPower.Circuits"], survey.Misnamed);
    }
}
