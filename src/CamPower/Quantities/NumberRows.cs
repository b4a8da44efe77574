using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower;

/// <summary>Numbers of outputs as text. The one place of it: the package of reports compiles this file too.</summary>
internal static class NumberRows
{
    /// <summary>Numbers in rising order, those in a row joined: 3, 4, 5 and 8 are 3-5, 8.</summary>
    internal static string Text(IEnumerable<int> numbers)
    {
        IEnumerable<IGrouping<int, int>> rows = numbers.OrderBy(number => number).Select((number, place) => (number, place))
            .GroupBy(x => x.number - x.place, x => x.number);
        return string.Join(", ",
            rows.Select(row => row.Count() == 1 ? Invariant($"{row.First()}") : Invariant($"{row.First()}-{row.Last()}")));
    }
}
