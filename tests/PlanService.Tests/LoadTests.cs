using System.Linq;
using System.Net.Http;
using System.Threading.Tasks;

namespace PlanService.Tests;

public class LoadTests(PlanServer server) : IClassFixture<PlanServer>
{
    private const int Clients = 32, RequestsEach = 20;

    // Nothing that one request leaves behind reaches another: every answer to a file is the same bytes.
    [Fact]
    public async Task ManyClientsAtOnce_AllGetTheSameBytes()
    {
        string[] sites = ["boat-shed.json", "boatyard.json", "boatyard-as-found.json"];
        string[] bodies = [.. sites.Select(PlanServer.SiteText)];
        byte[][] expected = await Task.WhenAll(bodies.Select(BytesAsync));
        byte[][][] answers = await Task.WhenAll(Enumerable.Range(0, Clients).Select(client => Task.Run(async () =>
        {
            var got = new byte[RequestsEach][];
            for (int i = 0; i < RequestsEach; i++) got[i] = await BytesAsync(bodies[(client + i) % bodies.Length]);
            return got;
        })));
        for (int client = 0; client < Clients; client++)
        {
            for (int i = 0; i < RequestsEach; i++) Assert.Equal(expected[(client + i) % bodies.Length], answers[client][i]);
        }
    }

    private async Task<byte[]> BytesAsync(string site)
    {
        using HttpResponseMessage response = await server.PostAsync(site);
        return await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync();
    }
}
