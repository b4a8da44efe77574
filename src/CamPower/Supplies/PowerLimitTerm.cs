namespace CamPower.Supplies;

/// <summary>One cell of a table of power limits: a number, or a number times or over the open-circuit voltage.</summary>
internal sealed class PowerLimitTerm
{
    private readonly CitedValue _value;
    private readonly int _exponent;

    private PowerLimitTerm(CitedValue value, int exponent)
    {
        _value = value;
        _exponent = exponent;
    }

    internal Citation Source => _value.Source;

    internal static PowerLimitTerm Constant(CitedValue value) => new(value, 0);

    internal static PowerLimitTerm TimesVoltage(CitedValue value) => new(value, 1);

    internal static PowerLimitTerm OverVoltage(CitedValue value) => new(value, -1);

    internal double At(double volts) => _exponent switch
    {
        > 0 => _value.Value * volts,
        < 0 => _value.Value / volts,
        _ => _value.Value,
    };
}
