using System;

namespace CamPower;

/// <summary>A draw in components: a base that is always on, and what infrared, motor, heater and start-up add to it.</summary>
/// <remarks>Immutable. Each component is any <see cref="Load"/> but a larger-of one; in watts or in amperes, as the data sheet has
/// it.</remarks>
/// <example>
/// <code>
/// var draw = new ComponentDraw(Load.ConstantPower(Power.FromWatts(4)), infrared: Load.ConstantPower(Power.FromWatts(5)));
/// Load atNight = draw.LoadWith(LoadComponents.Infrared);   // 9 W
/// </code>
/// </example>
public sealed class ComponentDraw : Draw
{
    internal const int AllComponents =
        (int)(LoadComponents.Infrared | LoadComponents.Motor | LoadComponents.Heater | LoadComponents.StartUp);

    // Every combination is added up once, here: asking for one later costs nothing.
    private readonly Load[] _byComponents = new Load[AllComponents + 1];

    /// <summary>States the components.</summary>
    /// <param name="baseDraw">What it always draws.</param>
    /// <param name="infrared">What the illuminators add; null for none.</param>
    /// <param name="motor">What the motors add while they move; null for none.</param>
    /// <param name="heater">What the heater adds; null for none.</param>
    /// <param name="startUp">What starting adds; null for none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="baseDraw"/> is null.</exception>
    /// <exception cref="InvalidOperationException">A component is a larger-of load.</exception>
    public ComponentDraw(Load baseDraw, Load? infrared = null, Load? motor = null, Load? heater = null, Load? startUp = null)
    {
        Base = Require.NotNull(baseDraw, nameof(baseDraw));
        Infrared = infrared ?? Load.None;
        Motor = motor ?? Load.None;
        Heater = heater ?? Load.None;
        StartUp = startUp ?? Load.None;
        HasMotor = motor is not null;
        for (int components = 0; components <= AllComponents; components++) _byComponents[components] = Total((LoadComponents)components);
    }

    /// <summary>Load that is always on.</summary>
    public Load Base { get; }

    /// <summary>What the illuminators add.</summary>
    public Load Infrared { get; }

    /// <summary>What the motors add while they move.</summary>
    public Load Motor { get; }

    /// <summary>What the heater adds.</summary>
    public Load Heater { get; }

    /// <summary>What starting adds.</summary>
    public Load StartUp { get; }

    /// <inheritdoc/>
    public override bool HasMotor { get; }

    /// <inheritdoc/>
    public override Load Lightest => Base;

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="components"/> names a component that does not exist.</exception>
    public override Load LoadWith(LoadComponents components) =>
        _byComponents[(int)Require.Within((int)components, 0, AllComponents, nameof(components), "")];

    /// <summary>The components in words; never throws.</summary>
    public override string ToString() => $"base {Base}, infrared {Infrared}, motor {Motor}, heater {Heater}, start-up {StartUp}";

    private Load Total(LoadComponents components)
    {
        return Base + Of(LoadComponents.Infrared, Infrared) + Of(LoadComponents.Motor, Motor)
            + Of(LoadComponents.Heater, Heater) + Of(LoadComponents.StartUp, StartUp);

        Load Of(LoadComponents component, Load load) => components.HasFlag(component) ? load : Load.None;
    }
}
