using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Net.Http;
using System.Net.Http.Headers;
using PlanService.Load;
using static System.FormattableString;

// Usage: PlanService.Load [address of the service] [number of clients]. The service runs already; start it in Release.
var service = new Uri(args.Length > 0 ? args[0] : "http://127.0.0.1:5080");
int clients = args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 300;
string site = File.ReadAllText("samples/SiteCheck/sites/boatyard.json");
using var client = new HttpClient { BaseAddress = service };
(string Name, string Accept)[] forms = [("JSON", "application/json"), ("page", "text/html")];
foreach ((string name, string accept) in forms)
{
    double[] times = new double[40];
    for (int i = 0; i < times.Length; i++)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/assessments") { Content = new StringContent(site, MediaTypeHeaderValue.Parse("application/json")) };
        request.Headers.Add("Accept", accept);
        var watch = Stopwatch.StartNew();
        using HttpResponseMessage response = await client.SendAsync(request);
        await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync();
        times[i] = watch.Elapsed.TotalMilliseconds;
    }

    // The first half warms it up.
    Console.WriteLine(Invariant($"boatyard as {name}, one client: median {times[20..].Order().ElementAt(10):0} ms, first {times[0]:0} ms"));
}

var storm = new Storm(service, clients);
foreach ((string name, string accept) in forms) Console.WriteLine($"boatyard as {name}, {clients} clients at once: {await storm.AskAsync(site, accept)}");
Console.WriteLine($"{clients} clients that send slowly: {await storm.SendSlowlyAsync()}");
Console.WriteLine($"{clients} clients that hang up after a part: {await storm.SendHalfAsync()}");
