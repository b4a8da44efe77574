using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CamPower.Files.Formats;

/// <summary>Gives each <see cref="Written{T}"/> the format of its value: the one list of them.</summary>
internal sealed class WrittenConverterFactory : JsonConverterFactory
{
    private static readonly Dictionary<Type, JsonConverter> Converters = new JsonConverter[]
    {
        Of(Quantities.Length), Of(Quantities.Voltage), Of(Quantities.Current), Of(Quantities.Resistance),
        Of(Quantities.Power), Of(Quantities.Temperature), Of(Quantities.Share), Of(Quantities.Duration), Of(Quantities.Capacitance), Of(Quantities.Rise),
        Of(Quantities.Area), Of(Quantities.Sunlight), Of(Quantities.Insulance), Of(new JouleIntegralFormat()), Of(new DrawnQuantityFormat()),
        Of(new WireSizeFormat()), Of(Words.Material), Of(Words.Stranding), Of(Words.Table), Of(Words.UsualCable), Of(Words.UsualJoint), Of(Words.UsualConnector), Of(Words.DeviceKind), Of(Words.Current),
        Of(Words.Stage), Of(Words.SoftStart), Of(Words.Shares), Of(Words.GivenConditions), Of(Words.Characteristic), Of(Words.Face), Of(Words.PowerLimit), Of(new InsulationFormat()), Of(new LayingFormat()),
    }.ToDictionary(c => c.Type!);

    public override bool CanConvert(Type typeToConvert) => Converters.ContainsKey(typeToConvert);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) => Converters[typeToConvert];

    private static WrittenConverter<T> Of<T>(ITextFormat<T> format) => new(format);
}
