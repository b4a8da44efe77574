using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Net.Sockets;
using System.Text;
using System.Threading.Tasks;

namespace PlanService.Load;

/// <summary>Many clients at once, each on a connection of its own, reading the bytes as they come: a client library would hide an answer that is not whole.</summary>
/// <param name="service">Where the service listens.</param>
/// <param name="clients">How many.</param>
public sealed class Storm(Uri service, int clients)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Each client posts a site and reads the answer.</summary>
    public Task<Tally> AskAsync(string site, string accept) => AllAsync(async stream =>
    {
        byte[] body = Encoding.UTF8.GetBytes(site);
        await stream.WriteAsync(Head(body.Length, accept));
        await stream.WriteAsync(body);
    });

    /// <summary>Each client sends a body that never ends, faster than the server's own least rate.</summary>
    public Task<Tally> SendSlowlyAsync() => AllAsync(async stream =>
    {
        await stream.WriteAsync(Head(60_000, "*/*"));
        for (int sent = 0; sent < 59_000; sent += 100)
        {
            await stream.WriteAsync(new byte[100]);
            await Task.Delay(100);
        }
    });

    /// <summary>Each client sends a part of the body and no more, and goes on to listen.</summary>
    public Task<Tally> SendHalfAsync() => AllAsync(async stream =>
    {
        await stream.WriteAsync(Head(1000, "*/*"));
        await stream.WriteAsync("{ \"formatVersion\""u8.ToArray());
        stream.Socket.Shutdown(SocketShutdown.Send);
    });

    private static byte[] Head(int length, string accept) => Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture,
        $"POST /assessments HTTP/1.1\r\nHost: here\r\nConnection: close\r\nAccept: {accept}\r\nContent-Type: application/json\r\nContent-Length: {length}\r\n\r\n"));

    private async Task<Tally> AllAsync(Func<NetworkStream, Task> send)
    {
        var tally = new Tally();
        await Task.WhenAll(Enumerable.Range(0, clients).Select(async _ =>
        {
            var watch = Stopwatch.StartNew();
            using var client = new TcpClient();
            await client.ConnectAsync(service.Host, service.Port);
            NetworkStream stream = client.GetStream();
            Task<(string Kind, TimeSpan Time)> answer = AnswerAsync(stream, watch);
            Task sending = send(stream);
            (string kind, TimeSpan time) = await answer.WaitAsync(Patience);
            tally.Add(kind, time);
            client.Close();
            await sending.ContinueWith(_ => { }, TaskScheduler.Default);
        }));
        return tally;
    }

    // Until the last byte of the answer: the server may go on to listen for the rest of a body. An answer that came stays one when the
    // connection is reset after it, as it is where the body was not wanted.
    private static async Task<(string Kind, TimeSpan Time)> AnswerAsync(NetworkStream stream, Stopwatch watch)
    {
        using var received = new MemoryStream();
        var buffer = new byte[64 * 1024];
        TimeSpan last = TimeSpan.Zero;
        try
        {
            for (int read; (read = await stream.ReadAsync(buffer)) > 0; last = watch.Elapsed) received.Write(buffer, 0, read);
        }
        catch (IOException)
        {
        }

        return (Kind(Encoding.UTF8.GetString(received.ToArray())), last);
    }

    private static string Kind(string answer)
    {
        string[] parts = answer.Split("\r\n\r\n", 2);
        if (parts.Length < 2) return "no answer";
        string status = parts[0].Split(' ')[1], body = parts[1];
        string? length = parts[0].Split("\r\n").FirstOrDefault(h => h.StartsWith("Content-Length: ", StringComparison.OrdinalIgnoreCase));
        bool isWhole = length is null
            ? body.EndsWith("\r\n0\r\n\r\n", StringComparison.Ordinal)
            : int.Parse(length.Split(' ')[1], CultureInfo.InvariantCulture) == Encoding.UTF8.GetByteCount(body);
        bool saysWhen = status != "503" || parts[0].Contains("\r\nRetry-After: ", StringComparison.OrdinalIgnoreCase);
        return (body.Length, isWhole, saysWhen) switch
        {
            (0, _, _) => status + " without a body",
            (_, false, _) => status + " cut off",
            (_, _, false) => status + " without Retry-After",
            _ => status,
        };
    }
}
