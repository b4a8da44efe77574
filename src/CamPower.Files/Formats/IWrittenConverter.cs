namespace CamPower.Files.Formats;

/// <summary>A converter that can say how its text is written.</summary>
internal interface IWrittenConverter
{
    ITextFormat Format { get; }
}
