using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading.Tasks;

namespace CamPower.Mutants;

/// <summary>Tries the mutants that were asked for and tells how many of each room the tests kill.</summary>
internal sealed class Trial
{
    private readonly Arguments _asked;
    private readonly IReadOnlyList<Mutant> _mutants;
    private readonly string[] _answers;
    private readonly BlockingCollection<WorkerProcess> _workers = [];
    private int _done;

    private Trial(Arguments asked, IReadOnlyList<Mutant> mutants)
    {
        _asked = asked;
        _mutants = mutants;
        _answers = new string[mutants.Count];
    }

    /// <returns>The exit status: 0 when every room is good enough, otherwise 1.</returns>
    public static int Run(Arguments asked)
    {
        MutatedLibrary.Prepare();
        (IReadOnlyList<Mutant> all, IReadOnlyDictionary<string, int> notBuilt) = StrykerReport.Read(MutatedLibrary.Report);
        string? unknown = asked.Rooms.FirstOrDefault(r => all.All(m => m.Room != r));
        if (unknown is not null) throw new InvalidOperationException($"No mutant is in a room {unknown}.");

        var trial = new Trial(asked, [.. all.GroupBy(m => m.Room).Where(r => asked.Rooms.Count == 0 || asked.Rooms.Contains(r.Key))
            .SelectMany(r => r.Where(m => asked.Again?.Holds(m) != false).Where((_, i) => i % asked.Sample == 0))]);
        trial.TryAll();
        return trial.Tell(notBuilt) ? 0 : 1;
    }

    private void TryAll()
    {
        for (int i = 0; i < _asked.Jobs; i++) _workers.Add(new WorkerProcess());
        // The first worker measures the tests while nothing else runs.
        WorkerProcess first = _workers.Take();
        first.Prepare();
        _workers.Add(first);
        try
        {
            Parallel.For(0, _mutants.Count, new ParallelOptions { MaxDegreeOfParallelism = _asked.Jobs }, Try);
        }
        finally
        {
            foreach (WorkerProcess worker in _workers) worker.Dispose();
        }
    }

    private void Try(int index)
    {
        Mutant mutant = _mutants[index];
        string answer = TryTogether(mutant);
        // What is listed as equivalent need only outlive the tests that reach it.
        bool isAlone = answer.StartsWith("alone", StringComparison.Ordinal) && !_asked.Equivalent.Holds(mutant);
        bool again = isAlone || answer.StartsWith("contaminated", StringComparison.Ordinal);
        _answers[index] = again ? WorkerProcess.TryAlone(mutant) : answer;
        int done = System.Threading.Interlocked.Increment(ref _done);
        Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{done}/{_mutants.Count}\t{mutant}\t{_answers[index]}"));
    }

    private string TryTogether(Mutant mutant)
    {
        WorkerProcess worker = _workers.Take();
        string answer = worker.Try(mutant);
        // Something that the process made once was made with the mutant on: the next ones get a clean process.
        if (answer.StartsWith("contaminated", StringComparison.Ordinal)) worker.Dispose();
        _workers.Add(worker);
        return answer;
    }

    private bool Tell(IReadOnlyDictionary<string, int> notBuilt)
    {
        var rooms = new List<RoomCount>();
        var survivors = new List<string> { "# file, line, original, mutated" };
        var unreached = new List<string> { "# no test reaches these" };
        foreach (IGrouping<string, (Mutant Mutant, string Answer)> room in _mutants.Zip(_answers).GroupBy(m => m.First.Room))
        {
            var count = new RoomCount(room.Key, notBuilt.GetValueOrDefault(room.Key));
            rooms.Add(count);
            foreach ((Mutant mutant, string answer) in room)
            {
                Count(mutant, answer, count, answer.StartsWith("unreached", StringComparison.Ordinal) ? unreached : survivors);
            }
        }

        File.WriteAllLines(MutatedLibrary.Survivors, survivors.Concat(unreached));
        Console.WriteLine("| room | mutants | killed | survived | equivalent | share killed | not built |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (RoomCount r in rooms)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {r.Room} | {r.Tried} | {r.Killed} | {r.Survived} | {r.Equivalent} | {100 * r.Share:0.0} % | {r.NotBuilt} |"));
        }

        Console.WriteLine($"Survivors: {MutatedLibrary.Survivors}");
        return rooms.All(r => r.IsGood);
    }

    private void Count(Mutant mutant, string answer, RoomCount count, List<string> survivors)
    {
        bool killed = answer.StartsWith("killed", StringComparison.Ordinal), listed = _asked.Equivalent.Holds(mutant);
        if (killed && listed) Console.WriteLine($"Listed as equivalent, and yet {answer}: {mutant}");
        if (killed)
        {
            count.Killed++;
        }
        else if (listed)
        {
            count.Equivalent++;
        }
        else
        {
            count.Survived++;
            survivors.Add(mutant.ToString());
        }
    }
}
