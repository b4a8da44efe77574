using System.Collections.Generic;
using System.Linq;

namespace CamPower.Studies;

/// <summary>Divides parts among places, each of which takes one of certain boxes: every way is tried, as far as a number of trials
/// goes.</summary>
/// <remarks>
/// A way is left as soon as one place is too full: a box that cannot feed some parts cannot feed more, unless it is too cold
/// for its supply and more load would warm it. Of places that take the same boxes only the first empty one is tried, and
/// equal parts go to places in order: no way that this leaves out differs from one that is tried by more than names.
/// </remarks>
internal sealed class BoxPacking
{
    private readonly IReadOnlyList<IReadOnlyList<BoxOffer>> _places;
    private readonly IReadOnlyList<int> _order;
    private readonly bool[] _isLikeTheOneBefore;
    private readonly List<int>[] _contents;
    private int _trialsLeft;

    /// <summary>Prepares a search.</summary>
    /// <param name="places">For each place the boxes that may be there.</param>
    /// <param name="order">The parts in the order in which they are placed.</param>
    /// <param name="areAlike">Whether two parts are the same for every box.</param>
    /// <param name="trials">How many times a box may be asked whether it will do.</param>
    internal BoxPacking(IReadOnlyList<IReadOnlyList<BoxOffer>> places, IReadOnlyList<int> order, System.Func<int, int, bool> areAlike,
        int trials)
    {
        _places = places;
        _order = order;
        _isLikeTheOneBefore = [.. order.Select((part, i) => i > 0 && areAlike(order[i - 1], part))];
        _contents = [.. places.Select(_ => new List<int>())];
        _trialsLeft = trials;
    }

    /// <summary>Whether the trials ended before the search did.</summary>
    internal bool IsOutOfTrials => _trialsLeft < 0;

    /// <summary>The trials that are left.</summary>
    internal int TrialsLeft => System.Math.Max(_trialsLeft, 0);

    /// <summary>The parts of each place, or null: none is a proof only where <see cref="IsOutOfTrials"/> is false.</summary>
    internal IReadOnlyList<IReadOnlyList<int>>? Search() => Place(0, firstPlace: 0) ? _contents : null;

    private bool Place(int index, int firstPlace)
    {
        if (index == _order.Count) return AreAllFed();
        for (int p = _isLikeTheOneBefore[index] ? firstPlace : 0; p < _places.Count && _trialsLeft >= 0; p++)
        {
            if (IsLikeAnEarlierEmptyPlace(p)) continue;
            _contents[p].Add(_order[index]);
            if (SomeBoxMayFit(p) && Place(index + 1, p)) return true;
            _contents[p].RemoveAt(_contents[p].Count - 1);
        }

        return false;
    }

    private bool SomeBoxMayFit(int place)
    {
        foreach (BoxOffer offer in _places[place])
        {
            if (--_trialsLeft < 0) return false;
            if (offer.MayFeed(_contents[place])) return true;
        }

        return false;
    }

    private bool AreAllFed() =>
        _places.Zip(_contents, (offers, parts) => parts.Count == 0 || offers.Any(offer => offer.CanFeed(parts))).All(isFed => isFed);

    private bool IsLikeAnEarlierEmptyPlace(int place)
    {
        if (_contents[place].Count > 0) return false;
        for (int p = 0; p < place; p++)
        {
            if (_contents[p].Count == 0 && ReferenceEquals(_places[p], _places[place])) return true;
        }

        return false;
    }
}
