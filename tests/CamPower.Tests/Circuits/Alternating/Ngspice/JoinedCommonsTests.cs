using System.Linq;
using CamPower.Circuits;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Circuits.Alternating.Ngspice;

/// <summary>The ring through joined negatives against transients of the circuit simulator.</summary>
public class JoinedCommonsTests
{
    public static TheoryData<string> Names => [.. JoinedCase.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void CommittedNetlist_IsThatOfItsCase(string name) =>
        GeneratedPage.AssertCurrent(AlternatingDecks.PathOf(name), AlternatingDecks.Joined(Named(name)));

    // What the library says is at least so much: up to the inputs' own charging current, which takes the same way.
    [Theory]
    [MemberData(nameof(Names))]
    public void Ring_CarriesAtLeastWhatTheLibrarySays_AndLittleMore(string name)
    {
        JoinedCase of = Named(name);
        double said = CommonRing.ThroughDiode(of.EmfVolts, of.RingOhms, RectifierDiode.Silicon), simulated = AlternatingDecks.Read()[(name, "ring")];
        Assert.InRange(simulated, 0.97 * said, 1.15 * said);
    }

    private static JoinedCase Named(string name) => JoinedCase.All.Single(c => c.Name == name);
}
