using System.Linq;
using System.Net;
using System.Net.Http;
using System.Threading.Tasks;

namespace PlanService.Tests;

public class LoadTests(PlanServer server) : IClassFixture<PlanServer>
{
    private const int Clients = 32, RequestsEach = 12;

    // Nothing that one request leaves behind reaches another: every answer to a file is the same bytes, in either form.
    [Fact]
    public async Task ManyClientsAtOnce_AllGetTheSameBytes()
    {
        string[] sites = ["boat-shed.json", "boatyard.json", "slip-gate.json"];
        (string Site, string Accept)[] asked = [.. from accept in new[] { "application/json", "text/html" } from site in sites select (PlanServer.SiteText(site), accept)];
        byte[][] expected = await Task.WhenAll(asked.Select(BytesAsync));
        byte[][][] answers = await Task.WhenAll(Enumerable.Range(0, Clients).Select(client => Task.Run(async () =>
        {
            var got = new byte[RequestsEach][];
            for (int i = 0; i < RequestsEach; i++) got[i] = await BytesAsync(asked[(client + i) % asked.Length]);
            return got;
        })));
        for (int client = 0; client < Clients; client++)
        {
            for (int i = 0; i < RequestsEach; i++) Assert.Equal(expected[(client + i) % asked.Length], answers[client][i]);
        }
    }

    // Under load it refuses early, and says when to come back.
    private async Task<byte[]> BytesAsync((string Site, string Accept) asked)
    {
        while (true)
        {
            using HttpResponseMessage response = await server.PostAsync(asked.Site, asked.Accept);
            if (response.StatusCode != HttpStatusCode.ServiceUnavailable) return await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync();
            await Task.Delay(response.Headers.RetryAfter!.Delta!.Value);
        }
    }
}
