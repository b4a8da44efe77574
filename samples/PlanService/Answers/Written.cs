using System.Globalization;
using UnitsNet;

namespace PlanService.Answers;

/// <summary>A quantity as text for people.</summary>
internal static class Written
{
    /// <summary>The number at three digits behind the point, and its unit: what a good meter shows.</summary>
    public static string Text(IQuantity quantity) => quantity.ToString("s3", CultureInfo.InvariantCulture);

    public static string? TextOrNull(IQuantity? quantity) => quantity is null ? null : Text(quantity);
}
