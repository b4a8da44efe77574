namespace CamPower;

/// <summary>What a device is for.</summary>
public enum DeviceKind
{
    /// <summary>A camera.</summary>
    Camera,

    /// <summary>A video recorder.</summary>
    Recorder,

    /// <summary>Anything else: an illuminator, a microphone.</summary>
    Other,

    /// <summary>The input of a converter, as <c>DistributionBox.WithFeed</c> makes it.</summary>
    Converter,
}
