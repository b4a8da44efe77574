using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Google.OrTools.Sat;

namespace CamPower.Planning;

/// <summary>The choice as an integer program: boxes for slots, runs for cameras, at least cost.</summary>
/// <remarks>It knows of outputs, loads and single runs, all of it rounded to the side on which no plan is lost: what it answers is a lower
/// bound. What only the whole assessment sees comes in as cuts.</remarks>
internal sealed class MasterProblem
{
    // A price in these units is rounded down, and so is a current; a capacity is rounded up.
    private const double UnitsOfCost = 1e4, UnitsOfCurrent = 1e4;

    private readonly PlanningCase _planned;
    private readonly CpModel _model = new();
    private readonly BoolVar[][] _boxes;
    private readonly BoolVar[] _runs;
    private readonly ILookup<int, int> _optionsOfSlot;
    private PlanChoice? _last;

    internal MasterProblem(PlanningCase planned)
    {
        _planned = planned;
        _boxes = [.. planned.Slots.Select(slot => NewBools(slot.Offers.Count, FormattableString.Invariant($"box {slot.Index}")))];
        _runs = NewBools(planned.Options.Count, "run");
        _optionsOfSlot = Enumerable.Range(0, planned.Options.Count).ToLookup(i => planned.Options[i].Slot);
        foreach (BoxSlot slot in planned.Slots) AddSlot(slot);
        foreach (BoxSlot slot in planned.Slots.Skip(1)) AddOrder(planned.Slots[slot.Index - 1], slot);
        for (int camera = 0; camera < planned.Question.Cameras.Count; camera++) AddCamera(camera);
        _model.Minimize(LinearExpr.WeightedSum(Boxes.Concat(_runs), BoxCosts.Concat(planned.Options.Select(o => Scaled(o.Cost)))));
    }

    /// <summary>How much the rounding of prices may hide.</summary>
    internal double Rounding => (_planned.Question.Cameras.Count + _planned.Slots.Count) / UnitsOfCost;

    private IEnumerable<BoolVar> Boxes => _boxes.SelectMany(of => of);

    private IEnumerable<long> BoxCosts => _planned.Slots.SelectMany(slot => slot.Offers).Select(offer => Scaled(offer.Cost));

    /// <summary>Solves it.</summary>
    /// <param name="workLimit">Most work, in the solver's own unit.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal MasterAnswer Solve(double workLimit, CancellationToken cancellationToken)
    {
        Hint();
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"num_workers:1,random_seed:1,max_deterministic_time:{workLimit},linearization_level:2"),
        };
        using CancellationTokenRegistration stop = cancellationToken.Register(solver.StopSearch);
        CpSolverStatus status = solver.Solve(_model);
        cancellationToken.ThrowIfCancellationRequested();
        if (status is CpSolverStatus.ModelInvalid) throw new InvalidOperationException($"The solver refused: {_model.Validate()}");
        bool hasChoice = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        if (hasChoice) _last = Read(solver);
        return new MasterAnswer(
            hasChoice ? _last : null, status == CpSolverStatus.Infeasible, status == CpSolverStatus.Optimal,
            status == CpSolverStatus.Infeasible ? double.PositiveInfinity : Math.Max(0, solver.BestObjectiveBound) / UnitsOfCost,
            solver.Response!.DeterministicTime);
    }

    /// <summary>Leaves out the runs of a slot together on its box, or more than them.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="offer">Number of the box.</param>
    /// <param name="members">The runs.</param>
    /// <param name="alsoLarger">Whether runs that draw no less are no better: another run of the same camera that draws no less than its
    /// own, or a run of another camera that draws no less than any.</param>
    internal void ExcludeWithMore(BoxSlot slot, int offer, IReadOnlyList<RunOption> members, bool alsoLarger)
    {
        RunDraw most = members.Select(m => m.Draws).Aggregate((a, b) => a.Most(b));
        foreach (BoxSlot twin in TwinsOf(slot))
        {
            var literals = new List<BoolVar>();
            foreach (int i in _optionsOfSlot[twin.Index])
            {
                RunOption option = _planned.Options[i];
                bool isLarger = alsoLarger
                    && (option.Draws.IsAtLeast(most) || members.Any(m => m.Camera == option.Camera && option.Draws.IsAtLeast(m.Draws)));
                if (isLarger || members.Any(m => IsSame(m, option))) literals.Add(_runs[i]);
            }

            _model.Add(LinearExpr.Sum(literals) <= members.Count - 1).OnlyEnforceIf(_boxes[twin.Index][offer]);
        }
    }

    /// <summary>Leaves out exactly what is in some slots.</summary>
    internal void ExcludeExactly(IEnumerable<BoxSlot> slots, PlanChoice choice)
    {
        var escapes = new List<ILiteral>();
        foreach (BoxSlot slot in slots)
        {
            if (choice.Offers[slot.Index] >= 0) escapes.Add(_boxes[slot.Index][choice.Offers[slot.Index]].Not());
            else escapes.AddRange(_boxes[slot.Index]);
            escapes.AddRange(_optionsOfSlot[slot.Index].Select(i =>
                ReferenceEquals(choice.Runs[_planned.Options[i].Camera], _planned.Options[i]) ? _runs[i].Not() : _runs[i]));
        }

        _model.AddBoolOr(escapes);
    }

    private static bool IsSame(RunOption one, RunOption other) =>
        one.Camera == other.Camera && ReferenceEquals(one.Cable, other.Cable) && one.Draws.IsLike(other.Draws);

    private IEnumerable<BoxSlot> TwinsOf(BoxSlot slot) => _planned.Slots.Where(s => ReferenceEquals(s.Place, slot.Place));

    private BoolVar[] NewBools(int count, string name) =>
        [.. Enumerable.Range(0, count).Select(i => _model.NewBoolVar(FormattableString.Invariant($"{name} {i}")))];

    private void AddSlot(BoxSlot slot)
    {
        BoolVar[] boxes = _boxes[slot.Index];
        int[] options = [.. _optionsOfSlot[slot.Index]];
        if (slot.Place.Box is null) _model.AddAtMostOne(boxes);
        else _model.Add(LinearExpr.Sum(boxes) == 1);
        _model.Add(LinearExpr.Sum(options.Select(i => _runs[i]))
            <= LinearExpr.WeightedSum(boxes, slot.Offers.Select(o => (long)o.UsableOutputs)));
        foreach (IGrouping<string, int> alike in options.GroupBy(i => KeyOf(_planned.Options[i]), StringComparer.Ordinal))
        {
            _model.Add(LinearExpr.Sum(alike.Select(i => _runs[i]))
                <= LinearExpr.Sum(_planned.Options[alike.First()].Offers.Select(o => boxes[o])));
        }

        for (int c = 0; c < _planned.Question.Conditions.Count; c++) AddLoad(slot, c, options);
    }

    // A camera has one run of all: those that need the same boxes are one row.
    private static string KeyOf(RunOption option) => FormattableString.Invariant($"{option.Camera}: {string.Join(' ', option.Offers)}");

    private void AddLoad(BoxSlot slot, int condition, int[] options)
    {
        int? moving = _planned.Question.Conditions[condition].MotorsMoving;
        IEnumerable<long> draws = options.Select(i =>
            Current((moving is null ? _planned.Options[i].Draws.Amperes : _planned.Options[i].Draws.AtRest)[condition]));
        LinearExpr load = LinearExpr.WeightedSum(options.Select(i => _runs[i]), draws);
        long[] extras = [.. options.Select(i => Current(
            _planned.Options[i].Draws.Amperes[condition] - _planned.Options[i].Draws.AtRest[condition]))];
        if (moving > 0 && extras.Any(extra => extra > 0))
        {
            // Of those that move at once the largest is a lower bound.
            IntVar largest = _model.NewIntVar(0, extras.Max(), FormattableString.Invariant($"motor {slot.Index} {condition}"));
            foreach (int i in Enumerable.Range(0, options.Length).Where(i => extras[i] > 0))
            {
                _model.Add(largest >= extras[i] * _runs[options[i]]);
            }

            load += largest;
        }

        _model.Add(load <= LinearExpr.WeightedSum(_boxes[slot.Index],
            slot.Offers.Select(o => (long)Math.Ceiling(o.MostAmperes[condition] * UnitsOfCurrent))));
    }

    // Of two slots at one place the first has the dearer box.
    private void AddOrder(BoxSlot before, BoxSlot slot)
    {
        if (!ReferenceEquals(before.Place, slot.Place)) return;
        long[] ranks = [.. Enumerable.Range(1, slot.Offers.Count).Select(i => (long)i)];
        _model.Add(LinearExpr.WeightedSum(_boxes[before.Index], ranks) >= LinearExpr.WeightedSum(_boxes[slot.Index], ranks));
    }

    private void AddCamera(int camera)
    {
        BoolVar[] runs = [.. Enumerable.Range(0, _runs.Length).Where(i => _planned.Options[i].Camera == camera).Select(i => _runs[i])];
        _model.AddExactlyOne(runs);
    }

    private void Hint()
    {
        if (_last is null) return;
        _model.ClearHints();
        foreach (BoxSlot slot in _planned.Slots)
        {
            for (int o = 0; o < slot.Offers.Count; o++) _model.AddHint(_boxes[slot.Index][o], _last.Offers[slot.Index] == o);
        }

        for (int i = 0; i < _runs.Length; i++)
        {
            _model.AddHint(_runs[i], ReferenceEquals(_last.Runs[_planned.Options[i].Camera], _planned.Options[i]));
        }
    }

    private PlanChoice Read(CpSolver solver)
    {
        var runs = new RunOption[_planned.Question.Cameras.Count];
        for (int i = 0; i < _runs.Length; i++)
        {
            if (solver.BooleanValue(_runs[i])) runs[_planned.Options[i].Camera] = _planned.Options[i];
        }

        return new PlanChoice([.. _boxes.Select(of => Array.FindIndex(of, box => solver.BooleanValue(box)))], runs);
    }

    // What is a binary fraction below a unit is that unit.
    private static long Scaled(double cost) => (long)Math.Floor((cost * UnitsOfCost) + 1e-6);

    private static long Current(double amperes) => (long)Math.Floor(amperes * UnitsOfCurrent);
}
